import type { Recipe } from '../food/recipe.ts';
import { durationText, type Minutes, minutes } from '../measure/duration.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { citation, DEFERRAL, limitTemperatureText, type SafetyRules } from './limit.ts';

/** How long food is away from the kitchen; undefined where it is not stated. */
export interface TimeAway {
  readonly travel: Minutes | undefined;
  /** From arriving to serving. */
  readonly setUp: Minutes | undefined;
  readonly service: Minutes | undefined;
}

/** What to say of a dish that stands neither hot nor cold. It begins in the middle of a sentence about it. */
export interface TimeOut {
  readonly tooLong: boolean;
  readonly what: string;
  readonly wayOut: string;
}

/** Whether time alone keeps a recipe's food safe: it stands at room temperature, and needs heat or cold. */
export function standsWithoutControl({ hold, temperatureControl }: Recipe): boolean {
  return hold === 'room' && temperatureControl !== false;
}

/**
 * How long food held at room temperature stands from leaving the kitchen to the end of service, against the time a
 * code allows it (FDA Food Code 3-501.19). Undefined for food that is held hot or cold or is safe without, and where
 * all is said and within the time.
 */
export function timeOut(
  recipe: Recipe,
  away: TimeAway,
  rules: SafetyRules,
  scale: TemperatureScale,
): TimeOut | undefined {
  if (!standsWithoutControl(recipe)) return undefined;
  const parts = (
    [
      ['travel', away.travel],
      ['set-up', away.setUp],
      ['service', away.service],
    ] as const
  ).map(([name, time]) => ({ name, time }));
  const said = parts.flatMap(({ name, time }) => (time === undefined ? [] : [{ name, time }]));
  const unsaid = parts.flatMap(({ name, time }) => (time === undefined ? [name] : []));
  const total = minutes(said.reduce((sum, { time }) => sum + time, 0));
  const { within } = rules.limits['time without control'];
  const tooLong = total > within;
  if (!tooLong && unsaid.length === 0) return undefined;
  const sum = said.map(({ name, time }) => `${name} ${durationText(time)}`).join(' + ');
  const missing =
    unsaid.length === 0 ? '' : `, not counting ${unsaid.join(' and ')}, whose time is not stated`;
  const [cool] = rules.limits['time without control, kept cool'].stages;
  const longer = `${durationText(cool.within)} where it never gets above ${limitTemperatureText(cool.temperature, scale)}`;
  return {
    tooLong,
    what: `is neither hot nor cold for ${sum === '' ? 'a time that is not stated' : `${sum} = ${durationText(total)}`}${missing}; ${citation(rules, 'time without control')} allows ${durationText(within)}, or ${longer}`,
    wayOut: `carry it hot or cold, bring it out in batches, or mark each batch with its discard time; ${DEFERRAL}`,
  };
}
