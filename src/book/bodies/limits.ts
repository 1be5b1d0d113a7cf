import { controlFinding, placeInText } from '../files/plain-text.ts';
import { type Finding, finding } from '../findings/finding.ts';
import type { Body } from './front-matter.ts';

/** In UTF-16 units: a text of 40,000 words. */
const LONGEST = 256 * 1024;
/** Quotations and lists within each other on one line; the parser takes quadratic time over them. */
export const DEEPEST_BODY = 24;
/** Escapes such as `&amp;`; the parser copies all text before each of them, and ends the program over too many. */
const MOST_ENTITIES = 500;
/** For each of these the parser of components reads on to the end of the text. */
const MOST_SIGNS = 500;

/**
 * Why a text is not given to the parser, which must never be stopped or slowed down by what stands in a file:
 * its size, an invisible character, or more of something than a text has and than the parser bears.
 */
export function bodyRefusal(
  file: string,
  { text, line }: Body,
  kind: 'markdown' | 'mdx',
): Finding | undefined {
  if (text.length > LONGEST) {
    const what = `the text has ${text.length.toLocaleString('en-US')} characters`;
    return finding('body-too-large', { file, line, column: 1 }, what, 'shorten it; 262,144 is the most');
  }
  const control = controlFinding(file, text, line);
  if (control) return control;
  const second = kind === 'mdx' ? text.match(/^\s*(?=---|\+\+\+)/)?.[0].length : undefined;
  if (second !== undefined) {
    const what = 'the text starts like a second block of data';
    const wayOut = 'delete the line of hyphens or plus signs';
    return finding('body-form', placeInText(file, text, second, line), what, wayOut);
  }
  const deep = deepLine(text);
  if (deep !== -1) {
    const what = `a line has more than ${DEEPEST_BODY} quotation or list marks`;
    return finding('body-too-deep', placeInText(file, text, deep, line), what, 'use fewer levels');
  }
  const many = (pattern: RegExp, most: number): number => [...text.matchAll(pattern)][most]?.index ?? -1;
  const entity = many(/&(?=[#\w]{1,40};)/g, MOST_ENTITIES);
  if (entity !== -1) {
    const what = `the text has more than ${MOST_ENTITIES} characters written like &amp;`;
    return finding(
      'body-form',
      placeInText(file, text, entity, line),
      what,
      'type the characters themselves',
    );
  }
  const sign = kind === 'mdx' ? many(/[{<]/g, MOST_SIGNS) : -1;
  if (sign !== -1) {
    const what = `the text has more than ${MOST_SIGNS} braces and tags`;
    return finding(
      'body-form',
      placeInText(file, text, sign, line),
      what,
      'split it or use fewer components',
    );
  }
  return undefined;
}

/** The offset of the first line with too many marks in front; a line of hyphens or stars alone is a rule. */
function deepLine(text: string): number {
  let start = 0;
  for (const line of text.split('\n')) {
    const marks = line.match(/^(?:[ \t]*(?:>|[-+*](?=[ \t])|\d{1,9}[.)](?=[ \t])))+/)?.[0] ?? '';
    const count = marks.match(/>|[-+*](?=[ \t]|$)|\d+[.)]/g)?.length ?? 0;
    if (count > DEEPEST_BODY && !/^[ \t]*([-*])(?:[ \t]*\1)*[ \t]*$/.test(line)) return start;
    start += line.length + 1;
  }
  return -1;
}
