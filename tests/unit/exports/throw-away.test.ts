import { describe, expect, test } from 'vitest';
import { packOutCsv } from '../../../src/exports/files/pack-out-csv.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { figuresAsRead } from '../../../src/exports/words/figures-as-read.ts';
import { buffetCards } from '../../../src/views/kitchen/buffet-cards.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';

/*
 * The second kitchen's crumble as if it needed heat or cold: out of the oven in time to be packed at 17:05, it may stand for
 * 4 h (FDA Food Code, 3-501.19(B)), and service goes on until 21:30.
 */
const CRUMBLE = 'recipes/apple-oat-crumble.mdx';
const say = wordsIn('en-IE');

async function plan(): Promise<PrepPlanDocument> {
  const book = await secondKitchen(
    [CRUMBLE, 'temperature control: no\n', ''],
    [CRUMBLE, 'unattended: 40 min', 'unattended: 40 min\n    cook to: 75 °C'],
  );
  return planOf(accepted(book));
}

describe('the time by which food is thrown away', () => {
  test('is the same on dish, label, pack-out line, card, timeline, sheet and list, and in the finding', async () => {
    const document = await plan();
    const dish = document.dishes.find(({ recipe }) => recipe === 'apple-oat-crumble');
    const { left, by } = dish!.throwAway!;
    expect(Number(by.slice(0, 2)) - Number(left.slice(0, 2))).toBe(4);
    expect(by.slice(3)).toBe(left.slice(3));
    const labels = document.labels.filter((label) => label.dish === dish!.name);
    expect(labels.length).toBeGreaterThan(0);
    expect(labels.every((label) => label.throwAwayBy === by)).toBe(true);
    const lines = document.packOut.filter(({ group, item }) => group === 'food' && item === dish!.name);
    expect(lines.map(({ throwAwayBy }) => throwAwayBy)).toEqual([by]);
    expect(packOutCsv(document, say)).toContain(`Throw away by ${by}`);
    expect(document.timeline).toContainEqual(
      expect.objectContaining({
        part: 'discard',
        begins: by,
        what: `Throw away what is left: ${dish!.name}`,
      }),
    );
    const cards = buffetCards(figuresAsRead(document, 'en-IE'), 'en-IE');
    expect(cards.filter(({ until }) => until !== '').map((card) => [card.dish, card.until])).toEqual([
      [dish!.name, `On the table until ${by}`],
    ]);
    const check = document.safetySheet.checks.find(
      ({ recipe, stage }) => recipe === 'apple-oat-crumble' && stage === 'service',
    );
    expect(check?.limit).toContain(`by ${by}, out since ${left}`);
    expect(document.findings.map(({ what }) => what)).toContainEqual(
      expect.stringContaining(`must be thrown away by ${by}, but service goes on until 21:30`),
    );
  });

  test('is on nothing that is held hot or cold or is safe without', async () => {
    const document = planOf(accepted(await secondKitchen()));
    const text = JSON.stringify(await document);
    expect(text).not.toContain('throwAway');
    expect(text).not.toContain('throw away"');
  });
});
