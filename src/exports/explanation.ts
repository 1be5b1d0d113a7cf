import { nearest } from '../book/findings/nearest.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import type { Say } from '../words/words-in.ts';
import type { PlanPurchase } from './form/buying.ts';
import type { PlanCarrier } from './form/carriers.ts';
import type { PlanDish } from './form/food.ts';
import type { PrepPlanDocument } from './form/prep-plan.ts';
import type { PackOutLine } from './form/sheets.ts';

/** One link in the chain from guests to packs: what it is about and why it is what it is. */
export interface ExplainedStep {
  readonly about: string;
  readonly why: readonly string[];
}

/** What else is told of when a step of a recipe is done on a date: what holds it there, and what would let it begin later. */
export type ExplainedHours = (date: string, recipe: string, number: number) => readonly string[];

/**
 * The chain of whys of a dish, a recipe, an ingredient, the ice, or a thing that goes along by rule, from
 * the guests down to the packs bought.
 * Known by id or by name. Fails, with the nearest id, where the plan has nothing of the kind.
 */
export function explain(
  plan: PrepPlanDocument,
  subject: string,
  say: Say,
  hours: ExplainedHours,
): Parsed<ExplainedStep[]> {
  const word = subject.trim().toLowerCase();
  const is = (id: string, name: string) => id === word || name.toLowerCase() === word;
  const dishes = allDishes(plan).filter((dish) => is(dish.recipe, dish.name));
  const recipe = plan.recipes.find((each) => is(each.id, each.name));
  if (dishes.length > 0 || recipe)
    return parsed(fromRecipe(plan, recipe?.id ?? dishes[0]?.recipe ?? word, say, hours));
  const purchase = plan.shopping.find((each) => is(each.ingredient, each.name));
  const ice = is('ice', say('plan.explain.ice')) ? iceSteps(plan, say) : [];
  const iceBought = plan.shopping.find(({ ingredient }) => ingredient === plan.drinks?.ice?.ingredient);
  const bought = purchase ?? (ice.length > 0 ? iceBought : undefined);
  if (ice.length > 0 || bought) return parsed([...ice, ...(bought ? fromPurchase(plan, bought, say) : [])]);
  const lines = plan.packOut.filter(
    ({ why, item, fuel = item }) => why && (is(inHyphens(item), item) || is(inHyphens(fuel), fuel)),
  );
  if (lines.length > 0) return parsed(lines.map((line) => lineStep(line, say)));
  const carrier = plan.carriers?.find(({ number }) => is(`carrier-${number}`, `carrier ${number}`));
  if (carrier) return parsed([carrierStep(carrier, say)]);
  const known = [
    ...plan.recipes.map(({ id }) => id),
    ...plan.shopping.map(({ ingredient }) => ingredient),
    ...(plan.carriers ?? []).map(({ number }) => `carrier ${number}`),
    ...plan.packOut.flatMap(({ why, item, fuel = item }) => (why ? [fuel.toLowerCase()] : [])),
  ];
  const close = nearest(word, known);
  return notParsed(
    `the plan of ${plan.event.id} has no dish, recipe, ingredient, ice, rental, fuel, piece of kit or carrier “${subject}”`,
    close ? `did you mean ${close}?` : `one of ${known.slice(0, 8).join(', ')} …`,
  );
}

/** The guests' dishes and the crew's. */
function allDishes({ dishes, crewMeals = [] }: PrepPlanDocument): PlanDish[] {
  return [...dishes, ...crewMeals];
}

function fromRecipe(plan: PrepPlanDocument, id: string, say: Say, hours: ExplainedHours): ExplainedStep[] {
  const parts = partsOf(plan, id);
  return [
    ...allDishes(plan)
      .filter((dish) => dish.recipe === id)
      .flatMap((dish) => [
        { about: say('plan.explain.dish', { dish: dish.name, course: dish.course }), why: dish.why },
        ...oddsSteps(plan, dish, say),
        ...(dish.earlier
          ? [{ about: say('plan.explain.eaten', { dish: dish.name }), why: [dish.earlier.said] }]
          : []),
        ...dish.containers.map(({ stage, name, count, why }) => ({
          about: say('plan.explain.packed', { count: String(count), container: name, stage }),
          why,
        })),
        ...dish.allergenPaths.map(({ allergen, paths }) => ({
          about: say('plan.explain.contains', { allergen }),
          why: paths,
        })),
        ...dish.mayContainPaths.map(({ allergen, paths }) => ({
          about: say('plan.explain.may-contain', { allergen }),
          why: paths,
        })),
      ]),
    ...parts.map(({ name, why }) => ({ about: say('plan.explain.recipe', { recipe: name }), why })),
    ...parts.flatMap((part) => hoursSteps(plan, part.id, say, hours)),
    ...plan.shopping
      .filter((bought) => parts.some((part) => part.lines.some((line) => line.id === bought.ingredient)))
      .map((bought) => purchaseStep(bought, say)),
  ];
}

/** When each step of a recipe is done, and why then: what waits for it leads on to the next. */
function hoursSteps(
  { days }: PrepPlanDocument,
  id: string,
  say: Say,
  hours: ExplainedHours,
): ExplainedStep[] {
  return days.flatMap(({ date, dateText, tasks }) =>
    tasks.flatMap(
      ({ recipe, recipeName, number, at, until, why, cooledBy, coldBy, waitsIn }): ExplainedStep[] => {
        if (recipe !== id || until === undefined) return [];
        const spoken = { recipe: recipeName, number, day: dateText, begins: at, ends: until };
        return [
          {
            about: say('plan.explain.hours', spoken),
            why: [
              ...(why ? [why] : []),
              ...(cooledBy ? [cooledBy] : []),
              ...(coldBy ? [say('clock.cold-by', { time: coldBy })] : []),
              ...(waitsIn ? [waitsIn] : []),
              ...hours(date, recipe, number),
            ],
          },
        ];
      },
    ),
  );
}

/** How likely a dish runs short, and its course as a whole; nothing where it is not stated how guests take it. */
function oddsSteps(
  { odds }: PrepPlanDocument,
  dish: PrepPlanDocument['dishes'][number],
  say: Say,
): ExplainedStep[] {
  const own = odds?.dishes.find(({ recipe, course }) => recipe === dish.recipe && course === dish.course);
  if (!odds || !own) return [];
  const course = odds.courses.filter((each) => each.course === dish.course);
  return [
    { about: say('plan.explain.odds', { dish: dish.name }), why: [...own.why, odds.limits] },
    ...course.map(({ why }) => ({ about: say('plan.explain.course', { course: dish.course }), why })),
  ];
}

/** A recipe and everything it is made with, itself first. */
function partsOf(plan: PrepPlanDocument, id: string): PrepPlanDocument['recipes'][number][] {
  const wanted = new Set([id]);
  for (const known of wanted) {
    const recipe = plan.recipes.find((each) => each.id === known);
    for (const line of recipe?.lines ?? []) if (line.kind === 'recipe') wanted.add(line.id);
  }
  return [...wanted].flatMap((each) => plan.recipes.find((recipe) => recipe.id === each) ?? []);
}

function fromPurchase(plan: PrepPlanDocument, bought: PlanPurchase, say: Say): ExplainedStep[] {
  const users = plan.recipes.filter((recipe) => recipe.lines.some((line) => line.id === bought.ingredient));
  const goesInto = (dish: string) => partsOf(plan, dish).some((part) => users.includes(part));
  const dishes = plan.dishes.filter((dish) => goesInto(dish.recipe));
  return [
    ...dishes.map(({ name, course, why }) => ({
      about: say('plan.explain.dish', { dish: name, course }),
      why,
    })),
    ...users.map(({ name, why }) => ({ about: say('plan.explain.recipe', { recipe: name }), why })),
    ...bought.usedBy.map(({ recipe, why }) => ({
      about: say('plan.explain.in-recipe', { food: bought.name, recipe }),
      why,
    })),
    purchaseStep(bought, say),
  ];
}

function purchaseStep({ name, why }: PlanPurchase, say: Say): ExplainedStep {
  return { about: say('plan.explain.buy', { food: name }), why };
}

function lineStep({ group, item, count, unit, note, why = [] }: PackOutLine, say: Say): ExplainedStep {
  return {
    about: say('plan.explain.kit', { count: String(count), unit, item }),
    why: group === 'kit' && note !== '' ? [...why, note] : why,
  };
}

/** How the ice of the drinks comes about, drink by drink, and that of each carrier; nothing where no ice goes along. */
function iceSteps({ drinks, carriers = [] }: PrepPlanDocument, say: Say): ExplainedStep[] {
  const iced = drinks?.ice
    ? [
        ...drinks.kinds
          .filter(({ ice }) => ice)
          .map(({ name, why }) => ({ about: say('plan.explain.ice-for', { drink: name }), why })),
        {
          about: say('plan.explain.ice-drinks', { amount: drinks.ice.total.printed }),
          why: drinks.ice.why,
        },
      ]
    : [];
  return [
    ...iced,
    ...carriers.flatMap(({ number, name, ice }) =>
      ice ? [{ about: say('plan.explain.carrier', { n: String(number), name }), why: iceWhy(ice, say) }] : [],
    ),
  ];
}

function iceWhy({ packs, amount, why }: NonNullable<PlanCarrier['ice']>, say: Say): string[] {
  return [say('carriers.ice', { packs: packs ?? 0, amount }), why];
}

/** What is in a carrier, and how its ice or its warmth comes about. */
function carrierStep(carrier: PlanCarrier, say: Say): ExplainedStep {
  const { number, name, foods, ice, warmth, emptied, weight } = carrier;
  return {
    about: say('plan.explain.carrier', { n: String(number), name }),
    why: [
      ...foods.map(({ item, count, container, needed }) =>
        say('plan.explain.carried', {
          item,
          packed: say('carriers.food-at', { count, container, time: needed }),
        }),
      ),
      ...(ice ? iceWhy(ice, say) : []),
      ...(warmth ? [say('carriers.still', { after: warmth.after, time: emptied }), warmth.why] : []),
      ...(weight ? [say('carriers.weight', { weight })] : []),
    ],
  };
}

/** A name as somebody types it on a command line. */
function inHyphens(name: string): string {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
}
