/** The one element under `root` that a selector finds, of the type asked for. Throws where page and script differ. */
export function elementIn<T extends Element>(root: ParentNode, selector: string, type: new () => T): T {
  const found = root.querySelector(selector);
  if (!(found instanceof type)) throw new Error(`the page has no ${selector}`);
  return found;
}
