import { expect, test } from 'vitest';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';

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
