/** A photo at one width, as pages name it: `3f2a.DxYz.640w.webp`. */
export interface PhotoName {
  /** The name of the author's own file among the app's, without its ending. */
  readonly stem: string;
  readonly width: number;
}

/** A file of pixels, by its ending. */
export const PIXELS = /\.(?:jpe?g|png|webp|avif)$/i;

/**
 * Where a photo is served at a width. Its own file's name is not part of it: that file is published nowhere, since
 * cameras write into theirs where and when they were used.
 */
export function photoPath(original: string, width: number): string {
  return `${original.replace(PIXELS, '')}.${width}w.webp`;
}

/** What a name made by `photoPath` says; undefined for any other. The digest in a name never holds a dot. */
export function photoName(name: string): PhotoName | undefined {
  const [, stem, width] = name.match(/^(.+)\.(\d{1,5})w\.webp$/) ?? [];
  return stem === undefined ? undefined : { stem, width: Number(width) };
}

/** The names of all photos that a page asks for. */
export function photosNamedIn(html: string): string[] {
  return [...new Set([...html.matchAll(/\/_astro\/([\w.-]+\.\d{1,5}w\.webp)/g)].map(([, name]) => name!))];
}
