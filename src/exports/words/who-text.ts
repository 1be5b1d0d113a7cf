import type { Say } from '../../words/words-in.ts';
import { skillText } from './skill-text.ts';

/** Who works at a step, `Cook 2`, `Cooks 1 and 2`; empty where it is not stated who cooks. */
export function whoText(cooks: readonly number[], say: Say): string {
  const [first, ...others] = cooks;
  if (first === undefined) return '';
  const last = others.at(-1);
  return last === undefined
    ? say('day.cook-number', { n: String(first) })
    : say('day.cook-numbers', { first: [first, ...others.slice(0, -1)].join(', '), last: String(last) });
}

/** One piece of equipment, by its number where there are several. */
export function pieceName(name: string, piece: number, count: number, say: Say): string {
  return count > 1 || piece > 1 ? say('day.piece', { name, n: String(piece) }) : name;
}

/** A cook with what they alone can do, `Cook 1, pastry`. */
export function cookName(cook: number, skills: readonly string[], say: Say): string {
  const name = whoText([cook], say);
  return skills.length > 0
    ? say('day.cook-skilled', { name, skills: skills.map(skillText).join(', ') })
    : name;
}
