import type { PackOutLine } from '../form/sheets.ts';

/** Whether a line is counted back in: food by its containers; people, their meals and what is used up are not. */
export function comesBack({ group, usedUp }: Pick<PackOutLine, 'group' | 'usedUp'>): boolean {
  return group !== 'staff' && !usedUp;
}
