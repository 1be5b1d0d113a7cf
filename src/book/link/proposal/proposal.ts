import { parseDay } from '../../../engine/calendar/day.ts';
import type { Recipe } from '../../../engine/food/recipe.ts';
import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { parseClock } from '../../../engine/kitchen/parse-clock.ts';
import { parseDuration } from '../../../engine/measure/duration.ts';
import { parseGuestCount } from '../../../engine/measure/guest-count.ts';
import { parseHours } from '../../../engine/measure/parse-hours.ts';
import type { Package } from '../../../engine/menu/package.ts';
import type { Proposal } from '../../../engine/menu/proposal.ts';
import type { SiteSheet } from '../../../engine/menu/site-sheet.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';
import { GUEST_GROUPS, type GuestGroup, type Guests } from '../../../engine/quote/counts.ts';
import type { DiscountTerms, MaybeNamed } from '../../../engine/quote/terms.ts';
import type { ProposalText } from '../../../schema/proposal.ts';
import { moneyIn, parseRateText, wholeNumber } from '../grammar/plain-grammars.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';
import { linkAttendance } from '../kitchen/attendance.ts';
import { linkEventCooks } from '../kitchen/day.ts';
import { linkLineClasses } from '../kitchen/line-classes.ts';
import { linkGuarantee, linkPayments, linkServiceCharge } from '../kitchen/money-rules.ts';
import { linkChoices } from './choices.ts';
import { linkCrewMeal } from './crew-meal.ts';
import { parseKeepBack, parseLateGuests } from './keep-back.ts';
import { linkVenue } from './venue.ts';
import { linkWeakness } from './weakness.ts';
import { linkWeather } from './weather.ts';
import { linkZone } from './zone.ts';

/** A proposal with its packages; `letter` is checked by whoever read the file. */
export function linkProposal(
  reading: Reading,
  id: string,
  text: ProposalText,
  letter: string,
  kitchen: Kitchen,
  packages: ReadonlyMap<string, Package>,
  recipes: ReadonlyMap<string, Recipe>,
  siteSheets: ReadonlyMap<string, SiteSheet>,
): Proposal | undefined {
  const weakness = linkWeakness(text.link);
  if (weakness !== undefined) {
    const wayOut = 'use at least 20 random characters from a–z and 2–7; `new` does this for a new proposal';
    reading.say('weak-link', ['link'], `the link ${weakness}`, wayOut);
  }
  const date = reading.understand(['date'], text.date, parseDay);
  const validUntil = reading.understand(['valid until'], text['valid until'], parseDay);
  const serveAt = reading.understand(['serve at'], text['serve at'], parseClock);
  const place = lookUp(reading, 'place', text.place, kitchen.places, ['place']);
  const guests = linkGuests(reading, text.guests);
  const offered = text.packages.flatMap((name, index) => {
    const found = lookUp(reading, 'package', name, packages, ['packages', index]);
    return found ? [found] : [];
  });
  if (text.travel !== undefined) reading.understand(['travel'], text.travel, parseDuration);
  const lines = reading.understand(['lines'], text.lines ?? '1', wholeNumber(1, 100));
  const hours = text.hours === undefined ? null : reading.understand(['hours'], text.hours, parseHours);
  const delivery =
    text.delivery === undefined
      ? undefined
      : reading.understand(['delivery'], text.delivery, moneyIn(kitchen.currency));
  const zone = linkZone(reading, text, kitchen.deliveryZones);
  const cooks = text.cooks && linkEventCooks(reading, text.cooks, kitchen.crew);
  const written = text['crew meal'];
  const crewMeal = written && linkCrewMeal(reading, ['crew meal'], written, recipes);
  const back = text['keep back'];
  const come = text['late guests'];
  const share = back === undefined ? undefined : reading.understand(['keep back'], back, parseKeepBack);
  const late = come === undefined ? undefined : reading.understand(['late guests'], come, parseLateGuests);
  const vehicle =
    text.vehicle === undefined
      ? undefined
      : lookUp(reading, 'vehicle', text.vehicle, kitchen.vehicles ?? new Map(), ['vehicle']);
  const atVenue = linkVenue(reading, text.venue, text['site sheet'], siteSheets);
  const weather = linkWeather(reading, text.weather);
  const [first, ...others] = offered;
  const rest = {
    needs: linkNeeds(reading, text.needs),
    choices: linkChoices(reading, text.choices, offered, guests),
    addOns: linkAddOns(reading, text['add-ons'], kitchen),
    included: linkIncluded(reading, text.include, kitchen),
    discount: linkDiscount(reading, text.discount, kitchen.currency),
    serviceCharge:
      text['service charge'] === undefined
        ? kitchen.serviceCharge
        : linkServiceCharge(reading, text['service charge']),
    guarantee: linkGuarantee(reading, text.guarantee, kitchen.guarantee),
    payments: linkPayments(reading, text.payments, kitchen.currency) ?? kitchen.payments,
    notIncluded: (text['not included'] ?? kitchen.notIncluded).filter((item) => item !== 'nothing'),
  };
  if (!date || !validUntil || !serveAt || !place || !first || !lines || hours === undefined) return undefined;
  return {
    id,
    link: text.link,
    shareDraft: text.share === 'draft',
    withdrawn: text.withdrawn === 'yes',
    client: {
      name: text.client.name,
      email: text.client.email,
      exempt: text.client.exempt === 'yes',
    },
    occasion: text.occasion,
    date,
    serveAt,
    place,
    ...atVenue,
    ...(cooks && { cooks }),
    ...(crewMeal && { crewMeal }),
    ...((share || late) && { keepBack: { ...share, ...(late && { late }) } }),
    ...(vehicle && { vehicle }),
    ...(weather && { weather }),
    travel: text.travel,
    setUp:
      text['set-up'] === undefined
        ? kitchen.setUp
        : reading.understand(['set-up'], text['set-up'], parseDuration),
    validUntil,
    guests,
    packages: [first, ...others],
    lines,
    attendance: linkAttendance(reading, text, kitchen.attendance),
    hours,
    ...(zone && { zone }),
    delivery,
    letter,
    ...rest,
  };
}

function linkGuests(reading: Reading, text: ProposalText['guests']): Guests {
  const guests = Object.fromEntries(
    GUEST_GROUPS.map((group) => [group, countOf(reading, group, text[group])]),
  ) as Record<GuestGroup, number>;
  if (guests.adults + guests.children === 0 && reading.sound) {
    reading.say(
      'no-guests',
      ['guests'],
      'there is nobody at the table',
      'write how many adults and children come',
      'key',
    );
  }
  return guests;
}

function countOf(reading: Reading, group: GuestGroup, text: string | undefined): number {
  return text === undefined ? 0 : (reading.understand(['guests', group], text, parseGuestCount) ?? 0);
}

function linkNeeds(reading: Reading, text: ProposalText['needs']): ReadonlyMap<string, number> {
  const needs = new Map<string, number>();
  for (const [need, words] of Object.entries(text ?? {})) {
    const count = reading.understand(['needs', need], words, parseGuestCount);
    if (count !== undefined) needs.set(need, count);
  }
  return needs;
}

function linkAddOns(
  reading: Reading,
  ids: readonly string[] | undefined,
  kitchen: Kitchen,
): readonly string[] {
  for (const [index, id] of (ids ?? []).entries())
    lookUp(reading, 'add-on', id, kitchen.addOns, ['add-ons', index]);
  return ids ?? [];
}

function linkIncluded(
  reading: Reading,
  text: ProposalText['include'],
  kitchen: Kitchen,
): ReadonlyMap<string, number> {
  const included = new Map<string, number>();
  for (const [id, words] of Object.entries(text ?? {})) {
    const path = ['include', id];
    const addOn = lookUp(reading, 'add-on', id, kitchen.addOns, path, 'key');
    const hourly = addOn !== undefined && / per hour$/.test(addOn.price);
    const quantity = reading.understand(path, words, hourly ? parseQuarters : wholeNumber(1, 1));
    if (quantity !== undefined) included.set(id, quantity);
  }
  return included;
}

/** Hours of an add-on as the number that choices hold: quarters are exact in binary. */
function parseQuarters(text: string): Parsed<number> {
  const hours = parseHours(text);
  return hours.ok ? parsed(Number(hours.value)) : hours;
}

function linkDiscount(
  reading: Reading,
  text: ProposalText['discount'],
  currency: string,
): MaybeNamed<DiscountTerms> | null {
  if (text === undefined) return null;
  const { label } = text;
  const base = linkLineClasses(reading, ['discount', 'on'], text.on);
  if ((text.rate === undefined) === (text.amount === undefined)) {
    const what =
      text.rate === undefined
        ? 'the discount has neither a rate nor an amount'
        : 'the discount has both a rate and an amount';
    reading.say('not-understood', ['discount'], what, 'write just one, such as “rate: 5 %”', 'key');
    return null;
  }
  if (text.rate !== undefined) {
    const rate = reading.understand(['discount', 'rate'], text.rate, parseDiscountRate);
    return rate === undefined ? null : { label, rate, base };
  }
  const amount = reading.understand(['discount', 'amount'], text.amount ?? '', moneyIn(currency));
  return amount === undefined ? null : { label, amount, base };
}

function parseDiscountRate(text: string): Parsed<string> {
  const rate = parseRateText(text);
  return rate.ok && Number.parseFloat(rate.value) > 100
    ? notParsed(`a discount of ${text} is more than the price`, 'write a percentage up to 100 %')
    : rate;
}
