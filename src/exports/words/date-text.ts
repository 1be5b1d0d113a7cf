import type { Day } from '../../engine/calendar/day.ts';
import { languageOf } from '../../words/languages.ts';

const forms = new Map<string, Intl.DateTimeFormat>();

/** A date as people say it: `Saturday, May 15, 2027` in the United States, `Saturday, 15 May 2027` elsewhere. */
export function dateText(day: Day, locale: string): string {
  const form =
    forms.get(locale) ?? new Intl.DateTimeFormat(datesOf(locale), { dateStyle: 'full', timeZone: 'UTC' });
  forms.set(locale, form);
  return form.format(new Date(`${day}T00:00:00Z`));
}

/** In the page's language: the month first where the country does so, else as Britain writes it, with one comma for all. */
function datesOf(locale: string): string {
  const { language } = new Intl.Locale(languageOf(locale));
  return `${language}-${new Intl.Locale(locale).region === 'US' ? 'US' : 'GB'}`;
}
