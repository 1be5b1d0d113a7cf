/** What is refused on purpose, before anything was changed: told as what is wrong and the way out, without a trace. */
export class Refusal extends Error {
  readonly what: string;
  readonly wayOut: string;

  constructor(what: string, wayOut: string) {
    super(`${what}; ${wayOut}`);
    this.what = what;
    this.wayOut = wayOut;
  }
}
