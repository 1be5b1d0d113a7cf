import type { Equipment } from '../../engine/kitchen/kitchen.ts';
import type { ClockFinding } from '../../engine/plan/clock/clock-finding.ts';
import type { HeldFood } from '../../engine/plan/clock/holding.ts';
import { keepersOf } from '../../engine/plan/days/holding-room.ts';
import type { Say } from '../../words/words-in.ts';
import { clockOf } from './clock-text.ts';
import { dateText } from './date-text.ts';
import { wholePercentOf } from './percent-text.ts';

/** What words about holding need besides the figures. */
interface HoldingWords {
  readonly say: Say;
  readonly locale: string;
}

/** Where finished food waits hot or cold until it is loaded, `Warming cabinet: waits hot from 10:20 to 11:00`. */
export function waitsInText(
  held: readonly HeldFood[],
  equipment: ReadonlyMap<string, Pick<Equipment, 'name' | 'keeps'>>,
  { say, locale }: HoldingWords,
): string {
  const told = held.map(({ keeps, from, until }) =>
    say('clock.waits-in', {
      how: keeps,
      from: clockOf(from),
      until: clockOf(until),
      equipment: keeperNames(equipment, keeps, locale),
    }),
  );
  return [...new Set(told)].join(' · ');
}

/** What keeps food so, by name. */
export function keeperNames(
  equipment: ReadonlyMap<string, Pick<Equipment, 'name' | 'keeps'>>,
  keeps: HeldFood['keeps'],
  locale: string,
): string {
  return namesIn(
    keepersOf(equipment, keeps).map(({ name }) => name),
    locale,
  );
}

/** More food that waits than what keeps it holds, and what was tried. */
export function holdingFinding(
  { date, keeps, equipment, from, until, share, recipes }: Extract<ClockFinding, { kind: 'holding' }>,
  ways: string,
  { say, locale }: HoldingWords,
) {
  const defers = say('safety.defers');
  return {
    about: namesIn(equipment, locale),
    what: say('clock.holding', {
      day: dateText(date, locale),
      from: clockOf(from),
      until: clockOf(until),
      how: keeps,
      share: wholePercentOf(share),
      recipes: namesIn(recipes, locale),
    }),
    wayOut: ways
      ? say('clock.holding-tried', { ways, how: keeps, defers })
      : say('clock.holding-way', { how: keeps, defers }),
  };
}

function namesIn(names: readonly string[], locale: string): string {
  return new Intl.ListFormat(locale, { type: 'conjunction' }).format(names);
}
