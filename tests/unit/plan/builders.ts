import Fraction from 'fraction.js';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { parseWhen } from '../../../src/engine/calendar/when.ts';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Origin } from '../../../src/engine/food/origin.ts';
import type { PackRule, PackStage, Recipe, RecipeLine, RecipeStep } from '../../../src/engine/food/recipe.ts';
import type { Container } from '../../../src/engine/kitchen/container.ts';
import { parseConversion } from '../../../src/engine/measure/conversions.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import type { Quantity } from '../../../src/engine/measure/quantity.ts';
import type { Parsed } from '../../../src/engine/parsed.ts';
import type { EventDish, EventInput } from '../../../src/engine/plan/event-input.ts';
import type { PlanningKitchen } from '../../../src/engine/plan/plan-event.ts';
import { parsePackPrice, priceOfPack } from '../../../src/engine/purchase/pack-price.ts';
import { parsePack } from '../../../src/engine/purchase/parse-pack.ts';
import type { PricedPack, PriceList } from '../../../src/engine/purchase/price-list.ts';
import { parseCounts } from '../../../src/engine/quote/counts.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import type { Judged } from '../../../src/offers/answers/refusal.ts';
import { callChangedIn } from '../../../src/offers/event/call-changed.ts';

/** The value of a text that a test writes; a text that is not understood is the test's mistake. */
export function must<T>(read: Parsed<T> | Judged<T>): T {
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read.value;
}

export const day = (text: string) => text as Day;
export const q = (text: string): Quantity => must(parseQuantity(text));

/** A food of the test's own: by default a plant of which everything is said and nothing is lost. */
export function food(
  id: string,
  facts: Partial<Ingredient> & { sold?: readonly string[]; allergens?: readonly string[] } = {},
): Ingredient {
  const { sold = [], allergens = [], ...rest } = facts;
  return {
    id,
    name: id,
    from: ['plant'] as readonly Origin[],
    contains: allergens.map((text) => must(parseAllergen(text))),
    mayContain: [],
    conversions: sold.map((text) => must(parseConversion(text))),
    yield: undefined,
    yields: new Map(),
    keepsDays: undefined,
    storage: undefined,
    parts: undefined,
    pinned: undefined,
    source: undefined,
    ...rest,
  };
}

/** A recipe line: what it calls for, how much for a batch, and the preparation or `as purchased`. */
export function line(of: Ingredient | Recipe, amount: string, preparation: string | null = null): RecipeLine {
  const item =
    'lines' in of ? { kind: 'recipe' as const, recipe: of } : { kind: 'ingredient' as const, ingredient: of };
  const asPurchased = preparation === 'as purchased';
  return {
    item,
    preparation: asPurchased ? null : preparation,
    asPurchased,
    amount: q(amount),
    note: undefined,
  };
}

export function step(when: string, text: string, facts: Partial<RecipeStep> = {}): RecipeStep {
  return {
    text,
    when: must(parseWhen(when)),
    station: 'stove',
    handsOn: minutes(10),
    handsOnPerBatch: false,
    unattended: minutes(0),
    cookTo: undefined,
    ...facts,
  };
}

export function recipe(
  id: string,
  makes: string | readonly string[],
  lines: readonly RecipeLine[],
  facts: Partial<Omit<Recipe, 'pack'>> & { pack?: Partial<Record<PackStage, string | PackRule>> } = {},
): Recipe {
  const { pack = {}, ...rest } = facts;
  const rules = Object.entries(pack).map(([stage, rule]) => [
    stage,
    typeof rule === 'string' ? { container: rule, each: undefined } : rule,
  ]);
  return {
    id,
    name: id,
    makes: (typeof makes === 'string' ? [makes] : makes).map(q) as [Quantity, ...Quantity[]],
    batches: 'exact',
    lines,
    steps: [],
    keepsDays: undefined,
    hold: 'cold',
    reheat: false,
    pack: Object.fromEntries(rules),
    finish: undefined,
    containsRaw: false,
    ...rest,
  };
}

/** A dish; `overage` as exact text, `8/100`. */
export function dish(
  of: Recipe,
  perGuest: string,
  facts: { overage?: string; counts?: string; chosenBy?: number } = {},
): EventDish {
  return {
    course: 'Table',
    name: of.name,
    recipe: of,
    perGuest: must(parsePerGuest(perGuest)),
    counts: must(parseCounts(facts.counts ?? 'adults, children')),
    overage: new Fraction(facts.overage ?? '0'),
    chosenBy: facts.chosenBy,
  };
}

export function event(dishes: readonly EventDish[], facts: Partial<EventInput> = {}): EventInput {
  return {
    id: 'supper',
    occasion: 'Supper',
    client: 'Nobody',
    date: day('2027-05-15'),
    serveAt: '18:00',
    placeName: 'Here',
    venue: new Map(),
    style: 'buffet',
    packageName: 'Table',
    callChanged: callChangedIn('en-US'),
    guests: { adults: 100, children: 0, vendors: 0, staff: 0 },
    needs: new Map(),
    dishes,
    lines: 1,
    buyingDay: day('2027-05-12'),
    ...facts,
  };
}

export function kitchen(
  containers: readonly [id: string, holds: string, fill: string][] = [],
): PlanningKitchen {
  const all = containers.map(([id, holds, fill]): [string, Container] => [
    id,
    { id, name: id, holds: q(holds), fill: new Fraction(fill) },
  ]);
  return {
    measures: 'us',
    currency: 'USD',
    locale: 'en-US',
    containers: new Map(all),
    foodSafety: FOOD_CODE_2022,
  };
}

/** One line of a price list. */
export function pack(
  ingredient: string,
  packText: string,
  price: string,
  facts: Partial<PricedPack> = {},
): PricedPack {
  const read = must(parsePack(packText));
  return {
    supplier: 'quay',
    ingredient,
    packText,
    contents: read.contents,
    aboutWeight: read.aboutWeight,
    price: must(priceOfPack(read, must(parsePackPrice(price, 'USD')))),
    itemNumber: '',
    validFrom: day('2027-01-01'),
    ...facts,
  };
}

export function prices(...packs: readonly PricedPack[]): PriceList {
  return Map.groupBy(packs, ({ ingredient }) => ingredient);
}
