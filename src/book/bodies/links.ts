import { posix } from 'node:path';
import { PICTURE } from '../files/picture-name.ts';
import { quoted } from '../findings/quoted.ts';

type Words = { readonly what: string; readonly wayOut: string };

/**
 * Why an address is no link for a text, or nothing. An allow-list, read strictly: whatever a browser might take
 * for a script after undoing some disguise does not begin with one of four words.
 */
export function linkProblem(address: string): Words | undefined {
  if (/^#[^\s#]+$/.test(address)) return undefined;
  if (/^(?:mailto:[^\s@]+@[^\s@]+|tel:\+?[\d().-]+)$/i.test(address)) return undefined;
  if (/^https?:\/\/[^\s/\\]/i.test(address) && !/[\s\\]/.test(address) && URL.canParse(address))
    return undefined;
  if (address === '') return { what: 'a link leads nowhere', wayOut: 'write its address in parentheses' };
  return {
    what: `a link leads to another kind of address: ${quoted(address)}`,
    wayOut: 'write https://…, mailto:name@host, tel:+1-555-0142, or #heading for a heading on this page',
  };
}

/** Why an address is no picture for a text, or nothing: pictures are files of the content folder. */
export function pictureProblem(address: string): Words | undefined {
  if (/^(?:\.{1,2}\/)*(?:[\p{L}\d_][\p{L}\d_. -]*\/)*[\p{L}\d_][\p{L}\d_. -]*$/u.test(address)) {
    if (PICTURE.test(address)) return undefined;
    return {
      what: `a picture is of a kind that pages can’t show: ${quoted(address)}`,
      wayOut: 'use a file that ends in .jpg, .png, .webp or .avif',
    };
  }
  return {
    what: `a picture is not in the content folder: ${quoted(address)}`,
    wayOut: 'save it there and write its path from this file, as in ../pictures/hall.jpg',
  };
}

/**
 * The content file that a picture's address means, written in the file `from`: a path relative to the content
 * folder; undefined where it leads out of that folder.
 */
export function pictureFile(from: string, address: string): string | undefined {
  const path = posix.join(posix.dirname(from), address);
  return path.startsWith('../') ? undefined : path;
}
