import { parseWhen, type When } from '../../../engine/calendar/when.ts';
import type { RecipeStep } from '../../../engine/food/recipe.ts';
import { parseStepText } from '../../../engine/food/step-text.ts';
import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { type Minutes, minutes, parseDuration } from '../../../engine/measure/duration.ts';
import { parseHeldTemperature } from '../../../engine/measure/temperature.ts';
import { notParsed, type Parsed } from '../../../engine/parsed.ts';
import type { RecipeText } from '../../../schema/recipe.ts';
import type { Path } from '../../files/place-of.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

const PER_BATCH = / +per +batch$/i;

/** One step of a recipe. */
export function linkStep(
  reading: Reading,
  path: Path,
  text: RecipeText['steps'][number],
  { stations, stationSkills, crew }: Pick<Kitchen, 'stations' | 'stationSkills' | 'crew'>,
): RecipeStep | undefined {
  const when = reading.understand([...path, 'when'], text.when ?? 'on the day', parseWhenToCook);
  const handsOn = linkMinutes(reading, [...path, 'hands-on'], text['hands-on']?.replace(PER_BATCH, ''));
  const unattended = linkMinutes(reading, [...path, 'unattended'], text.unattended);
  const cookTo =
    text['cook to'] === undefined
      ? undefined
      : reading.understand([...path, 'cook to'], text['cook to'], parseHeldTemperature);
  const rest = linkWait(reading, [...path, 'rest'], text.rest);
  const useWithin = linkWait(reading, [...path, 'use within'], text['use within']);
  reading.understand([...path, 'do'], text.do, parseStepText);
  lookUp(reading, 'station', text.station, stations, [...path, 'station']);
  if (text.skill !== undefined)
    lookUp(reading, 'skill', text.skill, crew?.skills ?? new Map(), [...path, 'skill']);
  if (!when || handsOn === undefined || unattended === undefined) return undefined;
  const skill = text.skill ?? (handsOn > 0 ? stationSkills?.get(text.station) : undefined);
  const handsOnPerBatch = PER_BATCH.test(text['hands-on'] ?? '');
  return {
    text: text.do,
    when,
    station: text.station,
    handsOn,
    handsOnPerBatch,
    unattended,
    cookTo,
    ...(text.at && { at: text.at }),
    ...(rest !== undefined && { rest }),
    ...(useWithin !== undefined && { useWithin }),
    ...(text.waves === 'yes' && { waves: true }),
    ...(skill !== undefined && { skill }),
  };
}

/** A time that a recipe may leave out. */
export function linkWait(reading: Reading, path: Path, text: string | undefined): Minutes | undefined {
  return text === undefined ? undefined : reading.understand(path, text, parseDuration);
}

function linkMinutes(reading: Reading, path: Path, text: string | undefined): Minutes | undefined {
  return text === undefined ? minutes(0) : reading.understand(path, text, parseDuration);
}

function parseWhenToCook(text: string): Parsed<When> {
  const when = parseWhen(text);
  if (!when.ok || when.value.daysBefore >= 0) return when;
  return notParsed(`“${text}” is after the event`, 'write for example "the day before" or "at serving"');
}
