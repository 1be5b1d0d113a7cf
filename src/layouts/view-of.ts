import type { PageView } from '../views/page-view.ts';

/** The view that a page was given, which must be of the page's kind. */
export function viewOf<Kind extends PageView['kind']>(
  locals: App.Locals,
  kind: Kind,
): Extract<PageView, { kind: Kind }> {
  const { view } = locals;
  if (view?.kind !== kind) throw new Error(`it shows a ${kind} and was given ${view?.kind ?? 'nothing'}`);
  return view as Extract<PageView, { kind: Kind }>;
}
