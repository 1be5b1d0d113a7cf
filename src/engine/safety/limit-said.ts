import { durationText, minutes } from '../measure/duration.ts';
import { type HeldTemperature, type TemperatureScale, temperatureText } from '../measure/temperature.ts';
import { type Said, type Several, type Statement, several, statement } from '../text/statement.ts';
import {
  type CodeTemperature,
  codeTemperature,
  type LimitName,
  type LimitOf,
  type Rung,
  type SafetyRules,
} from './limit.ts';

/** What every finding about food safety defers to, as a clause of its own. */
export const DEFERS: Statement = statement('safety.defers');

/** Where a limit is set: `FDA Food Code 2022, 3-401.11(A)(2)`. */
export function citation({ edition, place, limits }: SafetyRules, name: LimitName): Statement {
  const { section } = limits[name];
  if (place === undefined)
    return section === ''
      ? statement('safety.code', { edition })
      : statement('safety.code-section', { edition, section });
  return section === ''
    ? statement('safety.code-place', { edition, place })
    : statement('safety.code-place-section', { edition, place, section });
}

/** A code's temperature in data's form: `41 °F`. */
export function limitTemperatureText(temperature: CodeTemperature, scale: TemperatureScale): string {
  return temperatureText(codeTemperature(temperature, scale));
}

/** A temperature with its time: `155 °F for 17 s`. No time, and a time of nothing, is not told. */
export function heldSaid(held: HeldTemperature): Said {
  const temperature = temperatureText(held);
  const time = heldTime(held.seconds);
  return time === undefined ? temperature : statement('safety.held', { temperature, time });
}

function heldTime(seconds = 0): string | undefined {
  if (seconds === 0) return undefined;
  return seconds % 60 === 0 ? durationText(minutes(seconds / 60)) : `${seconds} s`;
}

/** The least of one way to cook: `155 °F or above for 17 s`. */
export function leastSaid(rung: Rung, scale: TemperatureScale): Statement {
  const temperature = limitTemperatureText(rung.temperature, scale);
  const held = heldTime(rung.seconds);
  return held === undefined
    ? statement('safety.or-above', { temperature })
    : statement('safety.held-or-above', { temperature, time: held });
}

/** One way to cook: `155 °F for 17 s`. */
export function rungSaid({ temperature, seconds }: Rung, scale: TemperatureScale): Said {
  return heldSaid({ ...codeTemperature(temperature, scale), seconds });
}

/** The stages of cooling: `70 °F within 2 h and 41 °F within 6 h`. */
export function stagesSaid({ stages }: LimitOf<'cooling'>, scale: TemperatureScale): Several {
  return several(
    'and',
    stages.map(({ temperature, within }) =>
      statement('safety.stage', {
        temperature: limitTemperatureText(temperature, scale),
        hours: `${within / 60}`,
      }),
    ),
  );
}
