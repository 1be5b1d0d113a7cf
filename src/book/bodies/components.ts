/** The components that notes and stories may use. */
export const COMPONENTS = ['WatchOut', 'CooksNote'] as const;

export type Component = (typeof COMPONENTS)[number];

/** Earlier names of components, which texts written with them keep: they are read for ever. */
export const RENAMED: ReadonlyMap<string, Component> = new Map([
  ['Caution', 'WatchOut'],
  ['Tip', 'CooksNote'],
]);
