/** What a dish is for a guest: as it is, made separately, not, or for the kitchen to say. */
export type NeedAnswer = 'suits' | 'on request' | 'not' | 'ask';

/**
 * What a dish is for a guest who has all the needs chosen, by number. `suits` has a letter for each need (`y`, `n`,
 * `u` for unknown), `made` the sets of needs that it meets when it is made separately (`1+2 5`). What is made for each of
 * two needs is not thereby made for both, so that the kitchen is asked; unknown is never a yes.
 */
export function needAnswer(suits: string, made: string, chosen: readonly number[]): NeedAnswer {
  if (chosen.every((need) => suits[need] === 'y')) return 'suits';
  const ways = made.split(' ').map((way) => way.split('+'));
  if (ways.some((way) => chosen.every((need) => way.includes(String(need))))) return 'on request';
  const never = (need: number) => suits[need] === 'n' && !ways.some((way) => way.includes(String(need)));
  return chosen.some(never) ? 'not' : 'ask';
}
