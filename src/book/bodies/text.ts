import { posix } from 'node:path';
import { type Finding, finding } from '../findings/finding.ts';
import { COMPONENTS } from './components.ts';
import type { Body } from './front-matter.ts';
import { checkBody } from './source.ts';

/**
 * What is wrong with the text below the data of a file, pictures that are not there included. `pictures` are those
 * of the content folder.
 */
export function checkText(
  file: string,
  body: Body,
  kind: 'markdown' | 'mdx',
  pictures: ReadonlySet<string>,
): Finding[] {
  const checked = checkBody(file, body, kind, kind === 'mdx' ? COMPONENTS : []);
  const missing = checked.pictures.flatMap(({ to, place }) => {
    const picture = posix.normalize(posix.join(posix.dirname(file), to));
    if (pictures.has(picture)) return [];
    return [
      finding('picture-missing', place, `there is no picture ${picture}`, 'put it there, or fix its path'),
    ];
  });
  return [...checked.findings, ...missing];
}
