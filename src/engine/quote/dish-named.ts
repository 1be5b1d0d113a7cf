import type { CourseTerms } from './terms.ts';

/**
 * The recipe id of the one dish of a course that a guest's words name: its id, its name, the beginning of its name or
 * of a word in it, whatever the case; the first of these ways that finds any must find one alone. Empty for an empty
 * text, undefined where none or several fit. A dish may stand there under several names.
 */
export function dishNamed(text: string, { dishes }: Pick<CourseTerms, 'dishes'>): string | undefined {
  const words = text.trim().toLowerCase();
  if (words === '') return '';
  const ways: ((name: string, id: string) => boolean)[] = [
    (name, id) => name === words || id === words,
    (name) => name.startsWith(words),
    (name) => name.includes(` ${words}`),
  ];
  for (const fits of ways) {
    const found = dishes.filter(({ name, recipe }) => fits(name.toLowerCase(), recipe));
    const [first, ...others] = new Set(found.map(({ recipe }) => recipe));
    if (first !== undefined) return others.length === 0 ? first : undefined;
  }
  return undefined;
}
