import { expect, test } from 'vitest';
import { parseKeepBack, parseLateGuests } from '../../../src/book/link/proposal/keep-back.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';

/** The evening served at 19:30 for two hours, for 38 guests, with what is written of keeping back. */
const said = (lines: string): Change => [
  'proposals/lifeboat-evening.md',
  'lines: 1\n',
  `lines: 1\n${lines}\n`,
];
const eveningWith = async (lines: string, ...changes: readonly Change[]) =>
  planOf(accepted(await secondKitchen(said(lines), ...changes), { needs: {} }));
const kept = async (lines: string, ...changes: readonly Change[]) =>
  (await eveningWith(lines, ...changes)).keptBack?.map(({ dish, seconds, late, amount, hold, until }) =>
    [dish, seconds, late, amount.printed, hold, until].join(' | '),
  );

test('second helpings are a share of the portions, kept as the dish is until service is over', async () => {
  // Hot food is done when loading begins: 19:30 less 1½ h, 10 min and 30 min is 17:20, and it stands 2½ h, until 19:50;
  // what stands at room temperature is done a quarter of an hour before packing ends, 17:05, and stands 4 h.
  // 34 adults, 3 children and a vendor: 38 × 10 % = 3.8, so four portions of 350 ml and of 1 piece.
  expect(await kept('keep back: 10 %')).toEqual([
    'Smoked haddock chowder | 4 | 0 | 1.4 l | hot | 19:50',
    'Apple and oat crumble | 4 | 0 | 4 pieces | room | 21:05',
  ]);
});

test('late guests have a portion each until they come, never longer than the dish stands', async () => {
  expect(await kept('late guests: 2 until 20:15')).toEqual([
    'Smoked haddock chowder | 0 | 2 | 700 ml | hot | 19:50',
    'Apple and oat crumble | 0 | 2 | 2 pieces | room | 20:15',
  ]);
  expect((await kept('late guests: 2 until 20:15\nkeep back: 10 %'))?.[1]).toBe(
    'Apple and oat crumble | 4 | 2 | 6 pieces | room | 21:05',
  );
});

test('nothing is said of it where nothing is written, and nothing is cooked for it but in addition', async () => {
  const plain = await eveningWith('');
  expect(plain).not.toHaveProperty('keptBack');
  const needs = ({ dishes }: typeof plain) => dishes.map(({ need }) => need.exact);
  expect(needs(await eveningWith('keep back: 10 %'))).toEqual(needs(plain));
  // 38 × 350 ml = 13.3 l; a tenth of that more.
  const more = await eveningWith('keep back: 10 % in addition');
  const liters = (plan: typeof plain) => {
    const [n = '0', d = '1'] = (plan.dishes[0]?.need.exact.split(' ')[0] ?? '').split('/');
    return Number(n) / Number(d);
  };
  expect(liters(more) - liters(plain)).toBeCloseTo(13_300 * 0.1, 6);
});

test('what leaves guests without a portion at first is told, and what is cooked in addition leaves none', async () => {
  const short = async (lines: string) =>
    (await eveningWith(lines)).findings.filter(({ what }) => what.includes('kept back'));
  expect(await short('keep back: 40 %')).not.toEqual([]);
  expect(await short('keep back: 40 % in addition')).toEqual([]);
});

test('shares, counts and times that are none are refused with what to write', () => {
  for (const text of ['all of it', '0 %', '60 %']) expect(parseKeepBack(text).ok, text).toBe(false);
  for (const text of ['4', 'four until 21:00', '4 until late'])
    expect(parseLateGuests(text).ok, text).toBe(false);
  expect(parseLateGuests('4 until 9:00 pm')).toEqual({ ok: true, value: { guests: 4, until: '21:00' } });
});
