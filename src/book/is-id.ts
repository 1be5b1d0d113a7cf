/** Whether a text can be an id: lower-case words joined by hyphens, at most 60 characters. */
export function isId(text: string): boolean {
  return text.length <= 60 && /^[a-z0-9]+(-[a-z0-9]+)*$/.test(text);
}
