/** A skill as it is spoken of: its id in words. */
export function skillText(id: string): string {
  return id.replaceAll('-', ' ');
}
