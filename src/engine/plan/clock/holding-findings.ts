import Fraction from 'fraction.js';
import { type Keeps, keepersOf } from '../days/holding-room.ts';
import type { EventPlan } from '../event-plan.ts';
import type { ClockChange } from './clock-change.ts';
import type { ClockFinding, WayOut } from './clock-finding.ts';
import type { DayClock, ServedOn } from './day-clock.ts';
import { type Filling, fillings } from './holding.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { movedWay } from './ways-out.ts';

/** A truck is asked to leave no earlier than that before its time. */
const EARLIEST = 180;

/** Where more food waits hot, or cold, than what keeps it so holds, each kind with what works instead. */
export function holdingFindings(
  clock: DayClock,
  plans: readonly EventPlan[],
  { equipment }: Pick<ClockKitchen, 'equipment'>,
): ClockFinding[] {
  return (['hot', 'cold'] as const).flatMap((keeps): ClockFinding[] => {
    const over = tooFull(fillings(clock.held, keeps));
    if (over.length === 0) return [];
    const ways = waysOf(clock, plans, equipment, keeps, over);
    return over.map(
      ({ foods, ...found }): ClockFinding => ({
        kind: 'holding',
        date: clock.date,
        keeps,
        equipment: keepersOf(equipment, keeps).map(({ name }) => name),
        ...found,
        recipes: [...new Set(foods.map(({ recipe }) => recipe.name))],
        ways,
      }),
    );
  });
}

/** The stretches in which more is asked for than there is; those that touch are one, as full as the fullest. */
function tooFull(stretches: readonly Filling[]): Filling[] {
  const found: Filling[] = [];
  for (const next of stretches.filter(({ share }) => share.gt(new Fraction(1n)))) {
    const last = found.at(-1);
    if (last?.until !== next.from) {
      found.push(next);
      continue;
    }
    const share = next.share.gt(last.share) ? next.share : last.share;
    const foods = [...last.foods, ...next.foods];
    found[found.length - 1] = { from: last.from, until: next.until, share, foods };
  }
  return found;
}

/**
 * What was tried and works, each by solving the date again with that one thing changed: one more of what keeps it, one
 * more person, one more of what it is cooked in, a truck that leaves before the next one’s food is finished, and for what
 * is held cold work that keeps done the day before.
 */
function waysOf(
  clock: DayClock,
  plans: readonly EventPlan[],
  equipment: ClockKitchen['equipment'],
  keeps: Keeps,
  over: readonly Filling[],
): WayOut[] {
  const { served, crew, steps } = clock;
  const works = (change: ClockChange) => clock.overWith(change)?.equals(new Fraction(0n)) === true;
  const foods = over.flatMap((each) => each.foods);
  const waits = new Set(foods.map(({ recipe }) => recipe));
  const gear = new Map(
    steps.flatMap(({ batch, load }) =>
      load && waits.has(batch.recipe) ? [[load.equipment.id, load.equipment.name] as const] : [],
    ),
  );
  const from = Math.min(...steps.filter((step) => step.clock).map(({ begins }) => begins));
  const until = Math.max(...served.map(({ pack }) => pack.ends));
  return [
    ...[...keepersOf(equipment, keeps).map(({ id, name }) => [id, name] as const), ...gear].flatMap(
      ([id, name]): WayOut[] => (works({ equipment: id }) ? [{ kind: 'equipment', name }] : []),
    ),
    ...(crew.length > 0 && works({ people: 1 })
      ? [{ kind: 'people' as const, skill: undefined, from, until }]
      : []),
    ...over.flatMap((stretch) => truckWay(stretch, served, works)),
    ...(keeps === 'cold' ? movedWay(clock, plans, (without) => works({ without })) : []),
  ];
}

/** The truck that is loaded when the stretch ends leaves before it begins. */
function truckWay(
  { foods, from, until }: Filling,
  served: readonly ServedOn[],
  works: (change: ClockChange) => boolean,
): WayOut[] {
  const by = Math.ceil((until - from) / 5) * 5;
  if (by > EARLIEST) return [];
  const first = served.find(
    ({ plan: { input }, load }) =>
      load.begins <= until && foods.some(({ event }) => event === input.id) && load.begins > from,
  );
  if (!first || foods.every(({ event }) => event === first.plan.input.id)) return [];
  return works({ early: { event: first.plan.input.id, by } })
    ? [{ kind: 'truck', occasion: first.plan.input.occasion, at: first.clock.leave - by }]
    : [];
}
