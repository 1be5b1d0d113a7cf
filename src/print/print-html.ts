import { edited, tagsOf, wordsOf } from '../files/html-tags.ts';

/** Fractions that our fonts have no sign for, as numerator and denominator. */
const fractions: Record<string, [number, number]> = {
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
};
const signs = Object.keys(fractions).join('');
const fractionSign = new RegExp(`(\\d)?([${signs}])`, 'g');

/**
 * The page as it is printed: fractions that our fonts lack are set from figures and the fraction slash (U+2044),
 * which their OpenType feature draws as one. A space keeps `2⅓` from being read back as 21⁄3.
 */
export function printableFractions(html: string): string {
  const body = html.indexOf('</head>');
  const edits = wordsOf(html).flatMap(({ from, to }) => {
    const words = html.slice(from, to);
    if (from < body || words.search(fractionSign) === -1) return [];
    return [{ from, to, text: words.replace(fractionSign, (_, whole, sign) => drawn(whole, sign)) }];
  });
  return edited(html, edits);
}

function drawn(whole: string | undefined, sign: string): string {
  const [numerator, denominator] = fractions[sign]!;
  const space = whole === undefined ? '' : `${whole}\u2009`;
  return `${space}<span class="fraction">${numerator}\u2044${denominator}</span>`;
}

/** The page with every photo in its largest size: a screen's pixels say nothing about a sheet's. */
export function withLargestPhotos(html: string): string {
  const smaller = tagsOf(html)
    .filter(({ name }) => name === 'img')
    .flatMap(({ attributes }) => attributes.filter(({ name }) => name === 'srcset' || name === 'sizes'));
  // With the space before it.
  return edited(
    html,
    smaller.map(({ from, to }) => ({ from: from - 1, to, text: '' })),
  );
}
