import { addDays } from '../../engine/calendar/day.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { LINE_CLASSES } from '../../engine/quote/line-class.ts';
import type { AddOnTerms, StaffTerms, Terms } from '../../engine/quote/terms.ts';
import { classWords } from '../../exports/words/class-words.ts';
import { groupsText, listText } from '../../exports/words/counted-text.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { percentText } from '../../exports/words/percent-text.ts';
import { floorCount } from '../../offers/event/billed-guests.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import { minimumSpendWords } from '../price-words.ts';
import type { EventDay } from './proposal-state.ts';

/** One condition of an offer under its head. */
export interface Condition {
  readonly head: string;
  readonly texts: readonly string[];
}

/**
 * The conditions that an offer's own figures make, in plain words: whom each price counts, what comes on top, when
 * the last count is due and how it is billed, what is not included. `accepted` is null while nothing is.
 */
export function conditions(
  content: OfferContent,
  accepted: Choice | null,
  event: EventDay | null,
): Condition[] {
  const { terms } = content;
  const say = wordsIn(terms.locale);
  return [
    { head: say('terms.prices.head'), texts: countedTexts(terms) },
    ...(content.notIncluded?.length
      ? [
          {
            head: say('terms.not-included.head'),
            texts: [capital(say('terms.not-included', { items: content.notIncluded.join('; ') }))],
          },
        ]
      : []),
    ...serviceCharge(terms),
    { head: say('terms.tax.head'), texts: [taxText(terms)] },
    { head: say('terms.count.head'), texts: [guaranteeText(content, accepted, event)] },
    ...(content.legal.trim() === ''
      ? [{ head: say('terms.cancelling.head'), texts: [say('terms.cancelling.not-stated')] }]
      : []),
  ];
}

function countedTexts(terms: Terms): string[] {
  const say = wordsIn(terms.locale);
  const script = scriptWordsIn(terms.locale);
  const menus = Map.groupBy(terms.packages, ({ tierCounts }) => groupsText(script, tierCounts));
  const tiers = [...menus].map(([counted, packages]) =>
    menus.size === 1
      ? say('terms.prices.step', { counted })
      : say('terms.prices.step-of', {
          menus: listText(
            script,
            packages.map(({ name }) => name),
          ),
          counted,
        }),
  );
  const addOns = Map.groupBy(terms.addOns, ({ per, guests, counts }) =>
    per === 'guest' || per === 'guests' ? `${per} ${guests ?? 1} ${groupsText(script, counts)}` : per,
  );
  return [
    ...tiers,
    say('terms.prices.others'),
    ...[...addOns.values()].map((each) => addOnText(each, terms)),
    ...staffTexts(terms),
    ...(terms.delivery ? [say('terms.delivery')] : []),
    ...(terms.minimumSpend
      ? [say('terms.minimum-spend', { spend: minimumSpendWords(terms.minimumSpend, terms) })]
      : []),
  ];
}

const ADD_ONS: Readonly<Record<AddOnTerms['per'], WordKey>> = {
  guest: 'terms.add-on.guest',
  guests: 'terms.add-on.guests',
  hour: 'terms.add-on.hour',
  flat: 'terms.add-on.flat',
};

/** Whom the price of some add-ons counts, all of them in the same way. */
function addOnText(same: readonly AddOnTerms[], { locale }: Terms): string {
  const [first] = same;
  if (!first) return '';
  const script = scriptWordsIn(locale);
  return wordsIn(locale)(ADD_ONS[first.per], {
    addOns: listText(
      script,
      same.map(({ name }) => name),
    ),
    counted: groupsText(script, first.counts),
    n: first.guests ?? 1,
  });
}

/** How many people serve; where it hangs on the menu, a sentence for each way. */
function staffTexts({ staff, packages, locale }: Terms): string[] {
  const say = wordsIn(locale);
  const script = scriptWordsIn(locale);
  const key = ({ one, per, counts, atLeast }: StaffTerms) =>
    `${one} ${per} ${groupsText(script, counts)} ${Math.max(1, atLeast)}`;
  return [...Map.groupBy(staff, ({ name }) => name)].flatMap(([role, entries]) => {
    const ways = Map.groupBy(entries, key);
    return [...ways.values()].flatMap((same) => {
      const [first] = same;
      if (!first) return [];
      const ids = same.flatMap((entry) => entry.packages ?? []);
      const menus = packages.filter(({ id }) => ids.includes(id)).map(({ name }) => name);
      const { one, per, counts, atLeast: least } = first;
      const spoken = { role, one, per, counted: groupsText(script, counts), least };
      return ways.size > 1 && menus.length > 0
        ? [say('terms.staff.with', { ...spoken, menus: listText(script, menus) })]
        : [say('terms.staff', spoken)];
    });
  });
}

/** What the kitchen lists as not included may begin with a small letter. */
function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

function serviceCharge({ serviceCharge: charge, locale }: Terms): Condition[] {
  if (!charge) return [];
  const spoken = { rate: percentText(charge.rate, locale), base: classWords(charge.base, locale) };
  const words = charge.afterDiscount ? 'terms.service-charge.after-discount' : 'terms.service-charge';
  return [{ head: charge.label, texts: [wordsIn(locale)(words, spoken)] }];
}

function taxText({ place, exempt, locale }: Terms): string {
  const say = wordsIn(locale);
  if (exempt) return say('terms.tax.exempt');
  const rates = Map.groupBy(
    LINE_CLASSES.filter((line) => !/^0+(\.0+)? %$/.test(place.tax[line])),
    (line) => place.tax[line],
  );
  if (rates.size === 0) return say('terms.tax.none');
  const list = [...rates].map(([rate, lines]) =>
    say('terms.tax.rate', { rate: percentText(rate, locale), classes: classWords(lines, locale) }),
  );
  const spoken = { place: place.name, rates: list.join('; ') };
  return say(place.taxIncluded ? 'terms.tax.within' : 'terms.tax.on-top', spoken);
}

function guaranteeText(content: OfferContent, accepted: Choice | null, event: EventDay | null): string {
  const { guarantee, eventDate, locale } = content.terms;
  const say = wordsIn(locale);
  const { guests } = accepted ?? content.proposed;
  const { daysBefore: days, floorRate: rate } = guarantee;
  const due =
    event !== null && event.date === null
      ? say('terms.count.due-undated', { days })
      : say('terms.count.due', { days, date: dateText(addDays(eventDate, -days), locale) });
  const billed = say(accepted ? 'terms.count.billed-accepted' : 'terms.count.billed-quoted', {
    rate: percentText(rate, locale),
    floor: floorCount(rate, guests),
    n: atTable(guests),
  });
  return `${due} ${billed}`;
}
