import type { Parsed } from '../../../src/engine/parsed.ts';

/** The value a text was read as; fails the test with the refusal's own words if it was not. */
export function understood<T>(read: Parsed<T>): T {
  if (!read.ok) throw new Error(`${read.what} — ${read.wayOut}`);
  return read.value;
}

/** What is said about a text that was refused; fails the test if it was read. */
export function refusal<T>(read: Parsed<T>): string {
  if (read.ok)
    throw new Error(
      `was read as ${JSON.stringify(read.value, (_, v) => (typeof v === 'bigint' ? `${v}` : v))}`,
    );
  return `${read.what} — ${read.wayOut}`;
}
