const LONGEST = 60;

/** A value from a file as findings quote it: in “…”, on one line, cut after 60 characters. */
export function quoted(value: string): string {
  const line = value.replace(/\s+/g, ' ').trim();
  const letters = [...line];
  return letters.length > LONGEST ? `“${letters.slice(0, LONGEST).join('')}…”` : `“${line}”`;
}
