/** What one sender, and all together, may ask of the server. Times are milliseconds. */
export interface Limits {
  /** The largest body; a real acceptance has a few thousand bytes. */
  readonly bodyBytes: number;
  /** Time for the headers, then for the whole request: whoever sends slower is cut off. */
  readonly headersTime: number;
  readonly requestTime: number;
  /** A connection on which nothing moves is closed after this time. */
  readonly idleTime: number;
  readonly connections: number;
  /** Posts of one address in a minute. */
  readonly postsAMinute: number;
}

export const LIMITS: Limits = {
  bodyBytes: 65_536,
  headersTime: 5_000,
  requestTime: 10_000,
  idleTime: 30_000,
  connections: 400,
  postsAMinute: 20,
};
