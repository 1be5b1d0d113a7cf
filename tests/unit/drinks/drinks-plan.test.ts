import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import { explain } from '../../../src/exports/explanation.ts';
import { packOutCsv } from '../../../src/exports/files/pack-out-csv.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { prepPlanSchema } from '../../../src/exports/form/prep-plan.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { done, EVENT, supperKitchen } from '../events/supper-kitchen.ts';
import { DRINKS_CONTENT } from './drinks-kitchen.ts';

const DAY = '2027-05-10';

async function planWith(changes: Readonly<Record<string, string>> = {}): Promise<PrepPlanDocument> {
  const dir = await supperKitchen({ ...DRINKS_CONTENT, ...changes });
  return JSON.parse(await done(dir, DAY, 'plan', EVENT, '--json'));
}

const changed = (file: string, from: string, to: string) => {
  const text = DRINKS_CONTENT[file] ?? '';
  if (!text.includes(from)) throw new Error(`${file} has no “${from}”`);
  return { [file]: text.replace(from, to) };
};

const bought = ({ shopping }: PrepPlanDocument, id: string) => {
  const item = shopping.find(({ ingredient }) => ingredient === id);
  return [item?.need.exact, ...(item?.packs.map(({ count, pack }) => `${count} × ${pack}`) ?? [])];
};

/*
 * By hand, for 80 adults and 12 children. An adult takes 2 + 3 × 1 = 5 drinks in four hours, a child 1 + 3 × ½ = 2½; in all
 * 400 + 30 = 430, and on a hot day a quarter more: 537½. Children take what is for them in the proportions 40 : 30 : 20, so
 * 4/9, 3/9 and 2/9 of theirs, and count as 5/9 of an adult in each kind: 80 + 12 × 5/9 = 86⅔.
 */
describe('drinks for four hours at 30 °C for 80 adults and 12 children', () => {
  test('are as many of each kind as worked by hand, and what is carried for them', async () => {
    const { drinks } = await planWith();
    expect(drinks?.total).toBe(538);
    expect(drinks?.high).toBe('30 °C');
    expect(drinks?.kinds.map(({ name, drinks: count, amount }) => [name, count, amount.exact])).toEqual([
      // 86⅔ × 5 × 40 % × 8 fl oz × 1¼ = 1,733⅓ fl oz, 216⅔ glasses.
      ['Pear cup', 217, '5200/3 fl oz'],
      // 86⅔ × 5 × 30 % × 1¼ = 162½ bottles, whole ones.
      ['Pear soda', 163, '163 bottle'],
      // 80 × 5 × 10 % × 5 fl oz × 1¼ = 250 fl oz, 50 glasses, none for children.
      ['Still cider', 50, '250 fl oz'],
      // 86⅔ × 5 × 20 % × 8 fl oz × 1¼ = 866⅔ fl oz, 108⅓ glasses.
      ['Plain water', 109, '2600/3 fl oz'],
    ]);
  });

  test('are bought in whole packs, with ice, and without water from the tap', async () => {
    const plan = await planWith();
    expect(bought(plan, 'pear-soda')).toEqual(['163 bottle', '7 × 24 bottles']);
    expect(bought(plan, 'still-cider')).toEqual(['10 bottle', '1 × 12 bottles']);
    expect(bought(plan, 'pear-juice')[1]).toBe('7 × 1 gal');
    expect(bought(plan, 'bagged-ice')[1]).toBe('10 × 20 lb bag');
    expect(plan.shopping.map(({ ingredient }) => ingredient)).not.toContain('water');
  });

  /*
   * Glasses: (216⅔ + 108⅓) × 4 oz = 1,300 oz = 81¼ lb. Tubs: 163 × 12 + 250 = 2,206 fl oz = 65.239 l, from 30 °C to 40 °F
   * (4.444 °C): 65.239 kg × 4.186 kJ × 25.556 ÷ 333.55 kJ = 20.924 kg = 46.13 lb. Half as much again melts: 191.07 lb.
   */
  test('take the ice worked by hand from the latent heat of ice', async () => {
    const { drinks, packOut } = await planWith();
    const exact = (text = '0') => {
      const [over = '0', under = '1'] = (text.split(' ')[0] ?? '').split('/');
      return Number(over) / Number(under);
    };
    expect(drinks?.ice?.inGlasses.exact).toBe('325/4 lb');
    expect(exact(drinks?.ice?.inTubs.exact)).toBeCloseTo(46.13, 2);
    expect(exact(drinks?.ice?.total.exact)).toBeCloseTo(191.07, 2);
    expect(packOut.find(({ item }) => item.startsWith('Ice'))).toMatchObject({
      item: 'Ice for the drinks, 191 lb 4 oz',
      usedUp: true,
    });
    // Crowd tables go from 1 to 3 lb a guest, the most on hot days (common practice, no source).
    const each = exact(drinks?.ice?.total.exact) / 92;
    expect(each).toBeGreaterThan(1);
    expect(each).toBeLessThan(3);
  });

  test('are explained: the ice drink by drink and down to its bags, and the glasses', async () => {
    const plan = await planWith();
    const steps = (subject: string) => {
      const found = explain(plan, subject, wordsIn('en-US'), () => []);
      return found.ok ? found.value : [];
    };
    const ice = steps('ice');
    expect(ice.map(({ about }) => about)).toEqual([
      'Ice for Pear cup',
      'Ice for Pear soda',
      'Ice for Still cider',
      'Ice for Plain water',
      'Ice for the drinks, 191 lb 4 oz',
      'Bagged ice in Pear cup',
      'Bagged ice in Pear soda',
      'Bagged ice in Still cider',
      'Bagged ice in Water',
      'Buy: Bagged ice',
    ]);
    // 216⅔ × 4 oz = 866⅔ oz = 54⅙ lb.
    expect(ice[0]?.why.at(-1)).toBe('216⅔ drinks × 4 oz of ice = 54⅙ lb');
    expect(ice.at(-1)?.why.join('; ')).toContain('10 × 20 lb bag');
    expect(steps('tumblers')).toEqual([
      {
        about: '358 each: Tumblers',
        why: [
          '325 drinks × 1 each = 325 each',
          '325 each + 10 % spare = 357½ each',
          '357½ each, rounded up: 358 each',
        ],
      },
    ]);
    expect(steps('Cocktail napkins')[0]?.why[0]).toBe('537½ drinks ÷ 2 × 1 each = 268¾ each');
    expect(steps('plates')[0]?.why).toEqual(['92 guests × 1 each = 92 each']);
  });

  test('come with glasses for what is served in them, napkins for all drinks, and plates for guests', async () => {
    const { packOut } = await planWith();
    const count = (name: string) => packOut.find(({ item }) => item === name)?.count;
    expect(packOut.find(({ item }) => item === 'Pear soda')).toMatchObject({ count: 163, unit: 'bottles' });
    // 325 × 1.1 = 357½; 537½ ÷ 2 × 1.1 = 295⅝.
    expect([count('Tumblers'), count('Cocktail napkins'), count('Plates')]).toEqual([358, 296, 92]);
  });

  test('say what the law asks where alcohol is served, and nothing of it elsewhere', async () => {
    const plan = await planWith();
    expect(plan.drinks?.cautions.join(' ')).toContain('drinking age');
    const lunch = DRINKS_CONTENT['packages/lunch.mdx'] as string;
    const without = lunch
      .replace('    cider-bottle: { share: 10 %, glass: 5 fl oz, ice: tub }\n', '')
      .replace('share: 30 %', 'share: 40 %');
    const dry = await planWith({ 'packages/lunch.mdx': without });
    expect(dry.drinks?.cautions).toEqual([]);
  });

  test('have the form that is published', async () => {
    expect(prepPlanSchema.safeParse(await planWith()).success).toBe(true);
  });

  test('are fewer on a day that is not hot, with less ice', async () => {
    const plan = await planWith(changed('proposals/pell-supper.md', 'weather: 30 °C', 'weather: 70 °F'));
    expect(plan.drinks?.hot).toBe(false);
    expect(plan.drinks?.total).toBe(430);
    // Stored at 72 °F: 130 × 12 + 200 = 1,760 fl oz = 52.05 kg, 17.78 °C: 11.613 kg = 25.602 lb; glasses 65 lb; with a quarter
    // that melts 113.2525 lb, printed in steps of 4 oz.
    expect(plan.drinks?.ice?.total.printed).toBe('113 lb 8 oz');
  });
});

describe('a menu with drinks', () => {
  test('offers them as dishes with their allergens and warns of the alcohol, and no ice, cups or water', async () => {
    const dir = await supperKitchen(DRINKS_CONTENT);
    const [offer] = (await readBook(dir, offerProblem)).book?.offers.get(EVENT) ?? [];
    const course = offer?.terms.packages[0]?.courses.at(-1);
    expect(course?.name).toBe('To drink');
    expect(
      course?.dishes.map(({ name, perGuest, counts, contains }) => [name, perGuest, counts, contains]),
    ).toEqual([
      ['Pear cup', '16 fl oz per guest', { adults: '1', children: '5/9' }, []],
      ['Pear soda', '1½ bottles per guest', { adults: '1', children: '5/9' }, []],
      ['Still cider', '2½ fl oz per guest', { adults: '1' }, ['sulphites']],
    ]);
    expect(offer?.notices).toEqual([expect.stringContaining('Alcohol (Still cider)')]);
    const said = JSON.stringify(offer);
    for (const never of ['bagged-ice', 'Bagged ice', 'Tumblers', 'Plain water', 'weather'])
      expect(said).not.toContain(never);
  });

  /*
   * 80 % cider, 10 % soda, 10 % water: children share soda and water half and half, 1¼ each of 2½, and an adult takes ½ of 5:
   * 2/5 of a child. 80 × ½ + 12 × 1¼ = 55 of each, on the hot day 68¾; cider 80 × 5 × 80 % × 1¼ = 400.
   */
  test('may hold alcohol for the most part, so that children take more of the rest than adults', async () => {
    const lunch = `${DRINKS_CONTENT['packages/lunch.mdx']}`
      .replace(/ +pear-cup: .*\n/, '')
      .replace('share: 30 %', 'share: 10 %')
      .replace('share: 10 %, glass: 5', 'share: 80 %, glass: 5')
      .replace('share: 20 %', 'share: 10 %');
    const { drinks } = await planWith({ 'packages/lunch.mdx': lunch });
    const kind = (name: string) => drinks?.kinds.find((each) => each.name === name);
    expect(kind('Pear soda')?.amount.exact).toBe('69 bottle');
    expect(kind('Plain water')?.amount.exact).toBe('550 fl oz');
    expect(kind('Still cider')?.drinks).toBe(400);
  });

  test('gives those who work neither alcohol nor what goes with it', async () => {
    const lunch = `${DRINKS_CONTENT['packages/lunch.mdx']}`
      .replace('minimum guests: 20', 'minimum guests: 20\ncounts: adults, children, vendors\nvendor: 20.00')
      .replace('glass: 5 fl oz, ice: tub', 'glass: 5 fl oz, ice: tub, with: { milk-jug: 1 fl oz }');
    const dir = await supperKitchen({ ...DRINKS_CONTENT, 'packages/lunch.mdx': lunch });
    const [offer] = (await readBook(dir, offerProblem)).book?.offers.get(EVENT) ?? [];
    const dishes = offer?.terms.packages[0]?.courses.at(-1)?.dishes ?? [];
    expect(dishes.map(({ name, counts }) => [name, counts])).toEqual([
      ['Pear cup', { adults: '1', children: '5/9', vendors: '1' }],
      ['Pear soda', { adults: '1', children: '5/9', vendors: '1' }],
      ['Still cider', { adults: '1' }],
      ['Milk for the tea', { adults: '1' }],
    ]);
  });

  test('plans an add-on’s drinks with what is served with them, hot ones the same on a hot day', async () => {
    const plan = await planWith(
      changed(
        'proposals/pell-supper.md',
        'add-ons: tea-table',
        'include: { tea-table: 1 }\nadd-ons: tea-table',
      ),
    );
    const need = (name: string) => plan.dishes.find((dish) => dish.name === name)?.need.exact;
    // 92 guests × 2 hours × 8 fl oz, and ½ fl oz of milk for each.
    expect([need('Hot tea'), need('Milk for the tea')]).toEqual(['1472 fl oz', '92 fl oz']);
    expect(plan.drinks?.kinds.find(({ name }) => name === 'Hot tea')?.drinks).toBe(184);
    expect(plan.days.flatMap(({ tasks }) => tasks.map(({ text }) => text))).toContain('Brew.');
  });
});

describe('the pack-out list', () => {
  const cold = `${DRINKS_CONTENT['kitchen.yaml']}containers:
  pot: { name: Lidded pot, holds: 1 gal, for: cold }
carriers:
  cold-box: { name: Cold box, count: 40, for: cold, holds: 4 pot }
kit:
  gloves: { name: Gloves, amount: 1 per event, used up: yes }
  broom: { name: Brooms, amount: 1 per event }
`;
  const cup = `${DRINKS_CONTENT['recipes/pear-cup.mdx']}`.replace(
    'hold: cold',
    'hold: cold\npack: { carry: pot }',
  );

  test('tells ice for carriers from ice for drinks, and what is used up from what comes back', async () => {
    const plan = await planWith({ 'kitchen.yaml': cold, 'recipes/pear-cup.mdx': cup });
    const ices = plan.packOut.filter(({ item }) => /^ice\b/i.test(item));
    expect(ices.map(({ group, item }) => [group, item.replace(/, .*/, '')])).toEqual([
      ['carriers', 'Ice for the carriers'],
      ['service ware', 'Ice for the drinks'],
    ]);
    const usedUp = plan.packOut.filter((line) => line.usedUp).map(({ item }) => item.replace(/, .*/, ''));
    expect(usedUp).toEqual(['Ice for the carriers', 'Ice for the drinks', 'Gloves']);
    const rows = parse(packOutCsv(plan, wordsIn('en-US')), { columns: true }) as Record<string, string>[];
    const back = (item: string) => rows.find((row) => row.item?.startsWith(item))?.back;
    expect(['Ice for the carriers', 'Ice for the drinks', 'Gloves', 'Brooms'].map(back)).toEqual([
      'used up',
      'used up',
      'used up',
      '',
    ]);
  });
});

describe('the odds that a drink runs short', () => {
  /*
   * Cider: 80 adults × 6¼ drinks, one in ten of them cider. Each adult takes a drink six times, and a quarter of one more: the
   * mean is 50 and the variance 80 × (6 × 0.1 × 0.9 + 0.025 × 0.975) = 45.15. By the normal curve with its half step, an
   * oracle outside the code, fewer than 1 in 50 events ask for more than 50 + 2.054 × 6.719 − ½ = 63.3 glasses.
   */
  test('come from each guest’s drinks and the share, and are about even without overage', async () => {
    const { odds } = await planWith();
    const cider = odds?.dishes.find(({ name }) => name === 'Still cider');
    expect(cider?.expected).toBe('50');
    expect(cider?.planned.helpings).toBe(50);
    expect(Number(cider?.planned.chance)).toBeGreaterThan(0.4);
    expect(Number(cider?.planned.chance)).toBeLessThan(0.5);
    const [, oneInFifty] = cider?.least ?? [];
    expect(Math.abs((oneInFifty?.at.helpings ?? 0) - 64)).toBeLessThanOrEqual(1);
    expect(cider?.why[0]).toBe('80 adults: 6¼ drinks each, 10 % of them this one');
  });

  test('decide what is carried where a risk is chosen', async () => {
    const risky = changed(
      'packages/lunch.mdx',
      '10 %, glass: 5 fl oz',
      '10 %, overage: short at most 1 in 50, glass: 5 fl oz',
    );
    const plan = await planWith(risky);
    const cider = plan.dishes.find(({ name }) => name === 'Still cider');
    const least = plan.odds?.dishes.find(({ name }) => name === 'Still cider')?.planned.helpings ?? 0;
    expect(Math.abs(least - 64)).toBeLessThanOrEqual(1);
    expect(cider?.need.exact).toBe(`${least * 5} fl oz`);
    expect(cider?.overage).toBe('short at most 1 in 50');
  });
});
