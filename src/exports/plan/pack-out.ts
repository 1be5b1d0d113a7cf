import { isMadeThere } from '../../engine/food/made-there.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { unitWord } from '../../engine/measure/find-unit.ts';
import { scaleOf } from '../../engine/measure/temperature.ts';
import type { ServedOn } from '../../engine/plan/clock/day-clock.ts';
import type { ThrowAway } from '../../engine/plan/clock/throw-away.ts';
import { rentalsFor } from '../../engine/plan/containers/service-ware.ts';
import { cookedDishes } from '../../engine/plan/cooked-dishes.ts';
import { drinkCounts } from '../../engine/plan/drinks/drinks-plan.ts';
import type { EventPlan, PlannedDish } from '../../engine/plan/event-plan.ts';
import { countedDrink } from '../../engine/plan/load/counted-drink.ts';
import type { EventLoad } from '../../engine/plan/load/event-load.ts';
import type { PackedKit } from '../../engine/plan/load/kit.ts';
import { carriedIn } from '../../engine/plan/load/packed-food.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { peopleFor } from '../../engine/quote/staff-lines.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { travelsAs } from '../../engine/safety/travels-as.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { PackOutLine } from '../form/sheets.ts';
import { type SayStatement, statementsIn } from '../words/statement-text.ts';
import { broughtLines } from './brought.ts';
import { carrierLines } from './carriers.ts';
import { componentLine, type LabelSetting, throwAwayBy } from './components.ts';
import { drinkLines } from './drinks.ts';
import { finishWords } from './finish.ts';
import { kitLines } from './kit.ts';
import { guestsOfDish } from './labels.ts';
import { planRaw, rawLast } from './raw.ts';

/** What goes along besides the food itself, and until when food may stand. */
interface Packing {
  readonly throwAways: readonly ThrowAway[];
  readonly kit: readonly PackedKit[];
  readonly load: EventLoad;
}

const ORDER = ['frozen', 'cold', 'room', 'hot'];

/**
 * What goes on the van: food by container and temperature, the foods that steps at the place take, the carriers for them with
 * their ice, what food is served from where that is another thing, service ware with spares, what is cooked on there with its
 * fuel, kit by its rules, staff by their ratios and the meals of those who work, add-ons taken. Raw food comes last, so that it
 * stands neither above nor among what is ready to eat.
 */
export function planPackOut(
  plan: EventPlan,
  served: ServedOn | undefined,
  kitchen: Kitchen,
  terms: Terms,
  choice: Choice,
  { throwAways, kit, load }: Packing,
): PackOutLine[] {
  const say = wordsIn(kitchen.locale);
  const inWords = statementsIn(kitchen.locale);
  const crew = terms.staff
    .filter(({ packages }) => !packages || packages.includes(choice.package))
    .map((role) => ({ role, people: peopleFor(role, choice.guests) }))
    .filter(({ people }) => people > 0);
  const food = foodLines(load, { plan, system: kitchen.measures, say, inWords, throwAways });
  return [
    ...food.filter(({ raw }) => !raw),
    ...carrierLines(load, { system: kitchen.measures, say }),
    ...servingLines(plan, say, inWords),
    ...rentalsFor(kitchen, plan.input.style, plan.input.guests, drinkCounts(plan.drinks)).map(
      ({ rental, count, why }) => ({
        group: 'service ware' as const,
        item: rental.name,
        container: '',
        count: Number(count.amount.n),
        unit: unitWord(count.unit, count.amount),
        hold: '',
        note: rental.spare.n === 0n ? '' : say('lists.spares'),
        why: why.map(inWords),
      }),
    ),
    ...drinkLines(plan, kitchen),
    ...(served
      ? broughtLines(served, kitchen.equipment, {
          system: kitchen.measures,
          locale: kitchen.locale,
          say,
          inWords,
        })
      : []),
    ...kitLines(kit, { say, locale: kitchen.locale, system: kitchen.measures }),
    ...crew.map(({ role, people }) => ({
      group: 'staff' as const,
      item: role.name,
      container: '',
      count: people,
      unit: say('lists.people', { n: people }),
      hold: '',
      note: say('lists.hours-each', { n: role.hours }),
    })),
    ...mealLines(
      plan,
      choice.guests,
      crew.reduce((sum, { people }) => sum + people, 0),
      say,
    ),
    ...terms.addOns
      .filter(({ id }) => (choice.addOns[id] ?? 0) > 0)
      .map((addOn) => ({
        group: 'add-ons' as const,
        item: addOn.name,
        container: '',
        count: choice.addOns[addOn.id] ?? 0,
        unit: addOn.per === 'hour' ? say('lists.hours') : say('lists.each'),
        hold: '',
        note: '',
      })),
    ...food.filter(({ raw }) => raw),
  ];
}

/** Ready food by how it travels, then raw food, the one that asks for the most heat at the bottom. */
function foodLines({ foods, loading }: EventLoad, setting: LabelSetting): PackOutLine[] {
  const lines = foods.map((food) => {
    const line =
      food.kind === 'dish' ? dishLine(food.planned, setting) : componentLine(food.component, setting);
    const into = (loading?.carriers ?? []).filter((each) => each.foods.some((some) => some.food === food));
    return {
      raw: food.raw,
      line: { ...line, ...(into.length > 0 && { carriers: into.map(({ number }) => number) }) },
    };
  });
  lines.sort((a, b) => ORDER.indexOf(a.line.hold) - ORDER.indexOf(b.line.hold));
  return rawLast(lines, ({ raw }) => raw).map(({ line }) => line);
}

function dishLine(planned: PlannedDish, setting: LabelSetting): PackOutLine {
  const { plan, system, say, inWords, throwAways } = setting;
  const carried = carriedIn(planned);
  const raw = planRaw(planned.dish.recipe, plan.foodSafety, scaleOf(system), say, inWords);
  const goesWith = plan.beside.includes(planned) ? sentence(planned.why.map(inWords).join('; ')) : '';
  return {
    group: 'food',
    item: planned.dish.name,
    container: inWords(carried?.containerName ?? ''),
    ...(carried ? { count: carried.count, unit: say('lists.each') } : loose(planned, say)),
    hold: travelsAs(planned.dish.recipe),
    note: [goesWith, guestsOfDish(planned.dish, say), finishWords(plan, planned.dish.recipe, system)]
      .filter((text) => text !== '')
      .join('. '),
    ...throwAwayBy(throwAways, planned.dish.recipe),
    ...(raw && { raw }),
  };
}

/** What travels in no container: bottles and cans of a drink are counted, any other dish is one thing. */
function loose(planned: PlannedDish, say: Say): Pick<PackOutLine, 'count' | 'unit'> {
  const counted = countedDrink(planned);
  return counted
    ? { count: Number(counted.amount.n), unit: unitWord(counted.unit, counted.amount) }
    : { count: 1, unit: say('lists.each') };
}

/** What stands on the table or the line and is not what the food travels in, each kind once over all dishes. */
function servingLines(plan: EventPlan, say: Say, inWords: SayStatement): PackOutLine[] {
  const served = [...cookedDishes(plan), ...plan.beside].flatMap((planned) => {
    const carried = isMadeThere(planned.dish.recipe) ? undefined : carriedIn(planned);
    return planned.containers
      .filter(({ stage, container }) => stage === 'serve' && container !== carried?.container)
      .map((container) => ({ ...container, dish: planned.dish.name }));
  });
  return [...Map.groupBy(served, ({ container }) => container).values()].map((same) => ({
    group: 'service ware',
    item: inWords(same[0]!.containerName),
    container: '',
    count: same.reduce((sum, { count }) => sum + count, 0),
    unit: say('lists.each'),
    hold: '',
    note: same
      .map(({ count, dish }) => (same.length === 1 ? dish : say('lists.count-for', { n: count, dish })))
      .join('; '),
  }));
}

/** The plates of those who work: the crew's that the kitchen pays, and other traders' that the client pays. */
function mealLines(
  { input, crewMeals }: EventPlan,
  { staff, vendors }: Choice['guests'],
  crew: number,
  say: Say,
): PackOutLine[] {
  const eats = crewMeals.map(({ dish }) => dish.recipe.name).join(', ');
  const line = (item: string, count: number, note: string): PackOutLine[] =>
    count === 0
      ? []
      : [
          {
            group: 'staff',
            item,
            container: '',
            count,
            unit: say('lists.meals', { n: count }),
            hold: '',
            note,
          },
        ];
  return [
    ...line(
      say('lists.staff-meals'),
      input.crewBringsOwn ? 0 : staff,
      [eats, crew > staff ? say('lists.crew-of', { n: crew }) : ''].filter(Boolean).join('; '),
    ),
    ...line(say('lists.vendor-meals'), vendors, say('lists.client-pays')),
  ];
}

function sentence(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
