import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import type { Container } from '../../../src/engine/kitchen/container.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { rawFoodIn } from '../../../src/engine/safety/raw-food.ts';
import { recipeSafety } from '../../../src/engine/safety/recipe-safety.ts';
import { statementsIn } from '../../../src/exports/words/statement-text.ts';
import { inWords } from '../../in-words.ts';
import { food, line, must, q, recipe, step } from '../plan/builders.ts';

const chicken = food('chicken', { from: ['poultry'] });
const lamb = food('lamb', { from: ['lamb'] });
const hake = food('hake', { from: ['fish'] });
const egg = food('egg', { from: ['egg'] });
const beans = food('beans');

/** A pan, and how deep it is. */
const pan = (inches: bigint): Container => ({
  id: 'pan',
  name: 'Pan',
  holds: q('240 fl oz'),
  fill: new Fraction('3/4'),
  depthInches: new Fraction(inches),
});

const to = (temperature: string, when = 'on the day') =>
  step(when, 'Cook it', { cookTo: must(parseHeldTemperature(temperature)) });

/** A hot dish of these foods with these steps. */
function dishOf(
  foods: readonly (Ingredient | Recipe)[],
  steps: Recipe['steps'],
  facts: Parameters<typeof recipe>[3] = {},
): Recipe {
  return recipe(
    'dish',
    '10 lb',
    foods.map((each) => line(each, '5 lb')),
    { hold: 'hot', steps, ...facts },
  );
}

function told(dish: Recipe, facts: { served?: boolean; depth?: bigint; scale?: 'F' | 'C' } = {}) {
  const { served = true, depth = 2n, scale = 'F' } = facts;
  const containers = new Map([['pan', pan(depth)]]);
  const found = recipeSafety(dish, { rules: FOOD_CODE_2022, scale, called: 'Dish', containers, served });
  return found.map((each) => ({ ...each, what: inWords(each.what), wayOut: inWords(each.wayOut) }));
}

const codes = (...args: Parameters<typeof told>) => told(...args).map(({ code }) => code);

describe('what raw animal food is cooked to', () => {
  it('is what its kind asks, and a degree less is told at its step with what it says', () => {
    expect(told(dishOf([chicken], [to('165 °F')]))).toEqual([]);
    expect(told(dishOf([chicken], [to('164 °F')]))).toEqual([
      {
        code: 'cook-to-low',
        at: ['steps', 0, 'cook to'],
        what: 'Dish cooks chicken to 164 °F, but FDA Food Code 2022, 3-401.11(A)(3) requires 165 °F',
        wayOut:
          'write “cook to: 165 °F”, “contains raw: yes” if it is served undercooked, or “sold as: ready to eat” for chicken in ingredients if it is bought cured, smoked or pasteurized; the local food code and a licensed food-safety manager decide',
      },
    ]);
    expect(told(dishOf([lamb, hake], [to('145 °F')]))).toEqual([]);
    expect(codes(dishOf([hake], [to('144 °F')]))).toEqual(['cook-to-low']);
  });

  it('rises where germs were carried in: by the food, by the recipe, by the line or by the name', () => {
    const ground = [
      dishOf([{ ...lamb, soldAs: 'ground' }], [to('154 °F')]),
      dishOf([lamb], [to('154 °F')], { cookedAs: 'injected' }),
      recipe('dish', '10 lb', [line(lamb, '5 lb', 'minced')], { hold: 'hot', steps: [to('154 °F')] }),
      dishOf([food('ground-veal', { from: ['beef'] })], [to('154 °F')]),
    ];
    for (const each of ground) {
      expect(codes(each)).toEqual(['cook-to-low']);
      expect(codes({ ...each, steps: [to('155 °F')] })).toEqual([]);
    }
    expect(codes(dishOf([lamb], [to('164 °F')], { cookedAs: 'stuffed' }))).toEqual(['cook-to-low']);
  });

  it('may be less for longer, when the step says how long', () => {
    const ground = { ...lamb, soldAs: 'ground' as const };
    expect(codes(dishOf([ground], [to('145 °F for 3 min')]))).toEqual([]);
    expect(codes(dishOf([ground], [to('145 °F for 2 min')]))).toEqual(['cook-to-low']);
    expect(codes(dishOf([ground], [to('145 °F')]))).toEqual(['cook-to-low']);
    const roast = (temperature: string) =>
      codes(dishOf([lamb], [to(temperature)], { cookedAs: 'whole roast' }));
    expect(roast('130 °F for 112 min')).toEqual([]);
    expect(roast('130 °F for 111 min')).toEqual(['cook-to-low']);
    expect(roast('145 °F')).toEqual(['cook-to-low']);
    expect(roast('145 °F for 4 min')).toEqual([]);
    expect(roast('158 °F')).toEqual([]);
    const [low] = told(dishOf([lamb], [to('140 °F')], { cookedAs: 'whole roast' }));
    expect(low?.what).toBe(
      'Dish cooks lamb to 140 °F, but FDA Food Code 2022, 3-401.11(B) requires 145 °F for 4 min, 130 °F for 1 h 52 min, 131 °F for 1 h 29 min, 133 °F for 56 min, or another line of its table',
    );
    expect(low?.wayOut).toContain('write “cook to: 145 °F for 4 min” or one of the other ways, ');
    // The table of roasts asks for tenths of a degree Celsius (COMAR 10.15.03.10): 54 °C are 129.2 °F.
    expect(roast('54.4 °C for 112 min')).toEqual([]);
    expect(roast('54.3 °C for 112 min')).toEqual(['cook-to-low']);
    expect(roast('61 °C for 8 min')).toEqual(['cook-to-low']);
  });

  it('is held against the code’s own figure in the scale it is written in', () => {
    // 68 °C is 154.4 °F, and the code prints 155 °F (68 °C).
    expect(codes(dishOf([{ ...lamb, soldAs: 'ground' }], [to('68 °C')]))).toEqual([]);
    const [low] = told(dishOf([{ ...lamb, soldAs: 'ground' }], [to('67 °C')]), { scale: 'C' });
    expect(low?.what).toContain(
      'cooks lamb to 67 °C, but FDA Food Code 2022, 3-401.11(A)(2) requires 68 °C for 17 s',
    );
  });

  it('takes the strictest food of a dish, and names it', () => {
    const [low] = told(dishOf([hake, chicken, egg], [to('160 °F')]));
    expect(low?.what).toContain('cooks chicken to 160 °F');
  });

  it('asks eggs that are held for 155 °F, and those to order for 145 °F', () => {
    expect(codes(dishOf([egg], [to('150 °F')]))).toEqual(['cook-to-low']);
    expect(codes(dishOf([egg], [to('145 °F')], { cookedAs: 'to order' }))).toEqual([]);
  });

  it('is told where no step says anything, unless it is said to be served raw or needs no cooking', () => {
    const tartare = dishOf([lamb], [step('on the day', 'Chop it')], { hold: 'cold' });
    expect(told(tartare)).toMatchObject([{ code: 'cook-to-missing', at: ['steps'] }]);
    expect(codes({ ...tartare, containsRaw: true })).toEqual([]);
    const smoked = { ...hake, soldAs: 'ready to eat' as const };
    expect(codes(dishOf([smoked], [step('on the day', 'Flake it')], { hold: 'cold' }))).toEqual([]);
  });

  it('is told with “sold as: ready to eat” first where the food reads like one that is bought made', () => {
    const mayonnaise = food('mayonnaise', { from: ['plant', 'egg'], parts: 'oil, pasteurized egg yolk' });
    const sauce = dishOf([mayonnaise], [step('on the day', 'Stir')], { hold: 'cold' });
    expect(told(sauce)).toEqual([
      {
        code: 'cook-to-missing',
        at: ['steps'],
        what: 'Dish contains mayonnaise, but no step states a cooking temperature; FDA Food Code 2022, 3-401.11(A)(2) requires 155 °F for 17 s',
        wayOut:
          'write “sold as: ready to eat” for mayonnaise in ingredients if its label says it needs no cooking; otherwise write “cook to: 155 °F for 17 s” in the step that cooks it, or “contains raw: yes” if it is served raw; the local food code and a licensed food-safety manager decide',
      },
    ]);
    expect(codes(dishOf([{ ...mayonnaise, soldAs: 'ready to eat' }], [], { hold: 'cold' }))).toEqual([]);
    // By its parts alone, and by its origins alone.
    for (const facts of [{ from: ['fish'], parts: 'salmon, salt' }, { from: ['egg', 'milk'] }] as const) {
      const [{ wayOut } = { wayOut: '' }] = told(
        dishOf(
          [food('spread', { from: [...facts.from], parts: 'parts' in facts ? facts.parts : undefined })],
          [to('120 °F')],
        ),
      );
      expect(wayOut).toMatch(/^write “sold as: ready to eat” for spread in ingredients if/);
    }
  });

  it('is asked of what a raw part goes into, through as many parts as there are', () => {
    const dough = recipe('dough', '5 lb', [line(egg, '1 lb')], {
      hold: 'cold',
      steps: [step('on the day', 'Knead')],
    });
    const case_ = recipe('case', '5 lb', [line(dough, '5 lb')], {
      hold: 'cold',
      steps: [step('on the day', 'Line')],
    });
    expect(codes(dough, { served: false })).toEqual([]);
    expect(codes(dishOf([case_], [to('155 °F')]))).toEqual([]);
    const [low] = told(dishOf([case_], [to('140 °F')]));
    expect(low?.what).toContain('cooks egg (in dough) to 140 °F');
    // A part that is cooked is judged by itself.
    expect(codes({ ...dough, steps: [to('140 °F')] }, { served: false })[0]).toBe('cook-to-low');
    // A part that says a temperature has done its own cooking, unless it is served undercooked.
    const baked = { ...case_, steps: [to('160 °F')] };
    expect(rawFoodIn(dishOf([baked], []))).toEqual([]);
    expect(rawFoodIn(dishOf([{ ...baked, containsRaw: true }], []))).toHaveLength(1);
  });
});

describe('what is held hot, heated again, cooled and kept', () => {
  it('asks plants held hot for 135 °F, and drinks that are safe without nothing', () => {
    expect(codes(dishOf([beans], [to('134 °F')]))).toEqual(['hot-plant-food-low']);
    expect(codes(dishOf([beans], [to('135 °F')]))).toEqual([]);
    expect(told(dishOf([beans], []))).toMatchObject([{ code: 'hot-plant-food-low', at: ['hold'] }]);
    expect(codes(dishOf([beans], [], { temperatureControl: false }))).toEqual([]);
    expect(codes(dishOf([beans], [], { hold: 'cold' }))).toEqual([]);
  });

  it('asks what is cooked ahead and heated again for 165 °F at the later step', () => {
    const pack = { chill: 'pan' };
    const stew = (...steps: Recipe['steps']) => dishOf([lamb], steps, { reheat: true, pack });
    expect(codes(stew(to('195 °F', 'the day before'), to('165 °F')))).toEqual([]);
    expect(told(stew(to('195 °F', 'the day before'), to('164 °F')))).toMatchObject([
      { code: 'reheat-low', at: ['steps', 1, 'cook to'] },
    ]);
    // The one temperature is the cooking's: nobody says the other.
    expect(told(stew(to('195 °F')))).toMatchObject([{ code: 'reheat-low', at: ['reheat'] }]);
    // The cooking is judged by itself: 165 °F on the day does not make up for 140 °F on the day before.
    expect(codes(stew(to('140 °F', 'the day before'), to('165 °F')))).toEqual(['cook-to-low']);
  });

  it('asks what is heated again to be hot within 2 h, load by load, and leaves cooking the time it needs', () => {
    // FDA Food Code 2022, 3-403.11(D): from 41 °F to its temperature in 2 h; from memory.
    const again = (hours: number) => ({
      ...to('165 °F'),
      handsOn: minutes(45),
      unattended: minutes(60 * hours),
    });
    const stew = (...steps: Recipe['steps']) =>
      dishOf([lamb], steps, { reheat: true, pack: { chill: 'pan' } });
    expect(codes(stew(to('195 °F', 'the day before'), again(2)))).toEqual([]);
    expect(told(stew(to('195 °F', 'the day before'), again(2.5)))).toMatchObject([
      { code: 'reheat-slow', at: ['steps', 1, 'unattended'] },
    ]);
    const braise = dishOf([hake], [step('the day before', 'Simmer the broth'), again(3)], { reheat: true });
    expect(codes(braise)).toEqual([]);
  });

  it('lets one step both cook what is raw and heat what was made ahead, if it gets hot enough for both', () => {
    const chowder = (temperature: string) =>
      codes(dishOf([hake], [step('the day before', 'Simmer the broth'), to(temperature)], { reheat: true }));
    expect(chowder('165 °F')).toEqual([]);
    expect(chowder('150 °F')).toEqual(['reheat-low']);
  });

  it('tells of hot food that is left overnight without a word of heating it again', () => {
    const braise = dishOf([lamb], [to('195 °F', 'the day before')], { pack: { chill: 'pan' } });
    expect(told(braise)).toMatchObject([{ code: 'reheat-low', at: ['hold'] }]);
  });

  it('asks bought ready-to-eat food for 135 °F when it is heated', () => {
    const ham = food('ham', { from: ['pork'], soldAs: 'ready to eat' });
    expect(codes(dishOf([ham], [to('135 °F')], { reheat: true }))).toEqual([]);
    expect(codes(dishOf([ham, beans], [to('135 °F')], { reheat: true }))).toEqual(['reheat-low']);
    expect(codes(dishOf([beans], [to('135 °F')], { reheat: true, temperatureControl: false }))).toEqual([]);
  });

  it('asks for a container to cool cooked food in, and for no more than four inches in it', () => {
    const lentils = dishOf([beans], [to('180 °F')], { hold: 'cold' });
    expect(told(lentils)).toMatchObject([{ code: 'cooling-unsaid', at: ['hold'] }]);
    const packed = { ...lentils, pack: { chill: { container: 'pan', each: undefined } } };
    // Filled to ¾: 5 in deep stands 3¾ in, 6 in deep 4½ in.
    expect(codes(packed, { depth: 5n })).toEqual([]);
    const [deep] = told(packed, { depth: 6n });
    expect([deep?.code, deep?.at]).toEqual(['chill-too-deep', ['pack', 'chill']]);
    // Of a container that nobody knows, or whose depth nobody states, nothing can be told.
    expect(codes({ ...packed, pack: { chill: { container: 'tub', each: undefined } } })).toEqual([]);
    // 4½ in × 2.54 = 11.43 cm, to half a centimeter up.
    const metric = recipeSafety(packed, {
      rules: FOOD_CODE_2022,
      scale: 'C',
      called: 'Dish',
      containers: new Map([['pan', pan(6n)]]),
      served: true,
    });
    expect(statementsIn('de-DE')(metric[0]!.what)).toContain(
      'cooled 11.5 cm deep in “pan”, but health departments advise 5 to 10 cm at most',
    );
    const shallow = { ...pan(6n), depthInches: undefined };
    expect(
      recipeSafety(packed, {
        rules: FOOD_CODE_2022,
        scale: 'F',
        called: 'Dish',
        containers: new Map([['pan', shallow]]),
        served: true,
      }),
    ).toEqual([]);
    expect(deep?.what).toContain('cooled 4½ in deep in “pan”');
    expect(deep?.what).toContain('3-501.14(A) requires 70 °F within 2 h and 41 °F within 6 h');
    // Nothing says that it was ever hot.
    expect(codes({ ...lentils, steps: [step('on the day', 'Mix it')] })).toEqual([]);
  });

  it('tells of food kept cold for more than seven days, and at room temperature for any', () => {
    const kept = (hold: Recipe['hold'], keepsDays: number, temperatureControl = true) =>
      codes(dishOf([beans], [step('on the day', 'Mix it')], { hold, keepsDays, temperatureControl }));
    expect(kept('cold', 7)).toEqual([]);
    expect(kept('cold', 8)).toEqual(['keeps-too-long']);
    expect(kept('frozen', 90)).toEqual([]);
    expect(kept('hot', 8)).toEqual(['hot-plant-food-low', 'keeps-too-long']);
    expect(kept('room', 1)).toEqual(['room-too-long']);
    const atRoom = (days: number) =>
      told(dishOf([beans], [], { hold: 'room', keepsDays: days })).map(({ at, what }) => [at, what]);
    expect(atRoom(1)).toEqual([
      [
        ['hold'],
        'Dish keeps 1 day at room temperature, but FDA Food Code 2022, 3-501.19(B) allows 4 h for food that must be kept hot or cold',
      ],
    ]);
    expect(atRoom(2)[0]?.[1]).toContain('keeps 2 days at room temperature');
    const [long] = told(dishOf([beans], [], { hold: 'cold', keepsDays: 8 }));
    expect(long?.at).toEqual(['keeps']);
    expect(kept('room', 30, false)).toEqual([]);
    expect(kept('cold', 30, false)).toEqual([]);
  });
});
