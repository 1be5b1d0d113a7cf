import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { NONE, ONE, over, plus, type Ratio, ratio, ratioFrom, times, up } from './ratio.ts';
import { type Amount, amountFrom, type Equal, inUnit, isCounted } from './second-amount.ts';
import { drinksAgain, iceAgain } from './second-drinks.ts';

/*
 * A plan reckoned a second time, straight from the text of the content files: guests → servings → batches → recipe
 * lines → needs as purchased. Written plainly, with numbers, units and readers of its own, so that it shares no
 * mistake with the engine. It is for guests of whom none has a need; what is made apart for those is worked by hand
 * in the tests of portions.
 */

// biome-ignore lint/suspicious/noExplicitAny: content as it is written, before anything has checked it.
type Text = any;

/** What the second walk finds. */
export interface SecondPlan {
  readonly dishes: { recipe: string; counted: Ratio; need: Amount; asMade: Amount }[];
  readonly recipes: Map<string, { need: Amount; makes: Amount; lines: Amount[] }>;
  /** As purchased, by ingredient, in any unit; each use on its own. */
  readonly bought: Map<string, Amount[]>;
  readonly conversionsOf: (ingredient: string) => Equal[];
  readonly isTapWater: (ingredient: string) => boolean;
}

/** `proposal` states the weather and what the crew eats; neither is planned for where it is left out. */
export function walkAgain(content: string, choice: Choice, proposal?: string): SecondPlan {
  const asked = proposal ? frontMatterOf(join(content, 'proposals', `${proposal}.md`)) : {};
  const high = asked.weather?.high ? Number.parseFloat(asked.weather.high) : undefined;
  const kitchen = yamlOf(join(content, 'kitchen.yaml'));
  const foods = foodsOf(content);
  const recipes = new Map<string, Text>();
  const written = new Set(readdirSync(join(content, 'recipes')).map((file) => file.replace(/\.mdx$/, '')));
  const recipe = (id: string): Text => {
    const read = recipes.get(id) ?? frontMatterOf(join(content, 'recipes', `${id}.mdx`));
    recipes.set(id, read);
    return read;
  };
  const chosen = frontMatterOf(join(content, 'packages', `${choice.package}.mdx`));
  const needs = new Map<string, Amount[]>();
  const call = (id: string, need: Amount) => {
    const made = inUnit(need, batchOf(recipe(id)).unit, finished(recipe(id)));
    needs.set(id, [...(needs.get(id) ?? []), made]);
    return made;
  };

  const dishes: SecondPlan['dishes'] = [];
  const serve = (
    id: string,
    text: Text,
    style: string,
    counts: string | undefined,
    taken: number | undefined,
  ) => {
    const said = typeof text === 'string' ? ({ amount: text } as Text) : text;
    // A dish in place of another is cooked for guests with needs alone, and here none has any.
    if (said['instead of'] !== undefined) return;
    const { amount, overage, counts: own } = said;
    // Nobody who comes needs it: what is left is the share of those who help themselves.
    const others = said['held back'] === 'yes' ? NONE : said.others ? ratioFrom(said.others) : ONE;
    const [, each = '', shared = '1'] =
      /^(.+) per (?:(\d+) )?(?:guests?|people|person|head)$/.exec(amount) ?? [];
    const counted = times(
      taken === undefined
        ? countedOf(own ?? counts ?? 'adults, children', choice.guests)
        : ratio(BigInt(taken), 1n),
      others,
    );
    if (others === NONE) return;
    const { size, unit } = amountFrom(each);
    const extra = overage ?? kitchen.overage?.[style];
    const exact = times(
      over(times(counted, size), ratioFrom(shared)),
      plus(ONE, extra ? ratioFrom(extra) : NONE),
    );
    const need = { unit, size: isCounted(unit) ? up(exact) : exact };
    dishes.push({ recipe: id, counted, need, asMade: call(id, need) });
  };
  for (const course of chosen.courses) {
    const dealt = course['each guest'] ? choice.mains[course.name] : undefined;
    const picked = course.choose ? choice.courses[course.name] : undefined;
    for (const [id, text] of Object.entries(course.dishes)) {
      if (picked && !picked.includes(id)) continue;
      if (dealt && !((dealt[id] ?? 0) > 0)) continue;
      serve(id, text, chosen.style, chosen.counts, dealt?.[id]);
    }
  }
  const iced = new Map<string, Amount[]>();
  const drinks = chosen.drinks
    ? drinksAgain(chosen.drinks, {
        hours: chosen.hours,
        counts: chosen.counts ?? 'adults, children',
        guests: choice.guests,
        high,
        recipe,
        holdsAlcohol: (id) =>
          linesOf(recipe(id)).some(({ food }) => `${foods.get(food)?.from}`.includes('alcohol')),
      })
    : [];
  for (const drink of drinks) {
    const extra = plus(
      ONE,
      kitchen.overage?.[chosen.style] ? ratioFrom(kitchen.overage[chosen.style]) : NONE,
    );
    const { unit } = drink.taken;
    const exact = times(drink.taken.size, extra);
    const need = { unit, size: isCounted(unit) ? up(exact) : exact };
    if (drink.recipe !== 'water')
      dishes.push({ recipe: drink.recipe, counted: drink.counted, need, asMade: call(drink.recipe, need) });
    if (!kitchen.drinks?.ice || drink.ice === 'none') continue;
    const liters = inUnit(need, 'l', drink.recipe === 'water' ? [] : finished(recipe(drink.recipe))).size;
    const size = iceAgain(drink, liters, high);
    iced.set(kitchen.drinks.ice, [...(iced.get(kitchen.drinks.ice) ?? []), { unit: 'lb', size }]);
  }
  for (const [id, quantity] of Object.entries(choice.addOns))
    for (const [dish, text] of Object.entries(kitchen['add-ons'][id].dishes ?? {}))
      if (quantity > 0) serve(dish, text, chosen.style, kitchen['add-ons'][id].counts, undefined);

  // Nothing is carried over for the crew, who are known.
  const crew: [string, string][] = Object.entries(asked['crew meal'] ?? {});
  for (const [id, each] of crew) {
    const { size, unit } = amountFrom(each);
    const exact = times(size, ratio(BigInt(choice.guests.staff), 1n));
    call(id, { unit, size: isCounted(unit) ? up(exact) : exact });
  }

  const cooked: SecondPlan['recipes'] = new Map();
  const bought: SecondPlan['bought'] = new Map(iced);
  for (const id of usersFirst([...needs.keys()], written, recipe)) {
    const text = recipe(id);
    const batch = batchOf(text);
    const need = { unit: batch.unit, size: (needs.get(id) ?? []).map(({ size }) => size).reduce(plus, NONE) };
    const batches = rounded(over(need.size, batch.size), text.batches);
    const lines: Amount[] = [];
    for (const { food, preparation, amount } of linesOf(text)) {
      const line = { unit: amount.unit, size: times(amount.size, batches) };
      lines.push(line);
      if (written.has(food)) call(food, line);
      else {
        const left = yieldOf(foods.get(food), preparation, amount.unit);
        bought.set(food, [...(bought.get(food) ?? []), { unit: line.unit, size: over(line.size, left) }]);
      }
    }
    cooked.set(id, { need, makes: { unit: batch.unit, size: times(batch.size, batches) }, lines });
  }
  return {
    dishes,
    recipes: cooked,
    bought,
    conversionsOf: (food) => equalsOf(foods.get(food)?.conversions),
    isTapWater: (food) => foods.get(food)?.from === 'water',
  };
}

/** Recipes so that each comes after everything it goes into. */
function usersFirst(
  served: readonly string[],
  written: ReadonlySet<string>,
  recipe: (id: string) => Text,
): string[] {
  const order: string[] = [];
  const visit = (id: string) => {
    if (order.includes(id)) return;
    for (const { food } of linesOf(recipe(id))) if (written.has(food)) visit(food);
    order.push(id);
  };
  for (const id of served) visit(id);
  return order.reverse();
}

function linesOf(recipe: Text): { food: string; preparation: string; amount: Amount }[] {
  return Object.entries<Text>(recipe.ingredients).map(([key, value]) => {
    const [food = '', ...preparation] = key.split(',').map((part) => part.trim());
    const amount = amountFrom(typeof value === 'string' ? value : value.amount);
    return { food, preparation: preparation.join(', '), amount };
  });
}

const makesOf = (recipe: Text): Amount[] =>
  (Array.isArray(recipe.makes) ? recipe.makes : recipe.makes.split(',')).map(amountFrom);
const batchOf = (recipe: Text) => makesOf(recipe)[0] as Amount;
const finished = (recipe: Text): Equal[] =>
  makesOf(recipe)
    .slice(1)
    .map((other) => [batchOf(recipe), other] as const);

function rounded(batches: Ratio, rule: string | undefined): Ratio {
  if (rule === 'whole') return up(batches);
  if (rule === 'half') return over(up(times(batches, ratio(2n, 1n))), ratio(2n, 1n));
  return batches;
}

/** Counts that the content uses are of whole pieces and packs, which are as bought. */
const MEASURED = ['kg', 'g', 'lb', 'oz', 'l', 'ml', 'gal', 'qt', 'pt', 'cup', 'fl oz', 'tbsp', 'tsp'];

function yieldOf(food: Text, preparation: string, unit: string): Ratio {
  if (preparation === 'as purchased' || !MEASURED.includes(unit)) return ONE;
  return ratioFrom(food.yields?.[preparation] ?? food.yield ?? '100 %');
}

function countedOf(counts: string, guests: Choice['guests']): Ratio {
  return counts.split(',').reduce((sum, part) => {
    const [group = '', weight = '1'] = part.trim().split(/\s+at\s+/);
    return plus(sum, times(ratio(BigInt(guests[group as keyof Choice['guests']]), 1n), ratioFrom(weight)));
  }, NONE);
}

/** The store-room's foods with the caterer's own fields over them. */
function foodsOf(content: string): Map<string, Text> {
  const foods = new Map<string, Text>();
  const storeRoom = fileURLToPath(new URL('../../../src/store-room', import.meta.url));
  for (const dir of [storeRoom, join(content, 'ingredients')])
    for (const file of readdirSync(dir).filter((name) => name.endsWith('.yaml')))
      for (const [id, facts] of Object.entries<Text>(yamlOf(join(dir, file)))) {
        const stored = foods.get(id);
        const measures = [...listOf(facts.conversions), ...listOf(stored?.conversions)];
        const yields = { ...stored?.yields, ...facts.yields };
        foods.set(id, { ...stored, ...facts, conversions: measures, yields });
      }
  return foods;
}

const listOf = (texts: string | string[] | undefined): string[] =>
  typeof texts === 'string' ? texts.split(',') : (texts ?? []);

function equalsOf(conversions: string | string[] | undefined): Equal[] {
  return listOf(conversions).map(
    (text) => text.split('=').map((side) => amountFrom(side.trim())) as unknown as Equal,
  );
}

const yamlOf = (file: string): Text => parse(readFileSync(file, 'utf8'), { schema: 'failsafe' });
const frontMatterOf = (file: string): Text =>
  parse(readFileSync(file, 'utf8').split(/^---$/m)[1] ?? '', { schema: 'failsafe' });
