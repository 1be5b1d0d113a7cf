/** The collections whose bodies Astro renders. */
export type BodyCollection = 'recipes' | 'packages';

/** The text below a file's front matter, checked: no HTML, no expressions, only known components. */
export interface Body {
  collection: BodyCollection;
  id: string;
  text: string;
  /** The pictures that it names, which are put beside it. */
  photos?: readonly { path: string; name: string }[];
}
