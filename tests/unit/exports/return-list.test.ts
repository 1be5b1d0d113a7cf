import { expect, test } from 'vitest';
import { returnCsv } from '../../../src/exports/files/return-csv.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';
import { readCsv } from './read-csv.ts';

const RENTALS = [
  'rentals:',
  '  plate: { name: Plates, amount: 1 each per guest, hired from: Tallow Yard Hire, back within: 2 days, replacement: 6.50 }',
  '  jug: { name: Jugs, amount: 1 each per 8 guests }',
  'kit: { gloves: { name: Gloves, amount: 1 box per event, used up: yes }, bin: { name: Bins, amount: 2 per event }, mats: { name: Mats, amount: 1 per event, washed: place } }',
  'add-ons:',
].join('\n');

const planned = async (from = 'add-ons:', to = RENTALS) =>
  planOf(accepted(await secondKitchen(['kitchen.yaml', from, to]), { addOns: { 'tea-table': 1 } }));

test('what comes back are the containers of the pack-out by kind, and all else that is not used up', async () => {
  const { packOut, returns = [] } = await planned();
  const inContainers = Map.groupBy(
    packOut.filter(({ group, container }) => group === 'food' && container !== ''),
    ({ container }) => container,
  );
  const counts = [...inContainers].map(([name, lines]) => [
    name,
    lines.reduce((sum, { count }) => sum + count, 0),
  ]);
  expect(counts.length).toBeGreaterThan(1);
  expect(
    returns.filter(({ group }) => group === 'containers').map(({ item, count }) => [item, count]),
  ).toEqual(counts);
  expect(returns.filter(({ group }) => group === 'kit').map(({ item, count }) => [item, count])).toEqual([
    ['Bins', 2],
    ['Mats', 1],
  ]);
  expect(returns.map(({ item }) => item)).not.toContain('Gloves');
  // Nobody is counted back in, and no dish.
  for (const { item } of packOut.filter(({ group }) => group === 'staff' || group === 'food'))
    expect(returns.map((line) => line.item)).not.toContain(item);
});

test('what is hired says whose it is, by when it is back and that the hirer washes it', async () => {
  const { event, returns = [] } = await planned();
  const plates = returns.find(({ item }) => item === 'Plates');
  const twoDaysLater = new Date(Date.parse(`${event.date}T00:00:00Z`) + 2 * 86_400_000)
    .toISOString()
    .slice(0, 10);
  expect(plates).toMatchObject({ hiredFrom: 'Tallow Yard Hire', by: twoDaysLater, washed: 'hirer' });
  expect(plates?.byText).not.toBe('');
  expect(returns.find(({ item }) => item === 'Jugs')).toMatchObject({
    hiredFrom: '',
    by: '',
    washed: 'kitchen',
  });
  // Kit is not washed, unless its entry states by whom.
  expect(returns.find(({ item }) => item === 'Bins')?.washed).toBe('');
  expect(returns.find(({ item }) => item === 'Mats')?.washed).toBe('place');
});

test('return-list.csv has a line for each with boxes to fill in', async () => {
  const { returns = [] } = await planned();
  const [header, ...rows] = readCsv(returnCsv(returns, wordsIn('en-US')));
  expect(header).toEqual('group,item,count,unit,hired from,back by,washed by,back,broken,missing'.split(','));
  expect(rows).toHaveLength(returns.length);
  expect(rows.every((row) => row.slice(-3).join('') === '')).toBe(true);
  expect(rows.find(([, item]) => item === 'Plates')?.slice(4, 7)).toEqual([
    'Tallow Yard Hire',
    returns.find(({ item }) => item === 'Plates')?.by,
    'the hirer',
  ]);
});
