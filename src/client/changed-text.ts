/** Writes a text where it differs, so that a page is laid out again only where something changed. */
export function changeText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}
