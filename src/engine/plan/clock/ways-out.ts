import { cookedDishes } from '../cooked-dishes.ts';
import { movesFrom } from '../days/work-day-moves.ts';
import type { EventPlan } from '../event-plan.ts';
import type { Clash } from './clashes.ts';
import type { WayOut } from './clock-finding.ts';
import type { DayClock } from './day-clock.ts';
import type { ClockKitchen } from './kitchen-steps.ts';

/**
 * What would make a date's work fit, each tried by solving the date again with that one thing changed: one more pair of
 * hands, with a skill only where any would not do, one more oven or burner, one more at a bench, a crew that comes earlier, work that keeps done the day before.
 */
export function waysOut(
  clock: DayClock,
  clashes: readonly Clash[],
  plans: readonly EventPlan[],
  kitchen: ClockKitchen,
): WayOut[] {
  const { kept } = clock;
  const fits = kept.hours && kept.resources;
  return [...skillWays(clock, clashes), ...(fits ? [] : dayWays(clock, plans, kitchen))];
}

/** One more person who has a skill that is asked for more often than there are people with it. */
function skillWays({ fitsWith }: DayClock, clashes: readonly Clash[]): WayOut[] {
  const skills = Map.groupBy(
    clashes.flatMap(({ of, from, until }) => (of.kind === 'skill' ? [{ skill: of.skill, from, until }] : [])),
    ({ skill }) => skill,
  );
  return [...skills].flatMap(([skill, lacks]): WayOut[] => {
    const from = Math.min(...lacks.map((lack) => lack.from));
    const until = Math.max(...lacks.map((lack) => lack.until));
    return fitsWith({ people: 1, skill }) ? [{ kind: 'people', skill, from, until }] : [];
  });
}

function dayWays(clock: DayClock, plans: readonly EventPlan[], kitchen: ClockKitchen): WayOut[] {
  const { steps, served, crew, fitsWith, date, kept } = clock;
  const own = steps.filter(
    ({ batch, clock: known }) => known && batch.events.some(({ plan }) => plan.input.date === date),
  );
  const packed = served.map(({ pack }) => pack);
  if (own.length === 0 && packed.length === 0) return [];
  const [from, until] = [
    Math.min(...own.map(({ begins }) => begins), ...packed.map(({ begins }) => begins)),
    Math.max(...own.map(({ handsOff }) => handsOff), ...packed.map(({ ends }) => ends)),
  ];
  const gear = new Map(
    own.flatMap(({ load }) => (load ? [[load.equipment.id, load.equipment.name] as const] : [])),
  );
  const stations = [...new Set(own.map(({ step }) => step.station))].filter((id) => kitchen.stations.has(id));
  const skills = [...new Set(own.flatMap(({ step }) => step.skill ?? []))];
  const more = [undefined, ...skills].find((skill) => fitsWith({ people: 1, skill }));
  return [
    ...(crew.length > 0 && fitsWith({ people: 1, skill: more })
      ? [{ kind: 'people' as const, skill: more, from, until }]
      : []),
    ...[...gear].flatMap(([id, name]): WayOut[] =>
      fitsWith({ equipment: id }) ? [{ kind: 'equipment', name }] : [],
    ),
    ...stations.flatMap((station): WayOut[] => (fitsWith({ station }) ? [{ kind: 'station', station }] : [])),
    // The clock itself is what it comes to then.
    ...(crew.length > 0 && kept.resources ? [{ kind: 'come' as const, at: from }] : []),
    ...movedWay(clock, plans, (without) => fitsWith({ without })),
  ];
}

/** The fewest recipes, the most work first, that keep if they are done the day before and leave the rest room enough. */
export function movedWay(
  { date }: Pick<DayClock, 'date'>,
  plans: readonly EventPlan[],
  works: (without: ReadonlySet<string>) => boolean,
): WayOut[] {
  const moves = plans
    .filter(({ input }) => input.date === date)
    .flatMap((plan) => {
      const day = plan.days.find((each) => each.date === date);
      const served = cookedDishes(plan).map(({ dish }) => dish.recipe);
      return day ? movesFrom(day, served, plan.input.date, plan.foodSafety.limits['date mark'].days) : [];
    })
    .sort((a, b) => b.handsOnMinutes - a.handsOnMinutes);
  for (let count = 1; count <= Math.min(moves.length, 3); count++) {
    const some = moves.slice(0, count);
    if (works(new Set(some.map(({ recipe }) => recipe.id))))
      return [{ kind: 'day before', recipes: some.map(({ recipe }) => recipe.name) }];
  }
  return [];
}
