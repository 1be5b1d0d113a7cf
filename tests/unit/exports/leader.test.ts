import { expect, test } from 'vitest';
import type { PlanOdds } from '../../../src/exports/form/odds.ts';
import { planLeader } from '../../../src/exports/plan/leader.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

const say = wordsIn('en-US');
const KITCHEN = { name: 'Lantern Kitchen', phone: '555-0100' };

const at = (name: string, chance: string, odds: string) => ({
  name,
  planned: { chance, odds, helpings: 40, amount: {} },
});

const lead = (input: object, odds?: object) =>
  planLeader({ input } as never, undefined, [], odds as PlanOdds | undefined, KITCHEN, say);

test('numbers that nobody has stated stay blank, those of the site sheet stand there', () => {
  const venue = new Map([
    ['contact', 'Ysolde Quarrender'],
    ['phone', '555-0119'],
  ]);
  expect(lead({ client: 'Tamsin Pell', venue }).phones).toEqual([
    { who: 'Kitchen', name: 'Lantern Kitchen', number: '555-0100' },
    { who: 'Client', name: 'Tamsin Pell', number: '' },
    { who: 'Venue', name: 'Ysolde Quarrender', number: '555-0119' },
    { who: 'Driver', name: '', number: '' },
  ]);
});

test('what may run short is watched from 1 in 20 on, the likeliest first', () => {
  const dishes = [
    at('Rolls', '0.05', '1 in 20'),
    at('Slaw', '0.049', '1 in 20.4'),
    at('Hake', '0.2', '1 in 5'),
  ];
  expect(lead({ client: 'Tamsin Pell', venue: new Map() }, { dishes }).short).toEqual([
    { dish: 'Hake', odds: '1 in 5', helpings: 40 },
    { dish: 'Rolls', odds: '1 in 20', helpings: 40 },
  ]);
});

test('what nobody has asked is listed of a place that has a sheet, and of no other', () => {
  const venue = new Map([['water', 'yes']]);
  expect(lead({ client: '', venue }).notAsked).toEqual([]);
  expect(lead({ client: '', venue, siteSheet: 'net-loft' }).notAsked).toContain('phone');
});
