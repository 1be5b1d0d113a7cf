import { isMadeThere } from '../food/made-there.ts';
import type { Recipe } from '../food/recipe.ts';
import { durationText, type Minutes, minutes } from '../measure/duration.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { type Statement, several, statement } from '../text/statement.ts';
import type { SafetyRules } from './limit.ts';
import { citation, DEFERS, limitTemperatureText } from './limit-said.ts';

/** How long food is away from the kitchen; undefined where it is not stated. */
export interface TimeAway {
  readonly travel: Minutes | undefined;
  /** From arriving to serving. */
  readonly setUp: Minutes | undefined;
  readonly service: Minutes | undefined;
}

/** What to say of a dish that stands neither hot nor cold. */
export interface TimeOut {
  readonly tooLong: boolean;
  /** A sentence without full stop. */
  readonly what: Statement;
  readonly wayOut: Statement;
}

/** Whether time alone keeps a recipe's food safe: it stands at room temperature, and needs heat or cold. */
export function standsWithoutControl({ hold, temperatureControl }: Recipe): boolean {
  return hold === 'room' && temperatureControl !== false;
}

/**
 * How long food held at room temperature stands from leaving the kitchen to the end of service, against the time a
 * code allows it (FDA Food Code 3-501.19). What is made there entirely travels as its ingredients do and stands from its
 * first step, which takes its time for one batch at least. Undefined for food that is held hot or cold or is safe without, and where
 * all is stated and within the time. `called` is the recipe's name in the sentence.
 */
export function timeOut(
  recipe: Recipe,
  away: TimeAway,
  rules: SafetyRules,
  scale: TemperatureScale,
  called: string,
): TimeOut | undefined {
  if (!standsWithoutControl(recipe)) return undefined;
  const parts = (
    isMadeThere(recipe)
      ? ([
          ['making', makingTime(recipe)],
          ['service', away.service],
        ] as const)
      : ([
          ['travel', away.travel],
          ['setup', away.setUp],
          ['service', away.service],
        ] as const)
  ).map(([name, time]) => ({ name, time }));
  const said = parts.flatMap(({ name, time }) => (time === undefined ? [] : [{ name, time }]));
  const unsaid = parts.flatMap(({ name, time }) => (time === undefined ? [name] : []));
  const total = minutes(said.reduce((sum, { time }) => sum + time, 0));
  const { within } = rules.limits['time without control'];
  const tooLong = total > within;
  if (!tooLong && unsaid.length === 0) return undefined;
  const [cool] = rules.limits['time without control, kept cool'].stages;
  const allowed = {
    recipe: called,
    source: citation(rules, 'time without control'),
    within: durationText(within),
    longer: durationText(cool.within),
    cool: limitTemperatureText(cool.temperature, scale),
  };
  const sum = several(
    'plus',
    said.map(({ name, time }) => statement('safety.away-time', { part: name, time: durationText(time) })),
  );
  const unknown = several(
    'and',
    unsaid.map((part) => statement('safety.away', { part })),
  );
  const added = { ...allowed, sum, total: durationText(total) };
  return {
    tooLong,
    what:
      said.length === 0
        ? statement('safety.time-out.all-unknown', { ...allowed, unknown })
        : unsaid.length === 0
          ? statement('safety.time-out', added)
          : statement('safety.time-out.part-unknown', { ...added, unknown }),
    wayOut: statement('safety.time-out.way', { defers: DEFERS }),
  };
}

function makingTime({ steps }: Recipe): Minutes {
  return minutes(
    steps.reduce((sum, { handsOn, unattended, rest }) => sum + handsOn + unattended + (rest ?? 0), 0),
  );
}
