import { needParts, parseNeed } from '../../engine/food/need.ts';

/**
 * A need as a guest writes it, in the words that needs are counted by: `Vegan, nut allergy` is `vegan + nuts`. What
 * says nothing (`none`, `-`) is empty. Words that Salver does not know are kept as they were written, since somebody
 * must read them.
 */
export function needOf(written: string): string {
  const text = written.trim().replace(/\s+/g, ' ');
  if (/^(|-+|–|none|no|nothing|n\/a)$/i.test(text)) return '';
  const parts = text.split(/\s*(?:[,;+/&]|\band\b)\s*/i).filter((part) => part !== '');
  const plain = parts.map(plainWords).join(' + ');
  return parseNeed(plain).ok ? plain : text;
}

/** What tells the same need in other words apart from another: `Tree nuts` and `tree nut` have one key. */
export function needKey(text: string): string {
  const need = parseNeed(text);
  if (!need.ok) return `words ${text.trim().toLowerCase()}`;
  return needParts(need.value)
    .map((part) => JSON.stringify(part))
    .sort()
    .join(' ');
}

function plainWords(part: string): string {
  const word = part
    .toLowerCase()
    .replace(/^allerg(?:y to|y:|ic to) ?/, '')
    .replace(/ allerg(?:y|ic)$/, '');
  if (/^gluten[ -]free$/.test(word)) return 'no gluten';
  return !parseNeed(word).ok && parseNeed(`${word}s`).ok ? `${word}s` : word;
}
