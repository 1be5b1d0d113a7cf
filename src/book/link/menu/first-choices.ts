import Fraction from 'fraction.js';
import type { Dish } from '../../../engine/menu/package.ts';
import { rateText } from '../../../engine/money/rate.ts';
import { parseRisk } from '../../../engine/odds/risk.ts';
import { decimalOfFraction } from '../../../engine/purchase/price-fraction.ts';
import type { PackageText } from '../../../schema/package.ts';
import type { Path } from '../../files/place-of.ts';
import type { Reading } from '../grammar/reading.ts';

type CourseText = PackageText['courses'][number];

/**
 * The dishes of a course of which each guest takes one helping, with the risk of the course as a whole; of any other
 * course as they are. All dishes but those for who needs them say their share, and the shares come to 100 %.
 */
export function linkFirstChoices(
  reading: Reading,
  path: Path,
  text: CourseText,
  dishes: readonly Dish[],
): readonly Dish[] {
  const entries = Object.entries(text.dishes);
  const chosen = entries.filter(([, dish]) => dish['first choice'] !== undefined);
  if (text['each guest'] === 'one') return sayCounted(reading, path, text, dishes);
  if (chosen.length === 0) {
    if (text.overage !== undefined) {
      const what = `“${text.name}” sets a risk, but none of its dishes states a first choice`;
      reading.say(
        'odds-unsaid',
        [...path, 'overage'],
        what,
        'write “first choice: 40 %” for each dish',
        'key',
      );
    }
    return dishes;
  }
  for (const [id, dish] of entries) {
    if (
      dish['first choice'] !== undefined ||
      dish.others !== undefined ||
      dish['held back'] === 'yes' ||
      dish['instead of'] !== undefined
    )
      continue;
    const what = `other dishes of “${text.name}” state a first choice, but “${id}” does not`;
    reading.say(
      'odds-unsaid',
      [...path, 'dishes', id],
      what,
      'write “first choice: 40 %” for each dish',
      'key',
    );
  }
  if (text.overage === undefined) {
    const what = `“${text.name}” states first choices but not how often it may run short`;
    reading.say('odds-unsaid', path, what, 'write “overage: short at most 1 in 50” for the course', 'key');
    return dishes;
  }
  const oneIn = reading.understand([...path, 'overage'], text.overage, parseRisk);
  const shares = dishes.flatMap(({ takeRate }) => takeRate?.firstChoice ?? []);
  const sum = shares.reduce((all, share) => all.add(share), new Fraction(0n));
  if (shares.length === chosen.length && !sum.equals(1n)) {
    const what = `the first choices of “${text.name}” add up to ${rateText(decimalOfFraction(sum))}`;
    reading.say('course-choice', [...path, 'dishes'], what, 'make them add up to 100 %', 'key');
  }
  return dishes.map((dish) =>
    dish.takeRate?.firstChoice === undefined
      ? dish
      : { ...dish, takeRate: { ...dish.takeRate, shortOneIn: oneIn } },
  );
}

/** Where the counts by dish are given, who takes what need not be calculated. */
function sayCounted(
  reading: Reading,
  path: Path,
  text: CourseText,
  dishes: readonly Dish[],
): readonly Dish[] {
  const wayOut = 'leave it out: the client decides how many guests take each dish';
  for (const [id, dish] of Object.entries(text.dishes)) {
    const field = (['appetite', 'first choice'] as const).find((each) => dish[each] !== undefined);
    if (!field) continue;
    const what = `“${text.name}” has counts for each dish, but “${id}” also has “${field}”`;
    reading.say('odds-clash', [...path, 'dishes', id, field], what, wayOut, 'key');
  }
  if (text.overage !== undefined) {
    const what = `“${text.name}” has counts for each dish, but also sets a risk`;
    reading.say('odds-clash', [...path, 'overage'], what, wayOut, 'key');
  }
  return dishes;
}
