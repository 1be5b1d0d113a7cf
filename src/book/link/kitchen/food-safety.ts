import { LIMIT_KINDS, type LimitName, type SafetyRules } from '../../../engine/safety/limit.ts';
import { EDITIONS, FOOD_CODE_2022 } from '../../../engine/safety/limits.ts';
import {
  parseLimitDays,
  parseLimitTemperature,
  parseLimitTime,
  parseRung,
  parseStage,
} from '../../../engine/safety/parse-limit.ts';
import type { FoodSafetyText } from '../../../schema/food-safety.ts';
import type { Reading } from '../grammar/reading.ts';

const PATH = 'food safety';

/**
 * The food code of a kitchen: the figures of its edition, and over them what kitchen.yaml says. For an edition that
 * Salver has no figures of, those of 2022 stand in, and the author is told.
 */
export function linkFoodSafety(reading: Reading, text: FoodSafetyText | undefined): SafetyRules {
  const rules = editionOf(reading, text?.edition);
  const limits = { ...rules.limits };
  for (const [name, written] of Object.entries(text?.limits ?? {}) as LimitEntries) {
    if (written === undefined) continue;
    const figures = linkFigures(reading, name, written.is);
    if (!figures) continue;
    const { section = rules.limits[name].section } = written;
    Object.assign(limits, { [name]: { ...figures, section } });
  }
  return { edition: rules.edition, place: text?.place, limits };
}

type LimitEntries = [LimitName, { is: readonly string[]; section?: string | undefined } | undefined][];

function editionOf(reading: Reading, edition: string | undefined): SafetyRules {
  if (edition === undefined) return FOOD_CODE_2022;
  const known = EDITIONS.find((each) => each.edition.toLowerCase() === edition.trim().toLowerCase());
  if (known) return known;
  const names = EDITIONS.map((each) => each.edition).join(', ');
  reading.say(
    'edition-unknown',
    [PATH, 'edition'],
    `Salver does not have the figures of “${edition}”, so those of the ${FOOD_CODE_2022.edition} apply wherever “limits:” has none`,
    `write under “limits:” whatever your edition sets differently, or name one of ${names}`,
  );
  return { ...FOOD_CODE_2022, edition };
}

/** The figures of one limit; undefined, with a finding, where a grammar refuses them. */
function linkFigures(reading: Reading, name: LimitName, words: readonly string[]): object | undefined {
  const kind = LIMIT_KINDS[name];
  const path = (index: number) => [PATH, 'limits', name, 'is', index];
  if (kind === 'cooking' || kind === 'cooling') {
    const grammar = kind === 'cooking' ? parseRung : parseStage;
    const read = words.map((text, index) => reading.understand<object>(path(index), text, grammar));
    if (read.includes(undefined)) return undefined;
    return kind === 'cooking' ? { rungs: read } : { stages: read };
  }
  const [only = ''] = words;
  if (words.length > 1) {
    const what = `“${name}” takes one figure, but there are ${words.length}`;
    reading.say('not-understood', [PATH, 'limits', name, 'is'], what, 'keep the one that applies');
    return undefined;
  }
  if (kind === 'temperature') {
    const temperature = reading.understand(path(0), only, parseLimitTemperature);
    return temperature && { temperature };
  }
  if (kind === 'time') {
    const within = reading.understand(path(0), only, parseLimitTime);
    return within === undefined ? undefined : { within };
  }
  const days = reading.understand(path(0), only, parseLimitDays);
  return days === undefined ? undefined : { days };
}
