/** Words of a–z and 0–9 joined by single hyphens, at most 60 characters: what names a file also stands in an address. */
export function isId(text: string): boolean {
  return text.length <= 60 && /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(text);
}
