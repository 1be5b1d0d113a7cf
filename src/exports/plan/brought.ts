import type { Equipment } from '../../engine/kitchen/kitchen.ts';
import type { ServedOn } from '../../engine/plan/clock/day-clock.ts';
import { type Brought, broughtTo, type Fuel, fuelsFor } from '../../engine/plan/load/brought.ts';
import type { PackOutLine } from '../form/sheets.ts';
import { amountText } from '../words/amount-text.ts';
import { clockOf, clockText } from '../words/clock-text.ts';
import type { CarrierWords } from './carriers.ts';

/** What is cooked on at the place, with the hours it is lit, and the fuel for it. */
export function broughtLines(
  served: ServedOn,
  equipment: ReadonlyMap<string, Equipment>,
  { system, locale, say, inWords }: CarrierWords,
): PackOutLine[] {
  const brought = broughtTo(served, equipment);
  const at = (minute: number) => clockText(clockOf(minute), locale);
  const lit = ({ equipment: gear, count, lit: { from, until } }: Brought): PackOutLine => ({
    group: 'equipment',
    item: gear.name,
    container: '',
    count,
    unit: say('lists.each'),
    hold: '',
    note: [
      say('lists.lit', { from: at(from), until: at(until) }),
      ...(gear.amperes === undefined ? [] : [say('lists.draws', { n: String(gear.amperes) })]),
    ].join('; '),
  });
  const fuel = ({ name, burned, taken, packed, why }: Fuel): PackOutLine => ({
    group: 'equipment',
    item: packed
      ? say('lists.fuel', { fuel: name, each: amountText(packed.each, system, 'line').printed })
      : say('lists.fuel-loose', { fuel: name, amount: amountText(taken, system, 'at-least').printed }),
    container: '',
    count: packed?.count ?? 1,
    unit: say('lists.each'),
    hold: '',
    note: say('lists.fuel-note', {
      burned: amountText(burned, system, 'at-least').printed,
      each: packed ? 'yes' : 'no',
    }),
    fuel: name,
    why: why.map(inWords),
  });
  return [...brought.map(lit), ...fuelsFor(brought).map(fuel)];
}
