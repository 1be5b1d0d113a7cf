import { notParsed, type Parsed, parsed } from '../parsed.ts';

const BY_24 = /^(\d{1,2}):(\d{2})$/;
/** `5:30 pm`, `5 PM`, `5:30 p.m.` */
const BY_12 = /^(\d{1,2})(?::(\d{2}))? ?([ap])\.?m\.?$/i;

/** Reads a time of day, `5:30 pm` or by 24 hours `17:30`, as HH:MM by 24 hours. */
export function parseClock(text: string): Parsed<string> {
  const tidy = text.slice(0, 20).trim().replace(/\s+/g, ' ');
  const by12 = BY_12.exec(tidy);
  const [, hours = '99', minutes = '99'] = BY_24.exec(tidy) ?? [];
  const clock = by12
    ? of12(by12)
    : Number(hours) < 24 && Number(minutes) < 60
      ? `${hours.padStart(2, '0')}:${minutes}`
      : undefined;
  return clock === undefined
    ? notParsed(`“${text.slice(0, 20)}” is not a time of day`, 'write it such as 5:30 pm or 17:30')
    : parsed(clock);
}

/** Noon is 12 pm, midnight 12 am. */
function of12([, hour = '', minutes = '00', half = '']: RegExpExecArray): string | undefined {
  if (Number(hour) < 1 || Number(hour) > 12 || Number(minutes) > 59) return undefined;
  const hours = (Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return `${String(hours).padStart(2, '0')}:${minutes}`;
}

/** Minutes from midnight of a time as `parseClock` gives it: `18:00` → 1080. */
export function minutesOfClock(clock: string): number {
  const [hours, mins] = clock.split(':');
  return Number(hours) * 60 + Number(mins);
}
