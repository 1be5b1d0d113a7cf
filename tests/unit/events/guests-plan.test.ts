import { describe, expect, test } from 'vitest';
import { cardSheet, nameSize } from '../../../src/components/kitchen/cards/place-card-sheet.ts';
import type { PlanEventFacts } from '../../../src/exports/form/event.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { prepPlanSchema } from '../../../src/exports/form/prep-plan.ts';
import type { PlanSeat, PlanTables } from '../../../src/exports/form/tables.ts';
import { dishMarks } from '../../../src/exports/plan/dish-marks.ts';
import type { BrandView } from '../../../src/views/brand/brand-view.ts';
import { placeCards } from '../../../src/views/kitchen/place-cards.ts';
import { fileWith } from '../../commands/accepted-kitchen.ts';
import { changed, done, EVENT, supperKitchen } from './supper-kitchen.ts';

const DAY = '2027-04-26';
const FRITTERS = 'Bean fritters';

/** 84 guests as planned: 63 take the stew, 21 the pea pot; two with milk at table 1, four vegans at 10 and 11. */
const rows = Array.from({ length: 84 }, (_, index) => {
  const main = index < 63 ? 'Lamb stew' : 'Pea pot';
  const need = index < 2 ? 'milk' : index >= 80 ? 'vegan' : '';
  return `Guest ${index + 1},${Math.floor(index / 8) + 1},${main},${need}`;
});

async function planWith(
  change: (row: string, index: number) => string = (row) => row,
): Promise<PrepPlanDocument> {
  const dir = await supperKitchen(
    changed('recipes/bean-fritters.mdx', 'steps:\n', 'without: { herb-yogurt: milk }\nsteps:\n'),
  );
  const csv = ['name,table,main,need', ...rows.map(change)].join('\n');
  await done(dir, DAY, 'guests', EVENT, '--from', fileWith(csv));
  return JSON.parse(await done(dir, DAY, 'plan', EVENT, '--json'));
}

const aboutList = ({ findings }: PrepPlanDocument) =>
  findings.filter(({ about }) => /^Guest/.test(about)).map(({ about, what }) => `${about}: ${what}`);
const labelsApart = ({ labels }: PrepPlanDocument) =>
  labels.filter(({ guests }) => guests !== '').map(({ of, guests }) => `${of} ${guests}`);

describe('a plan with a guest list', () => {
  test('has the mains by table, adding up to the list and to what is cooked', async () => {
    const plan = await planWith();
    const [course] = plan.tables?.courses ?? [];
    expect(course?.dishes.map(({ name, listed, planned }) => [name, listed, planned])).toEqual([
      ['Lamb stew', 63, 63],
      ['Pea pot', 21, 21],
    ]);
    expect(course?.rows.map(({ table, counts }) => [table, ...counts]).slice(6)).toEqual([
      ['Table 7', 8, 0],
      ['Table 8', 7, 1],
      ['Table 9', 0, 8],
      ['Table 10', 0, 8],
      ['Table 11', 0, 4],
    ]);
    for (const index of [0, 1])
      expect(course?.rows.reduce((sum, { counts }) => sum + (counts[index] ?? 0), 0)).toBe(
        course?.dishes[index]?.listed,
      );
    expect(aboutList(plan)).toEqual([]);
    expect(prepPlanSchema.safeParse(plan).success).toBe(true);
  });

  test('names guests with their tables in alerts, and on each sealed portion that is theirs', async () => {
    const plan = await planWith();
    expect(plan.alerts.find(({ about }) => about === '2 × allergy: milk')?.who).toEqual([
      'Guest 1, Table 1',
      'Guest 2, Table 1',
    ]);
    expect(labelsApart(plan)).toEqual(
      expect.arrayContaining([
        '1 of 2 Sealed for Guest 1, Table 1: milk',
        '2 of 2 Sealed for Guest 2, Table 1: milk',
      ]),
    );
  });

  test('leaves room on a sealed portion whose guest the list does not name', async () => {
    const plan = await planWith((row, index) => (index === 1 ? row.replace('milk', '') : row));
    expect(labelsApart(plan)).toEqual(
      expect.arrayContaining([
        '1 of 2 Sealed for Guest 1, Table 1: milk',
        '2 of 2 Sealed for 2 × milk. Name ____________ Table ____',
      ]),
    );
    expect(aboutList(plan)).toEqual(['Guest list: milk: 1 on the list (Guest 1), 2 planned']);
  });

  test('warns of a choice that is not for the guest, of a need it does not know, and of more than are made apart', async () => {
    const plan = await planWith((row, index) => {
      if (index === 83) return 'Guest 84,11,lamb,Vegan';
      if (index === 5) return 'Guest 6,1,lamb,Celiac';
      return index === 2 ? 'Guest 3,1,lamb,dairy' : index === 3 ? 'Guest 4,1,lamb,Milk allergy' : row;
    });
    expect(aboutList(plan)).toEqual([
      'Guest 6, Table 1: “Celiac” is not a diet or allergy Salver knows',
      'Guest 84, Table 11: vegan, and can’t eat what they chose: Lamb stew',
      'Guest list: Main: Lamb stew 64 on the list (63 planned), Pea pot 20 on the list (21 planned)',
      'Guest list: milk: 4 on the list (Guest 1, Guest 2, Guest 3, Guest 4), 2 planned',
      'Guest list: Celiac: 1 on the list (Guest 6), 0 planned',
    ]);
    const fritters = plan.findings.find(({ what }) => /^made separately for 2/.test(what));
    expect(fritters?.about).toMatch(new RegExp(`^${FRITTERS}`));
    expect(fritters?.what).toContain('4 on the guest list need it');
    const [first] = plan.alerts;
    expect(first).toMatchObject({ about: '1 × Celiac', who: ['Guest 6, Table 1'] });
    expect(first?.what).toMatch(/^On the guest list only: nothing is planned for them\./);
  });
});

describe('place cards', () => {
  const brand = { locale: 'en-US' } as BrandView;

  test('are made for an event that is plated and has a list, one for each guest', async () => {
    const plan = await planWith();
    expect(placeCards(plan, brand)?.cards).toHaveLength(84);
    expect(placeCards({ ...plan, tables: null }, brand)).toBeNull();
    expect(placeCards({ ...plan, event: { ...plan.event, style: 'buffet' } }, brand)).toBeNull();
  });

  test('tell dishes apart by the kitchen’s words, else by whole words of their names, and by shapes', () => {
    const dishes = [
      { name: 'The lamb with beans', card: undefined },
      { name: 'Lamb stew', card: undefined },
      { name: 'Lamb', card: undefined },
      { name: '…', card: undefined },
      { name: 'Slow barley with mushrooms', card: 'barley' },
      { name: 'Chocolate olive oil torte with cream', card: undefined },
      { name: 'Pears gently poached in cider', card: undefined },
      { name: 'Bowl of leaves and radishes, dressed', card: undefined },
    ];
    expect(dishMarks(dishes).map(({ letters }) => letters)).toEqual([
      'THE LAMB WITH BEANS',
      'LAMB STEW',
      'LAMB',
      'DISH 4',
      'BARLEY',
      'TORTE',
      // Its last word is no noun, so all of it.
      'PEARS GENTLY POACHED IN CIDER',
      'BOWL OF LEAVES',
    ]);
    const many = dishMarks(Array.from({ length: 40 }, () => ({ name: 'Lamb stew', card: undefined })));
    expect(new Set(many.map(({ letters }) => letters)).size).toBe(40);
    expect(new Set(many.slice(0, 12).map(({ shape }) => shape)).size).toBe(12);
  });

  test('set apart on the front what is sealed for an allergy, made for a diet, or not for the guest', () => {
    const mark = { letters: 'BARLEY', shape: 'triangle' } as const;
    const seat: PlanSeat = {
      name: 'Guest 1',
      table: 'Table 1',
      need: '',
      dishes: [{ course: 'Main', name: 'Slow barley', ...mark }],
      notFor: [],
      apart: [],
      sealed: [],
    };
    const card = (facts: Partial<PlanSeat>) => {
      const tables = { seats: [{ ...seat, ...facts }] } as unknown as PlanTables;
      const [made] = placeCards({ event: { style: 'plated' } as PlanEventFacts, tables }, brand)?.cards ?? [];
      return made && [made.flag, made.dishes.map(({ name, tag }) => `${tag} ${name}`.trim()), made.besides];
    };
    const made = 'Slow barley (oil instead of butter)';
    const forGuest = (need: string, sealed: readonly string[]) => ({
      need,
      dishes: [{ course: 'Main', name: 'Slow barley', made, ...mark }],
      apart: [made, 'Rolls (without egg)'],
      sealed,
    });
    expect(card({})).toEqual([null, ['Slow barley'], []]);
    // The vegetarian eats the dish as it is, the vegan one that is made separately.
    expect(card({ need: 'vegetarian' })).toEqual([
      { sign: 'diet', words: 'VEGETARIAN' },
      ['Slow barley'],
      [],
    ]);
    expect(card(forGuest('vegan', []))).toEqual([
      { sign: 'diet', words: 'VEGAN' },
      [`VEGAN ${made}`],
      ['Made separately: Rolls (without egg)'],
    ]);
    expect(card(forGuest('milk', [made, 'Rolls (without egg)']))).toEqual([
      { sign: 'sealed', words: 'SEALED MEAL' },
      [`SEALED ${made}`],
      ['Sealed: Rolls (without egg)'],
    ]);
    // A plan made before it was said what is sealed.
    const { sealed: _, ...before } = forGuest('milk', []);
    const { sealed: __, ...oldSeat } = seat;
    const old = placeCards(
      {
        event: { style: 'plated' } as PlanEventFacts,
        tables: { seats: [{ ...oldSeat, ...before }] } as unknown as PlanTables,
      },
      brand,
    );
    expect(old?.cards[0]?.flag?.sign).toBe('sealed');
    expect(card({ need: 'milk', notFor: ['Slow barley'] })).toEqual([
      { sign: 'ask', words: 'ASK THE KITCHEN FIRST' },
      ['ASK Slow barley'],
      [],
    ]);
    // An allergy stays off the front, where the whole table reads it; words nobody knows may be one.
    for (const need of ['milk', 'Celiac'])
      expect(card({ need })?.[0]).toEqual({ sign: 'ask', words: 'ALLERGY: SEE BACK' });
  });

  test('are made with what each guest of the list really gets', async () => {
    const cards = placeCards(await planWith(), brand)?.cards ?? [];
    const [first] = cards;
    // Sealed are the fritters, of which nobody chooses.
    expect(first?.flag).toEqual({ sign: 'sealed', words: 'SEALED DISH: SEE BACK' });
    expect(first?.besides.some((text) => text.startsWith(`Sealed: ${FRITTERS}`))).toBe(true);
    expect(cards.filter(({ flag }) => flag?.sign === 'sealed').map(({ name }) => name)).toEqual([
      'Guest 1',
      'Guest 2',
    ]);
  });

  test.each(['letter', 'a4'] as const)(
    'lie in the middle of %s with every mark on the sheet and off the cards',
    (paper) => {
      const { width, height, left, top, cuts, folds } = cardSheet(paper);
      // Letter is 8½ × 11 in by ANSI/ASME Y14.1, A4 by ISO 216, both from memory; millimetres.
      expect([width, height]).toEqual(paper === 'letter' ? [215.9, 279.4] : [210, 297]);
      for (const { x1, y1, x2, y2 } of [...cuts, ...folds]) {
        expect(Math.min(x1, x2, y1, y2)).toBeGreaterThan(5);
        expect(Math.max(x1, x2)).toBeLessThan(width - 5);
        expect(Math.max(y1, y2)).toBeLessThan(height - 5);
      }
      const rowsOfFolds = [...new Set(folds.map(({ y1 }) => y1 - top))];
      expect(rowsOfFolds.map((y) => Math.round(y * 100) / 100)).toEqual([42.5, 127.5, 212.5]);
      expect(left * 2 + 2 * 88.9).toBeCloseTo(width);
    },
  );

  test('set a long name smaller', () => {
    expect(['Ada Lund', 'Tamsel Penhallow-Reed of the Weir', 'a'.repeat(80)].map(nameSize)).toEqual([
      'large',
      'middle',
      'small',
    ]);
  });
});
