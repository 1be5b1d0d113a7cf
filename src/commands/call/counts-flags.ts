import { parseGuestCount } from '../../engine/measure/guest-count.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { Guests } from '../../engine/quote/counts.ts';
import { tidyLine } from '../../engine/text/visible-text.ts';
import type { Call, CommandOption } from './command.ts';

/** Flags that say how many people, by group. */
export const COUNT_OPTIONS: Record<string, CommandOption> = {
  adults: { type: 'string', summary: 'number of adults', value: 'N' },
  children: { type: 'string', summary: 'number of children', value: 'N' },
  vendors: { type: 'string', summary: 'vendor meals', value: 'N' },
  staff: { type: 'string', summary: 'staff meals', value: 'N' },
};

/** The counts that flags give, by flag; those not given are left out. Fails on one that is no whole number. */
export function countsFromFlags<const F extends string>(
  flags: Call['flags'],
  names: readonly F[],
): Parsed<Partial<Record<F, number>>> {
  const counts: Partial<Record<F, number>> = {};
  for (const name of names) {
    const text = flags[name];
    if (typeof text !== 'string') continue;
    const count = parseGuestCount(text);
    if (!count.ok) return notParsed(`--${name}: ${count.what}`, count.wayOut);
    counts[name] = count.value;
  }
  return parsed(counts);
}

/** Guests by need from `--need vegetarian=9`, given any number of times; 0 takes a need out. */
export function needsFromFlag(flag: Call['flags'][string]): Parsed<Record<string, number>> {
  const needs: Record<string, number> = {};
  for (const text of listOf(flag)) {
    const [, name, digits] = /^\s*([^=]{1,80}?)\s*=\s*(\d{1,6})\s*$/.exec(text) ?? [];
    if (name === undefined || digits === undefined)
      return notParsed(`can’t read --need ${text}`, 'write --need vegetarian=9, or --need vegan=0 for none');
    needs[tidyLine(name).toLowerCase()] = Number(digits);
  }
  return parsed(needs);
}

/** Mains by guest from `--take "Main course=a:50,b:34"`, given any number of times. */
export function mainsFromFlag(flag: Call['flags'][string]): Parsed<Record<string, Record<string, number>>> {
  const mains: Record<string, Record<string, number>> = {};
  for (const text of listOf(flag)) {
    const [, course, list = ''] = /^\s*([^=]{1,120}?)\s*=\s*(.+)$/.exec(text) ?? [];
    const dishes = list.split(',').map((each) => /^\s*([a-z0-9-]+)\s*:\s*(\d{1,6})\s*$/.exec(each));
    if (course === undefined || dishes.some((each) => each === null))
      return notParsed(`can’t read --take ${text}`, 'write --take "Main course=a:50,b:34"');
    mains[course] = Object.fromEntries(dishes.map((each) => [each?.[1] ?? '', Number(each?.[2])]));
  }
  return parsed(mains);
}

/** The groups that `served` and `guarantee` count. */
export const GROUP_FLAGS = [
  'adults',
  'children',
  'vendors',
  'staff',
] as const satisfies readonly (keyof Guests)[];

function listOf(flag: Call['flags'][string]): string[] {
  return Array.isArray(flag) ? flag : typeof flag === 'string' ? [flag] : [];
}
