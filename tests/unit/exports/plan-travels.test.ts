import { expect, test } from 'vitest';
import { packOutCsv } from '../../../src/exports/files/pack-out-csv.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';

const say = wordsIn('en-US');

const chowder = 'Smoked haddock chowder';

test('food that is cooked only at the place goes with the cold, on list, label and sheet alike', async () => {
  const read = async (when: string) => {
    const plan = await planOf(
      accepted(await secondKitchen(['recipes/haddock-chowder.mdx', 'when: on the day', `when: ${when}`])),
    );
    return [
      plan.packOut.find(({ group, item }) => group === 'food' && item === chowder)?.hold,
      plan.labels.find(({ dish }) => dish === chowder)?.hold,
      plan.safetySheet.checks.find(({ stage, what }) => stage === 'transport' && what === chowder)?.limit,
    ];
  };
  // FDA Food Code 2022, 3-501.16(A): 135 °F (57 °C) or above, or 41 °F (5 °C) or below.
  expect(await read('on the day')).toEqual(['hot', 'hot', '57 °C or above']);
  expect(await read('at serving')).toEqual(['cold', 'cold', '5 °C or below']);
});

test('food that leaves raw is marked on servings, label, list and CSV, and stands below all that is ready', async () => {
  const plan = await planOf(
    accepted(
      await secondKitchen(
        ['recipes/haddock-chowder.mdx', 'when: on the day', 'when: at serving'],
        ['recipes/haddock-chowder.mdx', 'reheat: yes\n', ''],
      ),
      { addOns: { 'tea-table': 1 } },
    ),
  );
  // Cooked to 74 °C by its recipe; FDA Food Code 2022, 3-401.11(A)(1) requires 63 °C for 15 s for pieces of fish.
  const raw = {
    mark: 'RAW',
    next: 'cook to 74 °C',
    source:
      'FDA Food Code 2022, 3-401.11(A)(1) requires 63 °C for 15 s; the local food code and a licensed food-safety manager decide',
  };
  expect(plan.dishes.flatMap((each) => (each.raw ? [[each.name, each.raw]] : []))).toEqual([[chowder, raw]]);
  expect(plan.packOut.at(-1)).toMatchObject({ group: 'food', item: chowder, raw });
  expect(plan.packOut.slice(0, -1).filter((line) => line.raw)).toEqual([]);
  const marked = plan.labels.map((label) => label.raw !== undefined);
  expect(marked).toEqual([...marked].sort());
  expect(plan.labels.filter((label) => label.raw).map(({ dish }) => dish)).toEqual([chowder, chowder]);
  expect(packOutCsv(plan, say).trimEnd().split('\r\n').at(-1)).toContain(',cold,RAW: cook to 74 °C,');
});

test('food that is cooked before it leaves has no such mark', async () => {
  const plan = await planOf(accepted(await secondKitchen()));
  for (const each of [...plan.dishes, ...plan.packOut, ...plan.labels])
    expect(each).not.toHaveProperty('raw');
});
