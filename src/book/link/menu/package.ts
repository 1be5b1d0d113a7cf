import type { Recipe } from '../../../engine/food/recipe.ts';
import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { parseHours } from '../../../engine/measure/parse-hours.ts';
import type { Package } from '../../../engine/menu/package.ts';
import { type Counts, DEFAULT_COUNTS, parseCounts } from '../../../engine/quote/counts.ts';
import { type GuestRate, parseGuestRate } from '../../../engine/quote/guest-rate.ts';
import type { PackageText } from '../../../schema/package.ts';
import { linkDrinks } from '../drinks/drinks.ts';
import { moneyIn, wholeNumber } from '../grammar/plain-grammars.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';
import { tellPriceDrops } from '../prices/price-drops.ts';
import { linkCourse } from './course.ts';
import { onlyForEaters } from './dish.ts';
import { linkPackagePrice } from './package-price.ts';

/** A package with its dishes' recipes. */
export function linkPackage(
  reading: Reading,
  id: string,
  text: PackageText,
  kitchen: Pick<Kitchen, 'currency' | 'locale'>,
  recipes: ReadonlyMap<string, Recipe>,
  addOns: ReadonlyMap<string, unknown>,
): Package | undefined {
  const { currency } = kitchen;
  const minimumGuests =
    text['minimum guests'] === undefined
      ? 0
      : reading.understand(['minimum guests'], text['minimum guests'], wholeNumber(1, 100_000));
  const price = linkPackagePrice(reading, text.price, minimumGuests ?? 0, currency);
  const counts = linkCounts(reading, 'counts', text.counts);
  const minimumSpend =
    text['minimum spend'] === undefined
      ? null
      : reading.understand(['minimum spend'], text['minimum spend'], moneyIn(currency));
  if (text.hours !== undefined) reading.understand(['hours'], text.hours, parseHours);
  const courses = text.courses.flatMap((course, index) => {
    const linked = linkCourse(reading, index, course, counts, recipes, currency);
    return linked ? [linked] : [];
  });
  const drinks =
    text.drinks && linkDrinks(reading, text.drinks, { hours: text.hours, counts, recipes, name: undefined });
  if (drinks && text.courses.some(({ name }) => name === drinks.course.name)) {
    const what = `a course is called “${drinks.course.name}” like the drinks`;
    reading.say('defined-again', ['drinks', 'name'], what, 'give each its own name; choices refer to it');
  }
  for (const [index, course] of text.courses.entries()) {
    if (text.courses.findIndex((each) => each.name === course.name) === index) continue;
    const what = `two courses are called “${course.name}”`;
    reading.say(
      'defined-again',
      ['courses', index, 'name'],
      what,
      'give each its own name; choices refer to it',
    );
  }
  for (const [index, addOn] of (text['add-ons'] ?? []).entries()) {
    lookUp(reading, 'add-on', addOn, addOns, ['add-ons', index]);
  }
  if (!price || minimumGuests === undefined || minimumSpend === undefined) return undefined;
  const linked: Package = {
    id,
    name: text.name,
    style: text.style,
    price,
    neverLessInAll: text['never less in all'] === 'yes',
    tierCounts: linkCounts(reading, 'price counts', text['price counts']),
    child: linkRate(reading, 'child', text.child, currency),
    vendor: linkRate(reading, 'vendor', text.vendor, currency),
    minimumGuests,
    minimumSpend,
    hours: text.hours ?? null,
    courses: drinks ? [...courses, drinks.course] : courses,
    ...(drinks && { drinks: drinks.drinks }),
    ...onlyForEaters(text['cooked for']),
    addOns: text['add-ons'] ?? null,
  };
  tellPriceDrops(reading, linked, text.price, kitchen);
  return linked;
}

function linkCounts(reading: Reading, field: string, text: string | undefined): Counts {
  return (text === undefined ? undefined : reading.understand([field], text, parseCounts)) ?? DEFAULT_COUNTS;
}

function linkRate(reading: Reading, field: string, text: string | undefined, currency: string): GuestRate {
  if (text === undefined) return {};
  return reading.understand([field], text, (words) => parseGuestRate(words, currency)) ?? {};
}
