import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { parseHeldTemperature } from '../../../../src/engine/measure/temperature.ts';
import { mostChilled } from '../../../../src/engine/plan/clock/chilling.ts';
import { startWhy } from '../../../../src/exports/words/clock-why.ts';
import { clockFinding } from '../../../../src/exports/words/clock-words.ts';
import { coolingText } from '../../../../src/exports/words/cooling-words.ts';
import { wordsIn } from '../../../../src/words/words-in.ts';
import { day, must, step } from '../builders.ts';
import { clock, hot, planned } from './clocked.ts';

const chiller: Equipment = {
  id: 'chiller',
  name: 'Blast chiller',
  count: 1,
  holds: [{ container: 'pan', count: 1 }],
  chills: minutes(90),
  station: undefined,
};
const words = {
  say: wordsIn('en-US'),
  locale: 'en-US',
  system: 'us' as const,
  stations: new Map<string, string>(),
  equipment: new Map([['chiller', chiller]]),
};
const cookTo = must(parseHeldTemperature('165 °F'));
/** Boiled for 20 minutes, then cooled in pans of a gallon; packed by 10:15. */
const pot = (id: string, chill: number) =>
  hot(id, [step('on the day', 'Boil', { handsOn: minutes(20), cookTo })], {
    hold: 'cold',
    chill: minutes(chill),
    pack: { chill: { container: 'pan', each: undefined } },
  });
const guests = (adults: number) => ({ guests: { adults, children: 0, vendors: 0, staff: 0 } });
const ofChiller = (facts: Partial<Equipment> = {}) => ({ equipment: [{ ...chiller, ...facts }] });

describe('equipment that chills', () => {
  test('takes what is cooled as soon as it is cooked, for as long as it chills, through both stages', () => {
    const { shown, steps, time, findings } = clock([planned('lunch', [pot('pot', 240)])], ofChiller());
    expect(shown).toEqual(['pot 1 8:25–8:45']);
    expect([steps[0]!.cooledTo!.at, steps[0]!.coldBy!].map(time)).toEqual(['9:15', '10:15']);
    expect(coolingText(steps[0]!, words)).toBe('Blast chiller · at 70 °F by 09:15');
    expect(startWhy(steps[0]!, words)).toBe('to be at 70 °F by 09:15 and cold by 10:15');
    expect(findings).toEqual([]);
  });

  test('takes one load after the other, and of the next dish when it is free, which is why that is cooked then', () => {
    const two = clock([planned('lunch', [pot('pot', 240)], guests(32))], ofChiller());
    // Two gallons are two loads of 90 min; the last is at 70 °F after 2 h, which is just what 3-501.14(A) gives.
    expect(two.shown).toEqual(['pot 1 6:55–7:15']);
    expect(two.time(two.steps[0]!.cooledTo!.at)).toBe('9:15');
    const { steps, time } = clock([planned('lunch', [pot('pot', 240), pot('soup', 240)])], ofChiller());
    const [first, last] = steps.toSorted((a, b) => a.begins - b.begins);
    expect([first!.coldBy!, last!.ends, last!.coldBy!].map(time)).toEqual(['8:45', '8:45', '10:15']);
    expect(startWhy(first!, words)).toBe(`Blast chiller: ${last!.batch.recipe.name} from 08:45`);
  });

  test('leaves out what cools sooner without it, and what it does not hold', () => {
    expect(clock([planned('lunch', [pot('pot', 80)])], ofChiller()).shown).toEqual(['pot 1 8:35–8:55']);
    const trays = ofChiller({ holds: [{ container: 'tray', count: 4 }] });
    const { shown, findings } = clock([planned('lunch', [pot('pot', 240)])], trays);
    expect(shown).toEqual(['pot 1 5:55–6:15']);
    expect(findings.map(({ kind }) => kind)).toEqual(['before crew']);
  });

  test('of another kind is used where the first is too slow for the code’s stages', () => {
    // Three loads take too long in the first; the second holds all three pans at once.
    const bath = { ...chiller, id: 'bath', name: 'Ice bath', holds: [{ container: 'pan', count: 3 }] };
    const { steps, findings } = clock([planned('lunch', [pot('pot', 300)], guests(48))], {
      equipment: [chiller, bath],
    });
    expect([steps[0]?.cools?.chiller?.equipment.name, findings]).toEqual(['Ice bath', []]);
  });

  test('too slow for the code’s stages is not used: told, with one more where that does', () => {
    // Three loads: the last would be at 70 °F after 3 h 30 min. In two of them it is there after 2 h.
    const late = { crew: { from: '3:00' } };
    const slow = clock([planned('lunch', [pot('pot', 300)], guests(48))], { ...ofChiller(), ...late });
    expect(slow.shown).toEqual(['pot 1 4:55–5:15']);
    expect(slow.findings).toMatchObject([
      { kind: 'chiller', recipes: ['pot'], ways: [{ kind: 'equipment', name: 'Blast chiller' }] },
    ]);
    expect(clockFinding(slow.findings[0]!, words)).toEqual({
      about: 'Blast chiller',
      what: 'on Saturday, May 15, 2027 there is no room in time for pot, which is planned to cool in shallow containers in the cold room or over ice; FDA Food Code 2022, 3-501.14(A) limits the time',
      wayOut:
        'what works: one more Blast chiller; otherwise chill it in the cold room or over ice, and measure it; the local food code and a licensed food-safety manager decide',
    });
    // At 100 min a load two of them still take two loads, at 70 °F after 2 h 13 min: one more does not do.
    const slower = { ...ofChiller({ chills: minutes(100) }), ...late };
    const never = clock([planned('lunch', [pot('pot', 360)], guests(48))], slower);
    expect(never.findings.filter(({ kind }) => kind === 'chiller')).toMatchObject([{ ways: [] }]);
  });

  test('without room before the crew comes takes what it can; the rest cools as without it, which is told', () => {
    // Chilled for 2 h one after the other, the first would be boiled at 5:55.
    const pots = [planned('lunch', [pot('pot', 150), pot('soup', 150)])];
    const { steps, findings, kept } = clock(pots, ofChiller({ chills: minutes(120) }));
    expect(steps.filter(({ cools }) => cools!.chiller)).toHaveLength(1);
    expect(kept.hours && kept.resources).toBe(true);
    expect(findings).toMatchObject([
      { kind: 'chiller', ways: [{ kind: 'equipment', name: 'Blast chiller' }] },
    ]);
    expect(clock(pots, ofChiller({ chills: minutes(120), count: 2 })).findings).toEqual([]);
  });

  test('takes work for other days too, one after the other', () => {
    const ahead = (id: string) => ({
      ...pot(id, 240),
      steps: [step('the day before', 'Boil', { handsOn: minutes(20), cookTo })],
    });
    const plans = [planned('lunch', [ahead('pot'), ahead('soup')])];
    const { steps, time } = clock(plans, ofChiller(), day('2027-05-14'));
    expect(steps.map(({ coldBy }) => time(coldBy!)).sort()).toEqual(['7:50', '9:20']);
  });
});

describe('food for which equipment has no room in time', () => {
  /** A step that is chilled in some minutes, and usually cools in others; without those it is in none. */
  const cooled = (id: string, minutes: number, usual?: number) =>
    ({
      id,
      cools: { minutes, ...(usual !== undefined && { chiller: {}, usual: { minutes: usual } }) },
    }) as unknown as Parameters<typeof mostChilled>[0][number];
  const steps = [
    cooled('rice', 60, 90),
    cooled('stew', 60, 240),
    cooled('beans', 60, 120),
    cooled('dip', 30),
  ];
  const chilled = (solved: typeof steps | undefined) =>
    solved?.filter(({ cools }) => cools?.usual).map(({ id }) => id);
  const asManyAs = (most: number) =>
    chilled(
      mostChilled(
        steps,
        (each) => [...each],
        (each) => (chilled(each)?.length ?? 0) <= most,
      ),
    );

  test('is that by whose chilling the least time is gained, one after the other', () => {
    expect([3, 2, 1, 0].map(asManyAs)).toEqual([['rice', 'stew', 'beans'], ['stew', 'beans'], ['stew'], []]);
    expect(asManyAs(-1)).toBeUndefined();
  });
});
