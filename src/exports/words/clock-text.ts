import { formsOf } from './forms-of.ts';

const forms = new Map<string, Intl.DateTimeFormat>();

/**
 * A time of day as people of a locale read it: `17:30` → `5:30 PM` (en-US), `17:30` (en-GB, de-DE). What is no HH:MM stays
 * as it is: `+1:35`, or nothing.
 */
export function clockText(clock: string, locale: string): string {
  const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(clock) ?? [];
  return hours === undefined || minutes === undefined
    ? clock
    : formOf(locale, true).format(Date.UTC(2000, 0, 1, Number(hours), Number(minutes)));
}

/** A whole hour from 0 to 23 where there is little room: `5 PM` (en-US), `17:00` where days have 24 hours. */
export function hourText(hour: number, locale: string): string {
  const form = formOf(locale, false);
  return form.resolvedOptions().hour12
    ? form.format(Date.UTC(2000, 0, 1, hour))
    : clockText(`${pad(hour)}:00`, locale);
}

/** Minutes from a midnight as data has them, by 24 hours: 1095 → `18:15`, -30 → `23:30`. */
export function clockOf(minute: number): string {
  const ofDay = ((minute % 1440) + 1440) % 1440;
  return `${pad(Math.floor(ofDay / 60))}:${pad(ofDay % 60)}`;
}

/** Minutes from the beginning of a day's work whose hour is not known: 95 → `+1:35`. */
export function afterText(minute: number): string {
  return `+${Math.floor(minute / 60)}:${pad(minute % 60)}`;
}

function formOf(locale: string, withMinutes: boolean): Intl.DateTimeFormat {
  const key = `${locale} ${withMinutes}`;
  const known = forms.get(key);
  if (known) return known;
  const form = new Intl.DateTimeFormat(formsOf(locale), {
    hour: 'numeric',
    ...(withMinutes && { minute: '2-digit' }),
    timeZone: 'UTC',
  });
  forms.set(key, form);
  return form;
}

function pad(number: number): string {
  return String(number).padStart(2, '0');
}
