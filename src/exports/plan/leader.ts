import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { notAsked } from '../../engine/menu/site-sheet.ts';
import type { ServedOn } from '../../engine/plan/clock/day-clock.ts';
import type { ThrowAway } from '../../engine/plan/clock/throw-away.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanLeader } from '../form/leader.ts';
import type { PlanOdds } from '../form/odds.ts';
import { clockOf } from '../words/clock-text.ts';

/** A dish is watched from 1 in 20 on: common practice, no source. */
const WATCHED = 0.05;
/** So many dishes can be watched at once. */
const MOST_WATCHED = 4;

/** What whoever leads the crew has in hand, all of it from the plan, its clock and its odds. */
export function planLeader(
  { input }: Pick<EventPlan, 'input'>,
  served: ServedOn | undefined,
  throwAways: readonly ThrowAway[],
  odds: PlanOdds | undefined,
  kitchen: Pick<Kitchen, 'name' | 'phone'>,
  say: Say,
): PlanLeader {
  return {
    crew: (input.soldCrew ?? [])
      .filter(({ people }) => people > 0)
      .map(({ name, people }) => ({ role: name, people })),
    phones: [
      { who: say('leader.kitchen'), name: kitchen.name, number: kitchen.phone ?? '' },
      { who: say('leader.client'), name: input.client, number: '' },
      {
        who: say('leader.venue'),
        name: input.venue.get('contact') ?? '',
        number: input.venue.get('phone') ?? '',
      },
      { who: say('leader.driver'), name: '', number: '' },
    ],
    clock: served ? hoursOf(served, say) : [],
    ...(throwAways.length > 0 && {
      throwAway: throwAways.map(({ recipe, dish, by }) => ({ dish: dish ?? recipe.name, by: clockOf(by) })),
    }),
    short: (odds?.dishes ?? [])
      .filter(({ planned }) => Number(planned.chance) >= WATCHED)
      .toSorted((one, other) => Number(other.planned.chance) - Number(one.planned.chance))
      .slice(0, MOST_WATCHED)
      .map(({ name, planned }) => ({ dish: name, odds: planned.odds, helpings: planned.helpings })),
    notAsked: input.siteSheet === undefined ? [] : notAsked(input.venue),
  };
}

function hoursOf({ clock }: ServedOn, say: Say): PlanLeader['clock'] {
  const moment = (what: string, at: number | undefined) =>
    at === undefined ? [] : [{ what, at: clockOf(at), until: '' }];
  return [
    ...moment(say('leader.leave'), clock.leave),
    ...moment(say('leader.arrive'), clock.arrive),
    ...[...clock.courses]
      .toSorted(([, one], [, other]) => one.from - other.from)
      .map(([course, { from, until }]) => ({
        what: say('leader.course', { course }),
        at: clockOf(from),
        until: until === from ? '' : clockOf(until),
      })),
    ...moment(say('leader.cleared'), clock.cleared),
    ...moment(say('leader.back'), clock.back),
  ];
}
