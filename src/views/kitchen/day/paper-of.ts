import type { Day } from '../../../engine/calendar/day.ts';
import type { PlanDayPicture } from '../../../exports/form/day.ts';
import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import { clockOf } from '../../../exports/words/clock-text.ts';
import { checkStageWords } from '../../../exports/words/stage-words.ts';
import { allOf } from '../../../exports/words/statement-text.ts';
import { type Say, wordsIn } from '../../../words/words-in.ts';
import { numberOf } from '../plan-number.ts';
import { dayOfCheck } from './day-checks.ts';
import { dayDeliveries } from './deliveries-of.ts';
import type { DayPaper, DayShopping, DayTaskList } from './view.ts';

const MIDNIGHT = 24 * 60;

/**
 * What a day's paper has besides its page: `plans` are those with work on it, `all` those that may have a delivery too, and
 * `lists` its tasks.
 */
export function dayPaper(
  date: Day,
  plans: readonly PrepPlanDocument[],
  all: readonly PrepPlanDocument[],
  pictures: readonly PlanDayPicture[],
  lists: readonly DayTaskList[],
  joint: { readonly shopping: DayShopping | null; readonly events: ReadonlySet<string> },
  locale: string,
): DayPaper {
  const say = wordsIn(locale);
  const [first] = plans;
  const shown = {
    events: plans.map((plan) => eventLine(plan, date, say)),
    people: peopleOf(pictures),
    deliveries: dayDeliveries(date, all, joint.shopping, joint.events),
    tomorrow: [...toThaw(date, plans, say), ...overnight(lists, say)],
    log: logOf(date, plans, locale),
    edition: first?.safetySheet.edition ?? '',
    defers: first?.safetySheet.defers ?? '',
  };
  const alerts = plans.map((plan) => plan.alerts);
  return { ...shown, number: numberOf({ ...shown, lists, alerts, date }) };
}

function eventLine({ event, timeline }: PrepPlanDocument, date: Day, say: Say): DayPaper['events'][number] {
  const today = event.date === date;
  const { adults, children, vendors, staff } = event.guests;
  const counts: [number, string][] = [
    [adults, say('event.adults', { n: adults })],
    [children, say('event.children', { n: children })],
    [vendors, say('event.vendors', { n: vendors })],
    [staff, say('event.staff', { n: staff })],
  ];
  const named = event.venue.find(({ label }) => label === 'name')?.value;
  return {
    occasion: event.occasion,
    client: event.client,
    guests: counts
      .filter(([count]) => count > 0)
      .map(([count, what]) => `${count} ${what}`)
      .join(', '),
    place: [named, event.place].filter(Boolean).join(', '),
    leaves: (today && timeline.find(({ part }) => part === 'leave')?.begins) || '',
    serves: today ? event.serveAt : '',
    servedOn: today ? '' : event.dateText,
  };
}

/** Whoever has work in the kitchen by the clock, from the first of it to the last. */
function peopleOf(pictures: readonly PlanDayPicture[]): DayPaper['people'] {
  return pictures.flatMap(({ where, from, people = [] }) =>
    from === null || where !== 'in the kitchen'
      ? []
      : people.map(({ name, tasks }) => ({
          name,
          begins: clockOf(from + Math.min(...tasks.map(({ begins }) => begins))),
          ends: clockOf(from + Math.max(...tasks.map(({ ends }) => ends))),
        })),
  );
}

/** Frozen food that a recipe first worked on the next working day takes. */
function toThaw(date: Day, plans: readonly PrepPlanDocument[], say: Say): DayPaper['tomorrow'] {
  const next = plans
    .flatMap(({ days }) => days.map((day) => day.date))
    .filter((day) => day > date)
    .sort()[0];
  if (next === undefined) return [];
  const wanted = plans.flatMap(({ safetySheet, recipes, days }) => {
    const frozen = safetySheet.checks.flatMap(({ stage, what }) =>
      stage === 'thawing' ? what.split('; ') : [],
    );
    const startsOn = (recipe: string) =>
      days.find(({ tasks }) => tasks.some((task) => task.recipe === recipe))?.date;
    return recipes.flatMap(({ id, name, lines }) =>
      startsOn(id) === next
        ? lines.flatMap((line) =>
            frozen.includes(line.name)
              ? [{ food: line.name, recipe: name, amount: line.amount.printed }]
              : [],
          )
        : [],
    );
  });
  return [...Map.groupBy(wanted, ({ food }) => food)].map(([food, uses]) => ({
    what: say('day.thaw', { food }),
    why: uses
      .map(({ amount, recipe }) => say('day.amount-for', { amount, event: recipe }))
      .filter((use, at, all) => all.indexOf(use) === at)
      .join('; '),
  }));
}

function overnight(lists: readonly DayTaskList[], say: Say): DayPaper['tomorrow'] {
  return lists.flatMap(({ tasks }) =>
    tasks.flatMap(({ hours, recipeName, text }) =>
      hours && hours.ends > MIDNIGHT
        ? [{ what: recipeName, why: say('day.overnight', { step: text, time: hours.to }) }]
        : [],
    ),
  );
}

/** What is measured in the kitchen: once for all events that it is the same for. */
function logOf(date: Day, plans: readonly PrepPlanDocument[], locale: string): DayPaper['log'] {
  const say = wordsIn(locale);
  const checks = plans.flatMap((plan) =>
    plan.safetySheet.checks.flatMap((check) =>
      dayOfCheck(plan, check) === date ? [{ ...check, event: plan.event.occasion }] : [],
    ),
  );
  const same = Map.groupBy(checks, ({ stage, what, limit, blanks }) =>
    JSON.stringify([stage, what, limit, blanks]),
  );
  const shared = [say('safety.blank.time'), say('safety.blank.initials')];
  const rows = [...same.values()].flatMap((each) => {
    const [first] = each;
    if (!first) return [];
    const { stage, what, recipe, limit, section, blanks } = first;
    const events = [...new Set(each.map(({ event }) => event))];
    return [
      {
        stage: checkStageWords(stage, say),
        what,
        event: recipe === '' || plans.length < 2 ? '' : allOf(events, locale),
        limit,
        section,
        // Every row has a place for these two.
        readings: blanks.filter((blank) => !shared.includes(blank)),
      },
    ];
  });
  return [...Map.groupBy(rows, ({ stage }) => stage).values()].flat();
}
