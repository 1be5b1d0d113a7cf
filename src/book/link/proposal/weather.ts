import { parseTemperature } from '../../../engine/measure/temperature.ts';
import type { Weather } from '../../../engine/menu/weather.ts';
import type { ProposalText } from '../../../schema/proposal.ts';
import type { Reading } from '../grammar/reading.ts';

/** The weather that is planned for; undefined where the proposal states none. */
export function linkWeather(reading: Reading, text: ProposalText['weather']): Weather | undefined {
  if (text === undefined) return undefined;
  const high =
    text.high === undefined
      ? undefined
      : reading.understand(['weather', 'high'], text.high, parseTemperature);
  return {
    ...(high && { high }),
    ...(text.rain !== undefined && { rain: text.rain === 'yes' }),
    ...(text.wind !== undefined && { wind: text.wind === 'yes' }),
  };
}
