import { readFileSync } from 'node:fs';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { useByText } from '../../../src/components/kitchen/cards/label-pieces.ts';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { accepted, must, planOf, secondKitchen } from '../offers/second-kitchen.ts';

const say = wordsIn('en-US');

const CRUMBLE = readFileSync(
  new URL('../../fixtures/second-kitchen/recipes/apple-oat-crumble.mdx', import.meta.url),
  'utf8',
);

const ofDish = async (dish: string, ...changes: Change[]) =>
  (await planOf(accepted(await secondKitchen(...changes)))).labels.filter((label) => label.dish === dish);

describe('labels', () => {
  test('are one for each container that travels, numbered, the last with what it really holds', async () => {
    // 14.098 l in containers of 12.6 l × 85 % = 10.71 l: one full, 3.388 l in the other. 48 pieces in trays of 24.
    const chowder = await ofDish('Smoked haddock chowder');
    expect(chowder.map(({ of, container }) => [of, container])).toEqual([
      ['1 of 2', 'GN 1/1, 100 mm'],
      ['2 of 2', 'GN 1/1, 100 mm'],
    ]);
    const litres = chowder.map(({ amount }) => must(parseQuantity(amount)).amount.valueOf());
    expect(litres[0]).toBeCloseTo(10.71, 1);
    expect(litres[1]).toBeCloseTo(3.388, 1);
    const crumble = await ofDish('Apple and oat crumble');
    expect(crumble.map(({ of, amount }) => [of, amount])).toEqual([
      ['1 of 2', '24 pieces'],
      ['2 of 2', '24 pieces'],
    ]);
  });

  test('are one for a dish that is packed in nothing, with all of it', async () => {
    const labels = await ofDish('Apple and oat crumble', [
      'recipes/apple-oat-crumble.mdx',
      'pack: { carry: tray-24, serve: tray-24 }\n',
      '',
    ]);
    expect(labels.map(({ of, container, amount }) => [of, container, amount])).toEqual([
      ['1 of 1', '', '41 pieces'],
    ]);
  });

  test('list ingredients by weight, parts of parts included, compound goods with their own', async () => {
    const [label] = await ofDish('Smoked haddock chowder');
    const listed = label?.ingredients ?? '';
    // In a batch: 4 kg potatoes, 3.6 kg haddock, some 3 kg milk, 40 slices of 50 g = 2 kg bread, leeks 1.5 kg and
    // more in the broth. Potatoes outweigh all but the broth's own water.
    const places = ['Potatoes', 'Smoked haddock', 'Wholemeal soda bread', 'Butter', 'Parsley'].map((name) =>
      listed.indexOf(name),
    );
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(listed).toContain('Wholemeal soda bread (wholemeal wheat flour, buttermilk, baking soda, salt)');
    for (const ofBroth of ['Onions', 'Celery', 'Bay leaves, dried']) expect(listed).toContain(ofBroth);
  });

  test('name the allergens by the kitchen’s law, and do not pass over what nobody has said', async () => {
    const [known] = await ofDish('Smoked haddock chowder');
    expect(known?.contains.join('; ')).toMatch(/fish/i);
    expect(known?.contains.join('; ')).toMatch(/celery/i);
    // In capitals, both of them.
    expect(known?.mayContain.join('; ')).toMatch(/OATS/);
    expect(known?.contains.join('')).toBe(known?.contains.join('').toUpperCase());
    expect(known?.contains).not.toContain('NOT ALL KNOWN');
    const event = accepted(await secondKitchen());
    const since = await secondKitchen(['ingredients/own.yaml', '  contains: fish (haddock)\n', '']);
    const plan = await planOf({ ...since, offers: event.offers, events: event.events });
    expect(plan.labels[0]?.contains.at(-1)).toBe('NOT ALL KNOWN');
    // The recipe's card says it too, as a whole and beside the line.
    const card = plan.recipes.find(({ id }) => id === 'haddock-chowder');
    expect(card?.contains.at(-1)).toBe('NOT ALL KNOWN');
    expect(
      card?.lines.filter(({ allergens }) => allergens.includes('NOT ALL KNOWN')).map(({ id }) => id),
    ).toEqual(['smoked-haddock']);
  });

  test('date food from the day it is made: a part made earlier decides', async () => {
    // The broth is made on the 19th and keeps 4 days, day 1 included; the chowder, made on the 20th, 2 days.
    const [chowder] = await ofDish('Smoked haddock chowder');
    expect([chowder?.madeOn, chowder?.useBy]).toEqual(['Thursday, 20 May 2027', 'Friday, 21 May 2027']);
    const [earlier] = await ofDish('Smoked haddock chowder', [
      'recipes/haddock-chowder.mdx',
      'keeps: 2 days',
      'keeps: 7 days',
    ]);
    expect(earlier?.useBy).toBe('Saturday, 22 May 2027');
  });

  test('leave room for the day where nobody states how long it keeps, and say the last one that it may be', async () => {
    const [chowder] = await ofDish('Smoked haddock chowder', [
      'recipes/haddock-chowder.mdx',
      'keeps: 2 days\n',
      '',
    ]);
    // Its broth of the 19th is stated to keep 4 days, that day counted.
    expect([chowder?.useBy, chowder?.useByLatest]).toEqual(['', 'Saturday, 22 May 2027']);
    expect(chowder && useByText(chowder, say)).toBe(
      'Use by ______________ (no later than Saturday, 22 May 2027)',
    );
    const [crumble] = await ofDish('Apple and oat crumble', [
      'recipes/apple-oat-crumble.mdx',
      /^keeps: .*\n/m.exec(CRUMBLE)?.[0] ?? '',
      '',
    ]);
    expect(crumble?.useBy).toBe('');
    expect(useByText({ useBy: '' }, say)).toBe('Use by ______________');
  });

  test('carry together exactly what the batches make', async () => {
    for (const adults of [20, 29, 40, 61]) {
      const plan = await planOf(
        accepted(await secondKitchen(), { guests: { adults, children: 3, vendors: 1, staff: 3 } }),
      );
      const crumble = plan.labels.filter(({ dish }) => dish === 'Apple and oat crumble');
      const total = crumble.reduce(
        (sum, { amount }) => sum.add(must(parseQuantity(amount)).amount),
        new Fraction(0n),
      );
      const made = plan.recipes.find(({ id }) => id === 'apple-oat-crumble')?.makes.exact;
      expect(`${total.toFraction()} piece`).toBe(made);
    }
  });
});
