import { beforeEach, describe, expect, it } from 'vitest';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import type { EventPlan } from '../../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { thawingCheck } from '../../../src/engine/safety/kitchen-checks.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { safetySheet } from '../../../src/exports/safety-sheet.ts';
import { dish, event, food, kitchen, line, must, pack, prices, recipe, step } from '../plan/builders.ts';

const sold = (id: string, facts: Partial<Ingredient>) => food(id, { storage: 'chilled', ...facts });
const lamb = sold('lamb', { from: ['lamb'] });
const egg = sold('egg', { from: ['egg'] });
const mussel = sold('mussel', { from: ['mollusc'] });
const carrot = sold('carrot', { from: ['plant'] });
const stock = food('fish-stock', { from: ['fish'], storage: 'frozen', soldAs: 'ready to eat' });

const to = (when: string, temperature: string) =>
  step(when, 'Cook it', { cookTo: must(parseHeldTemperature(temperature)) });

const shank = recipe('shank', '20 servings', [line(lamb, '10 lb'), line(stock, '2 lb')], {
  hold: 'hot',
  reheat: true,
  batches: 'whole',
  pack: { chill: 'pan' },
  steps: [to('the day before', '195 °F'), to('on the day', '165 °F')],
});
const patty = recipe('patty', '50 pieces', [line({ ...lamb, soldAs: 'ground' }, '5 lb'), line(egg, '1 lb')], {
  hold: 'hot',
  steps: [step('the day before', 'Shape it'), to('at serving', '155 °F')],
});
const slaw = recipe('slaw', '100 servings', [line(carrot, '10 lb')], {
  hold: 'cold',
  pack: { chill: 'pan' },
  steps: [step('the day before', 'Shred it')],
});
const rolls = recipe('rolls', '100 pieces', [line(food('flour'), '5 lb')], {
  hold: 'room',
  temperatureControl: false,
  steps: [to('on the day', '190 °F')],
});
const sandwiches = recipe('sandwiches', '100 pieces', [line(food('bread'), '5 lb'), line(mussel, '1 lb')], {
  hold: 'room',
  steps: [to('on the day', '145 °F')],
});

/* Made anew for each test, so that each stands for what it asks. */
let plan: EventPlan;
let sheet: ReturnType<typeof safetySheet>;
beforeEach(() => {
  plan = planEvent(
    event(
      [
        dish(shank, '1 serving per guest'),
        dish(patty, '1 piece per guest'),
        dish(slaw, '1 serving per guest'),
        dish(rolls, '1 piece per guest'),
        dish(sandwiches, '1 piece per guest'),
      ],
      { away: { travel: minutes(30), setUp: minutes(60), service: minutes(300) } },
    ),
    kitchen([['pan', '240 fl oz', '1']]),
    prices(pack('lamb', '10 lb', '60.00'), pack('egg', '1 lb', '3.00', { supplier: 'hill' })),
  );
  sheet = safetySheet(plan, 'F', 'en-US', (id) => `${id} company`);
});
const at = (stage: string, recipeId?: string) =>
  sheet.checks.filter((each) => each.stage === stage && (recipeId ?? each.recipe) === each.recipe);

describe('the food-safety sheet', () => {
  it('names the code it is by, who has the last word, and a section with every figure', () => {
    expect(sheet.edition).toBe('FDA Food Code 2022');
    expect(sheet.defers).toContain('the local food code and a licensed food-safety manager decide');
    for (const { limit, section, blanks } of sheet.checks) {
      if (/\d °|\bh\b/.test(limit)) expect(section).toMatch(/^3-\d{3}\.\d{2}/);
      expect(blanks.at(-1)).toBe('initials');
    }
  });

  it('begins with deliveries by supplier: cold meat, eggs by the air, frozen goods, tags; roots need no reading', () => {
    expect(at('receiving').map(({ what, limit, section }) => [what, limit, section])).toEqual([
      ['hill company: egg', 'air at 45 °F or below', '3-202.11(C)'],
      ['quay company: lamb', '41 °F or below', '3-202.11(A)'],
      ['Supplier not known: mussel', '41 °F or below', '3-202.11(A)'],
      ['Supplier not known: fish-stock', 'frozen solid, no sign of thawing', '3-202.11(E)'],
      ['Supplier not known: mussel', 'tag on each container; keep it with the date served', '3-203.12'],
    ]);
    expect(at('thawing').map(({ what }) => what)).toEqual(['fish-stock']);
  });

  it('follows a braise through cooking, cooling and heating again, a blank for each of its five batches', () => {
    const batches = ['batch 1', 'batch 2', 'batch 3', 'batch 4', 'batch 5'];
    expect(sheet.checks.filter((each) => each.recipe === 'shank')).toEqual([
      {
        stage: 'cooking',
        date: '2027-05-14',
        when: 'Friday, May 14, 2027',
        recipe: 'shank',
        what: 'shank: lamb, where it is thickest',
        limit: '145 °F or above for 15 s; the recipe says 195 °F',
        section: '3-401.11(A)(1)',
        blanks: [...batches, 'time', 'initials'],
      },
      {
        stage: 'cooling',
        date: '2027-05-14',
        when: 'Friday, May 14, 2027',
        recipe: 'shank',
        what: 'shank',
        limit: '70 °F within 2 h and 41 °F within 6 h',
        section: '3-501.14(A)',
        blanks: ['started', 'after 2 h', 'after 6 h', 'initials'],
      },
      {
        stage: 'reheating',
        date: '2027-05-15',
        when: 'Saturday, May 15, 2027',
        recipe: 'shank',
        what: 'shank',
        limit: '165 °F or above for 15 s, within 2 h; the recipe says 165 °F',
        section: '3-403.11(A), 3-403.11(D)',
        blanks: ['started', ...batches, 'time', 'initials'],
      },
      expect.objectContaining({ stage: 'transport', limit: '135 °F or above' }),
      expect.objectContaining({ stage: 'service', limit: '135 °F or above' }),
    ]);
  });

  it('takes one reading for foods of one figure, and carries cold what is cooked at the place', () => {
    expect(at('cooking', 'patty')).toMatchObject([
      { what: 'patty: lamb and egg, where it is thickest', when: 'at serving', section: '3-401.11(A)(2)' },
    ]);
    expect(at('transport', 'patty')).toMatchObject([
      { limit: '41 °F or below', when: 'Saturday, May 15, 2027' },
    ]);
    expect(at('service', 'patty')).toMatchObject([{ limit: '135 °F or above', when: 'at serving' }]);
  });

  it('thaws what is bought frozen in the cold, or for four hours under running water (3-501.13), and asks nothing where nothing is', () => {
    const [thawing, ...more] = at('thawing', '');
    expect(more).toEqual([]);
    expect(thawing).toMatchObject({
      what: 'fish-stock',
      limit:
        'in the refrigerator at 41 °F or below, or under running water at 70 °F or below, with raw food above 41 °F no longer than 4 h',
      blanks: ['started', 'how', 'reading', 'initials'],
    });
    expect(thawing?.section).toContain('3-501.13');
    expect(thawingCheck([], FOOD_CODE_2022, 'F')).toBeUndefined();
  });

  it('measures the line every two hours of the service, and gives food without control its time', () => {
    expect(at('service', 'slaw')[0]?.blanks).toEqual(['at the start', 'after 2 h', 'after 4 h', 'initials']);
    expect(at('service', 'sandwiches')).toMatchObject([
      { limit: 'thrown away 4 h after it left hot or cold holding', section: '3-501.19(B)' },
    ]);
    expect(at('transport', 'sandwiches')).toEqual([]);
  });

  it('asks nothing of bread, and of cold food both ways of cooling, as nobody has said which', () => {
    expect(sheet.checks.filter((each) => each.recipe === 'rolls')).toEqual([]);
    expect(at('cooling', 'slaw')[0]?.limit).toBe(
      'heated: 70 °F within 2 h and 41 °F within 6 h; made at room temperature: 41 °F within 4 h',
    );
    expect(at('cold room').map(({ date }) => date)).toEqual(['2027-05-14']);
  });

  it('prints the code’s own degrees in a metric kitchen', () => {
    const metric = safetySheet(plan, 'C', 'en-GB', (id) => id);
    const limits = metric.checks.filter((each) => each.recipe === 'shank').map(({ limit }) => limit);
    expect(limits[0]).toBe('63 °C or above for 15 s; the recipe says 195 °F');
    expect(limits[1]).toBe('21 °C within 2 h and 5 °C within 6 h');
  });

  it('goes in the order of the work: days, then stages, what is done at serving last', () => {
    const order = sheet.checks.map(({ stage, date, when, recipe: of }) =>
      [stage, stage === 'receiving' ? '' : when === 'at serving' ? when : date, of].filter(Boolean).join(' '),
    );
    expect(order.slice(0, 5)).toEqual(Array(5).fill('receiving'));
    expect(order.slice(5)).toEqual([
      'thawing',
      'cold room 2027-05-14',
      'cooking 2027-05-14 shank',
      'cooling 2027-05-14 shank',
      'cooling 2027-05-14 slaw',
      'cooking 2027-05-15 sandwiches',
      'reheating 2027-05-15 shank',
      'cooking at serving patty',
      'transport 2027-05-15 shank',
      'transport 2027-05-15 patty',
      'transport 2027-05-15 slaw',
      'service at serving shank',
      'service at serving patty',
      'service at serving slaw',
      'service at serving sandwiches',
      'end of service at serving',
      'end of service at serving',
    ]);
  });

  it('names deliveries by supplier whatever is listed first, and none whose supplier is not known where all are', () => {
    const both = planEvent(
      event([
        dish(recipe('hash', '20 servings', [line(lamb, '5 lb'), line(egg, '1 lb')]), '1 serving per guest'),
      ]),
      kitchen(),
      prices(
        pack('egg', '1 lb', '3.00', { supplier: 'mill' }),
        pack('lamb', '10 lb', '60.00', { supplier: 'cove' }),
      ),
    );
    const brought = (name: (id: string) => string) =>
      safetySheet(both, 'F', 'en-US', name)
        .checks.filter(({ stage }) => stage === 'receiving')
        .map(({ what }) => what);
    expect(brought((id) => id)).toEqual(['cove: lamb', 'mill: egg']);
    expect(brought((id) => (id === 'cove' ? 'Zander' : 'Alder'))).toEqual(['Alder: egg', 'Zander: lamb']);
  });

  it('thaws what is kept frozen, measures nothing of a recipe that is not cooked, and takes the usual service where none is stated', () => {
    const ice = recipe('ice', '20 servings', [line(sold('cream', { from: ['milk'] }), '2 lb')], {
      hold: 'frozen',
    });
    const of = (adults: number) =>
      safetySheet(
        planEvent(
          event([dish(ice, '1 serving per guest'), dish(shank, '1 serving per guest')], {
            guests: { adults, children: 0, vendors: 0, staff: 0 },
          }),
          kitchen([['pan', '240 fl oz', '1']]),
          prices(),
        ),
        'F',
        'en-US',
        (id) => id,
      ).checks;
    const thawing = of(20).find(({ stage }) => stage === 'thawing');
    expect(thawing?.what.split('; ').sort()).toEqual(['fish-stock', 'ice']);
    expect(of(0).some(({ stage }) => stage === 'cooking' || stage === 'thawing')).toBe(false);
    const onTheLine = of(20).find(({ stage, recipe: id }) => stage === 'service' && id === 'shank');
    expect(onTheLine?.blanks).toEqual(['at the start', 'after 2 h', 'after 4 h', 'initials']);
  });
});
