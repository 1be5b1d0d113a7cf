import { type PlanMark, SHAPES } from './plan-tables-document.ts';

const SMALL_WORDS = ['a', 'an', 'the', 'of', 'in', 'on', 'with', 'and', 'or', 'for', 'to', 'from', 'our'];
const LETTERS = 4;

/**
 * Letters and a shape for each dish of a course, no letters twice: the beginning of its first word that no other dish
 * has begun with, longer where two begin alike. More dishes than shapes begin them again, told apart by their letters.
 */
export function dishMarks(names: readonly string[]): PlanMark[] {
  const taken = new Set<string>();
  return names.map((name, index) => {
    const letters = lettersFor(name, index, taken);
    taken.add(letters);
    return { letters, shape: SHAPES[index % SHAPES.length] ?? 'circle' };
  });
}

function lettersFor(name: string, index: number, taken: ReadonlySet<string>): string {
  const words = name
    .toUpperCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '' && !SMALL_WORDS.includes(word.toLowerCase()));
  const short = words.map((word) => [...word].slice(0, LETTERS).join(''));
  const joined = [...words.join('')];
  const longer = joined.slice(LETTERS).map((_, more) => joined.slice(0, LETTERS + more + 1).join(''));
  return [...short, ...longer].find((each) => !taken.has(each)) ?? `DISH ${index + 1}`;
}
