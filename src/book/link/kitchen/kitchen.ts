import type Fraction from 'fraction.js';
import { parseDaysBefore } from '../../../engine/calendar/offset.ts';
import { SERVICE_STYLES, type ServiceStyle } from '../../../engine/course/service-style.ts';
import type { AllergenLaw } from '../../../engine/food/allergen-law.ts';
import { parseGlutenTested } from '../../../engine/food/gluten-free.ts';
import type { AddOn, Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { parseDuration } from '../../../engine/measure/duration.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import { DEFAULT_COUNTS, parseCounts } from '../../../engine/quote/counts.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { linkDrinksHabits } from '../drinks/habits.ts';
import {
  parseAccent,
  parseCurrency,
  parseLocale,
  parseSite,
  parseTimeZone,
  usesUsHabits,
} from '../grammar/locale-grammars.ts';
import { moneyIn, wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';
import { onlyForEaters } from '../menu/dish.ts';
import { linkAnswerWay } from './answer-way.ts';
import { linkAttendance } from './attendance.ts';
import { linkCrew, linkDayTimes } from './day.ts';
import { linkFoodSafety } from './food-safety.ts';
import { linkLabelSheet } from './label-sheet.ts';
import { DEFAULT_GUARANTEE, linkGuarantee, linkPayments, linkServiceCharge } from './money-rules.ts';
import { linkStations } from './stations.ts';

/** The kitchen without the parts that are read one by one, so that a slip in one container holds back no more. */
export type KitchenFrame = Omit<
  Kitchen,
  | 'mark'
  | 'places'
  | 'staff'
  | 'containers'
  | 'equipment'
  | 'carriers'
  | 'vehicles'
  | 'deliveryZones'
  | 'rentals'
  | 'kit'
  | 'addOns'
  | 'crewMeal'
>;

/** What every part of kitchen.yaml needs to be read. */
export interface KitchenParts
  extends Pick<
    Kitchen,
    | 'places'
    | 'staff'
    | 'containers'
    | 'equipment'
    | 'carriers'
    | 'vehicles'
    | 'deliveryZones'
    | 'rentals'
    | 'kit'
  > {
  readonly addOns: ReadonlyMap<string, AddOn>;
}

/** Reads kitchen.yaml but for its parts. Everything rests on it: with an error in here there is no Book. */
export function linkKitchen(reading: Reading, text: KitchenText): KitchenFrame | undefined {
  const locale = reading.understand(['locale'], text.locale, parseLocale);
  const currency = reading.understand(['currency'], text.currency, parseCurrency);
  const timeZone = reading.understand(['time zone'], text['time zone'], parseTimeZone);
  if (locale === undefined || currency === undefined) return undefined;
  const counts =
    text.counts === undefined ? DEFAULT_COUNTS : reading.understand(['counts'], text.counts, parseCounts);
  const paper = text.paper ?? (usesUsHabits(locale) ? 'letter' : 'a4');
  const frame = {
    name: text.name,
    town: text.town,
    email: text.email,
    phone: text.phone,
    site: text.site === undefined ? undefined : reading.understand(['site'], text.site, parseSite),
    acceptances: linkAnswerWay(reading, text),
    tellPriceSteps: text['tell clients of price steps'] === 'yes',
    locale,
    currency,
    measures: text.measures ?? (usesUsHabits(locale) ? 'us' : 'metric'),
    timeZone: timeZone ?? '',
    paper,
    labelSheet: linkLabelSheet(reading, text.labels, paper),
    accent: reading.understand(['accent'], text.accent ?? '#5a4632', parseAccent) ?? '',
    fonts: text.fonts ?? 'source',
    buying: reading.understand(['buying'], text.buying ?? '3 days before', parseDaysBefore) ?? 0,
    secondSupplierSaves:
      reading.understand(
        ['second supplier saves'],
        text['second supplier saves'] ?? '0',
        moneyIn(currency),
      ) ?? '0',
    allergenLaws: linkLaws(reading, text.allergens),
    overage: linkOverage(reading, text.overage),
    setUp:
      text['set-up'] === undefined
        ? undefined
        : reading.understand(['set-up'], text['set-up'], parseDuration),
    day: linkDayTimes(reading, text.day),
    crew: linkCrew(reading, text.crew, currency),
    foodSafety: linkFoodSafety(reading, text['food safety']),
    glutenTested:
      text['gluten free'] === undefined
        ? undefined
        : reading.understand(['gluten free'], text['gluten free'], parseGlutenTested),
    attendance: linkAttendance(reading, text, undefined),
    noMeat: reading.understand(['no meat'], text['no meat'] ?? '8 %', parseShare),
    ...onlyForEaters(text['cooked for']),
    ...(text.drinks && { drinks: linkDrinksHabits(reading, text.drinks) }),
    taxBy: text.tax?.by ?? 'invoice',
    ...(text['tip line'] === 'yes' && { tipLine: true as const }),
    serviceCharge: linkServiceCharge(reading, text['service charge']),
    guarantee: linkGuarantee(reading, text.guarantee, DEFAULT_GUARANTEE),
    payments: linkPayments(reading, text.payments, currency) ?? [],
    notIncluded: text['not included'] ?? [],
    terms: text.terms,
    counts,
    capacity: {
      guests: capacity(reading, text, 'guests a day'),
      events: capacity(reading, text, 'events a day'),
    },
    ...linkStations(reading, text),
    ...(text['hours quoted'] === 'service' && { hoursQuoted: 'service' as const }),
  } as const;
  const { noMeat } = frame;
  return noMeat && counts && { ...frame, noMeat, counts };
}

function linkLaws(reading: Reading, words: readonly string[]): AllergenLaw[] {
  return words.flatMap((word, index) => {
    if (word === 'us' || word === 'eu') return [word];
    reading.say(
      'unknown-word',
      ['allergens', index],
      `“${word}” is not an allergen law that Salver knows`,
      'write us, eu or both',
    );
    return [];
  });
}

function linkOverage(reading: Reading, text: KitchenText['overage']): ReadonlyMap<ServiceStyle, Fraction> {
  const overage = new Map<ServiceStyle, Fraction>();
  for (const style of SERVICE_STYLES) {
    const share = text?.[style];
    if (share === undefined) continue;
    const read = reading.understand(['overage', style], share, parseShare);
    if (read) overage.set(style, read);
  }
  return overage;
}

function capacity(
  reading: Reading,
  text: KitchenText,
  field: 'guests a day' | 'events a day',
): number | undefined {
  const count = text.capacity?.[field];
  return count === undefined
    ? undefined
    : reading.understand(['capacity', field], count, wholeNumber(1, 100_000));
}
