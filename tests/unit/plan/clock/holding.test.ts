import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { fillings } from '../../../../src/engine/plan/clock/holding.ts';
import { clockFinding } from '../../../../src/exports/words/clock-words.ts';
import { waitsInText } from '../../../../src/exports/words/holding-words.ts';
import { wordsIn } from '../../../../src/words/words-in.ts';
import { step } from '../builders.ts';
import { bake, clock, hot, planned } from './clocked.ts';

const cabinet: Equipment = {
  id: 'cabinet',
  name: 'Warming cabinet',
  count: 1,
  holds: [{ container: 'pan', count: 4 }],
  keeps: 'hot',
  station: undefined,
};
const reachIn: Equipment = { ...cabinet, id: 'reach-in', name: 'Reach-in', keeps: 'cold' };
const inPans = { pack: { carry: { container: 'pan', each: undefined } } };
const PAN: [string, string, string][] = [['pan', '1 gal', '1']];
type Dishes = Parameters<typeof planned>[1];
/** A pan of each dish for 16 guests. */
const party = (id: string, dishes: Dishes, serveAt = '12:30', adults = 16) =>
  planned(id, dishes, { serveAt, guests: { adults, children: 0, vendors: 0, staff: 0 } }, PAN);
const words = {
  say: wordsIn('en-US'),
  locale: 'en-US',
  system: 'us' as const,
  stations: new Map<string, string>(),
  equipment: new Map([['cabinet', cabinet]]),
};
const fry = (id: string, min: number, facts: object = {}) =>
  hot(id, [step('on the day', 'Fry', { station: 'stove', handsOn: minutes(min) })], { ...inPans, ...facts });
const waits = ({ held, time }: ReturnType<typeof clock>) =>
  held.map(
    ({ recipe, from, until, share }) => `${recipe.id} ${time(from)}–${time(until)} ${share.toFraction()}`,
  );
const over = ({ findings, time }: ReturnType<typeof clock>) =>
  findings.flatMap((each) =>
    each.kind === 'holding'
      ? [{ at: `${time(each.from)}–${time(each.until)}`, share: each.share.toFraction(), ways: each.ways }]
      : [],
  );

describe('what keeps finished food hot or cold', () => {
  test('has it from the end of its last step until loading begins, by the containers it travels in', () => {
    // The truck leaves at 11:00 and is loaded from 10:30; one at the stove at a time.
    const day = clock([party('lunch', [fry('cod', 30), fry('eggs', 20)])], { equipment: [cabinet] });
    expect(day.shown).toEqual(['cod 1 9:40–10:10', 'eggs 1 10:10–10:30']);
    expect(waits(day)).toEqual(['cod 10:10–10:30 1/4']);
    expect(waitsInText(day.held, words.equipment, words)).toBe(
      'Warming cabinet: waits hot from 10:10 to 10:30',
    );
    expect(day.findings).toEqual([]);
  });

  test('has cold food from when it is cold, in a space of its own', () => {
    const slaw = hot('slaw', [step('on the day', 'Cut', { handsOn: minutes(30) })], {
      ...inPans,
      hold: 'cold',
    });
    const pot = fry('pot', 20, { hold: 'cold', chill: minutes(60) });
    const day = clock([party('lunch', [slaw, pot, fry('cod', 30)])], { equipment: [cabinet, reachIn] });
    const cold = day.held
      .filter(({ keeps }) => keeps === 'cold')
      .map(({ recipe, from }) => [recipe.id, from]);
    const ends = (id: string) => {
      const { coldBy, ends: end } = day.steps.find(({ batch }) => batch.recipe.id === id)!;
      return coldBy ?? end;
    };
    expect(cold).toEqual([
      ['slaw', ends('slaw')],
      ['pot', ends('pot')],
    ]);
    expect(
      fillings(day.held, 'hot').flatMap(({ foods }) => foods.map(({ recipe }) => recipe.id)),
    ).not.toContain('slaw');
  });

  test('is counted by nobody where the kitchen states none, or where none holds the container', () => {
    const dishes = [fry('cod', 30), fry('eggs', 20)];
    const without = clock([party('lunch', dishes)]);
    expect([waits(without), without.findings]).toEqual([[], []]);
    const trays = clock([party('lunch', dishes)], {
      equipment: [{ ...cabinet, holds: [{ container: 'tray', count: 1 }] }],
    });
    expect([trays.shown, waits(trays), trays.findings]).toEqual([without.shown, [], []]);
  });

  test('of several kinds is one space', () => {
    const table = { ...cabinet, id: 'table', name: 'Steam table', holds: [{ container: 'pan', count: 2 }] };
    const day = clock([party('lunch', [fry('cod', 30), fry('eggs', 20)])], { equipment: [cabinet, table] });
    expect(waits(day)).toEqual(['cod 10:10–10:30 1/6']);
  });

  test('too small is told, with what works, and the caution', () => {
    const small = { ...cabinet, holds: [{ container: 'pan', count: 1 }] };
    const dishes = [fry('cod', 30), fry('eggs', 20), fry('kale', 10)];
    const day = clock([party('lunch', dishes)], { equipment: [small] });
    expect(over(day)).toEqual([
      { at: '10:20–10:30', share: '2', ways: [{ kind: 'equipment', name: 'Warming cabinet' }] },
    ]);
    expect(clockFinding(day.findings[0]!, words)).toEqual({
      about: 'Warming cabinet',
      what: 'on Saturday, May 15, 2027 from 10:20 to 10:30 200 % of the space is needed for what waits hot: cod and eggs',
      wayOut:
        'what works: one more Warming cabinet; otherwise load it into hot carriers as it comes out, and check that it stays hot; the local food code and a licensed food-safety manager decide',
    });
    expect(over(clock([party('lunch', dishes)], { equipment: [{ ...small, count: 2 }] }))).toEqual([]);
  });

  describe('with two trucks', () => {
    // The lunch is loaded at 10:30, the late one at 11:15; in one oven one of its dishes is done at 10:15 at the latest.
    const inTray = { pack: { carry: { container: 'tray', each: undefined } } };
    const containers: typeof PAN = [...PAN, ['tray', '1 gal', '1']];
    const long = { stands: minutes(300) };
    const late = [bake('roast', { ...inTray, ...long }), bake('gratin', { ...inPans, ...long })];
    const day = (dishes: Dishes, pans: number, facts: Partial<Equipment> = {}) => {
      const event = (id: string, of: Dishes, serveAt: string) => planned(id, of, { serveAt }, containers);
      return clock(
        [
          event('lunch', [fry('cod', 20, long), fry('eggs', 20, long)], '12:30'),
          event('late', dishes, '13:15'),
        ],
        {
          equipment: [
            {
              ...cabinet,
              holds: [
                { container: 'pan', count: pans },
                { container: 'tray', count: 1 },
              ],
              ...facts,
            },
          ],
        },
      );
    };

    test('has food for the later one finished only when the earlier one is loaded, if that fits', () => {
      const wide = day(late.toReversed(), 9, { count: 9 });
      const small = day(late.toReversed(), 2);
      // Which of the two is baked first makes no difference to the food; the tray would not fit beside the eggs.
      expect(waits(wide).at(-1)).toBe('roast 10:15–11:15 1/9');
      expect(waits(small)).toEqual(['eggs 10:10–10:30 1/2', 'gratin 10:15–11:15 1/2']);
      expect(small.findings).toEqual([]);
    });

    test('too small for both is told with all that works: an oven, an earlier truck', () => {
      const trays = ['roast', 'pie'].map((id) => bake(id, { ...inTray, ...long }));
      const found = day(trays, 2);
      expect(over(found)).toEqual([
        {
          at: '10:15–10:30',
          share: '3/2',
          ways: [
            { kind: 'equipment', name: 'Warming cabinet' },
            { kind: 'equipment', name: 'Oven' },
            { kind: 'truck', occasion: 'lunch', at: 645 },
          ],
        },
      ]);
      expect(clockFinding(found.findings[0]!, words).wayOut).toContain('the truck for lunch leaves at 10:45');
    });
  });
});
