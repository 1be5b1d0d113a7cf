import { type MdastNode, mdxToMdast } from 'satteri';
import type { Photo } from '../photo.ts';
import { pictureFile } from './links.ts';
import { maskProgram, unmasked } from './mask.ts';
import { BODY_FEATURES } from './source.ts';

/** A picture in a text with components. */
interface ShownPhoto {
  /** Path in the content folder. */
  readonly file: string;
  readonly alt: string;
  /** Offsets of its Markdown in the text. */
  readonly start: number;
  readonly end: number;
}

/** The pictures of a checked text that belongs to a file of `folder`, in order; one that leads elsewhere is none. */
export function photosIn(text: string, folder: string): ShownPhoto[] {
  // Most texts have no picture and need no parser.
  if (!text.includes('![')) return [];
  const found: ShownPhoto[] = [];
  const rest: MdastNode[] = [mdxToMdast(maskProgram(text).text, { features: BODY_FEATURES })];
  for (let node = rest.pop(); node; node = rest.pop()) {
    if (node.type === 'image') {
      const { start, end } = node.position ?? {};
      const file = pictureFile(`${folder}/text.mdx`, unmasked(node.url));
      if (file !== undefined && start?.offset !== undefined && end?.offset !== undefined) {
        found.push({ file, alt: unmasked(node.alt ?? ''), start: start.offset, end: end.offset });
      }
    }
    if ('children' in node) rest.push(...(node.children as MdastNode[]));
  }
  return found.sort((one, other) => one.start - other.start);
}

/**
 * The text with its pictures named by their digests, as they lie beside it where it is compiled, and those pictures.
 * Without a picture that is gone or cannot be shown the text stands alone.
 */
export function withPhotos(
  text: string,
  folder: string,
  photos: ReadonlyMap<string, Photo>,
): { text: string; photos: Photo[] } {
  const used = new Map<string, Photo>();
  let made = '';
  let at = 0;
  for (const { file, alt, start, end } of photosIn(text, folder)) {
    const photo = photos.get(file);
    if (photo) used.set(photo.name, photo);
    made += text.slice(at, start) + (photo ? `![${escaped(alt)}](./${photo.name})` : '');
    at = end;
  }
  return { text: made + text.slice(at), photos: [...used.values()] };
}

/** Words as Markdown with components reads them back: every sign that could mean something has a backslash. */
function escaped(words: string): string {
  return words.replace(/\s+/g, ' ').replace(/[!-/:-@[-`{-~]/g, '\\$&');
}
