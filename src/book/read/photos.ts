import { createHash } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { unreadable } from '../files/walk-folder.ts';
import { type Finding, finding } from '../findings/finding.ts';
import type { Photo } from '../photo.ts';

/** In bytes: what a good camera writes. */
const LARGEST = 20 * 1024 * 1024;
/** Width × height; what is decoded takes four bytes for each. */
const MOST_PIXELS = 100_000_000;

/** The kinds of pictures, as the decoder names them, with the ending of each. */
const ENDINGS: Readonly<Record<string, string>> = { jpeg: 'jpg', png: 'png', webp: 'webp', heif: 'avif' };

/**
 * The pictures of a content folder by their paths in it, each decoded once, so that none stops a page from being
 * made. What cannot be shown is left out and told, at the picture.
 */
export async function readPhotos(
  contentDir: string,
  pictures: ReadonlySet<string>,
): Promise<{ photos: Map<string, Photo>; findings: Finding[] }> {
  const photos = new Map<string, Photo>();
  const findings: Finding[] = [];
  for (const file of [...pictures].sort()) {
    const path = join(contentDir, file);
    const read = await readPhoto(path, file);
    if ('code' in read) findings.push(read);
    else photos.set(file, { path, name: read.name });
  }
  return { photos, findings };
}

async function readPhoto(path: string, file: string): Promise<{ name: string } | Finding> {
  const at = { file, line: 1, column: 1 };
  let bytes: Uint8Array;
  try {
    const { size } = await stat(path);
    if (size > LARGEST) {
      const what = `the picture has ${size.toLocaleString('en-US')} bytes`;
      return finding('file-too-large', at, what, 'save it smaller; 20,971,520 is the most');
    }
    bytes = await readFile(path);
  } catch (error) {
    return unreadable(file, error);
  }
  const ending = await kindOf(bytes);
  if (ending === undefined) {
    const what =
      'this picture is damaged, is a kind that pages can’t show, or has more than 100 million pixels';
    return finding(
      'picture-form',
      at,
      what,
      'save it again as .jpg, .png, .webp or .avif, smaller if it is huge',
    );
  }
  return { name: `${createHash('sha256').update(bytes).digest('hex').slice(0, 16)}.${ending}` };
}

/** The ending of a picture's kind by its bytes, whatever it is called; undefined where it cannot be decoded whole. */
async function kindOf(bytes: Uint8Array): Promise<string | undefined> {
  // Loaded only where there are pictures: it is a large library.
  const { default: sharp } = await import('sharp');
  try {
    // It refuses an empty file before it decodes anything.
    const picture = sharp(bytes, { failOn: 'truncated', limitInputPixels: MOST_PIXELS });
    const { format } = await picture.metadata();
    await picture.resize(8, 8, { fit: 'fill' }).raw().toBuffer();
    return ENDINGS[format];
  } catch {
    return undefined;
  }
}
