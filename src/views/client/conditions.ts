import { addDays } from '../../engine/calendar/day.ts';
import { daysBeforeText } from '../../engine/calendar/offset.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { countsWords, listWords } from '../../engine/quote/counted-words.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { LINE_CLASSES } from '../../engine/quote/line-class.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { counted } from '../../engine/text/counted.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { percentText } from '../../exports/words/percent-text.ts';
import { floorCount } from '../../offers/event/billed-guests.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import { addOnCountWords, minimumSpendWords } from '../price-words.ts';
import type { EventDay } from './proposal-standing.ts';

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
  return [
    { head: 'What the prices count', texts: countedTexts(terms) },
    ...(content.notIncluded?.length
      ? [
          {
            head: 'Not included',
            texts: [sentence(`${content.notIncluded.join('; ')}; unless a line of the quote names it.`)],
          },
        ]
      : []),
    ...serviceCharge(terms),
    { head: 'Tax', texts: [taxText(terms)] },
    { head: 'Your final count', texts: [guaranteeText(content, accepted, event)] },
    ...(content.legal.trim() === ''
      ? [
          {
            head: 'Cancelling and moving',
            texts: [
              'This offer says nothing about cancelling the event or moving it to another day. Please ask us before you accept.',
            ],
          },
        ]
      : []),
  ];
}

function countedTexts(terms: Terms): string[] {
  const menus = Map.groupBy(terms.packages, ({ tierCounts }) => countsWords(tierCounts));
  const tiers = [...menus].map(([counted, packages]) =>
    menus.size === 1
      ? `The price of a menu is for each adult; which step of it holds goes by ${counted} together.`
      : `The step of the price of ${listWords(packages.map(({ name }) => name))} goes by ${counted} together.`,
  );
  const addOns = Map.groupBy(terms.addOns, addOnCountWords);
  return [
    ...tiers,
    'What children and vendor meals pay stands with each menu; meals of our own people cost you nothing.',
    ...[...addOns].map(([words, each]) => `${listWords(each.map(({ name }) => name))}: ${words}.`),
    ...staffText(terms),
    ...(terms.delivery ? ['Delivery is charged once.'] : []),
    ...(terms.minimumSpend
      ? [`The bill is for at least ${minimumSpendWords(terms.minimumSpend, terms)}.`]
      : []),
  ];
}

function staffText({ staff, packages }: Terms): string[] {
  const roles = Map.groupBy(staff, ({ name }) => name);
  return [...roles].map(([name, entries]) => {
    const ways = Map.groupBy(entries, ({ one, per, counts, atLeast }) => {
      const least = atLeast > 1 ? `, at least ${atLeast}` : '';
      return `${one === 1 ? 'one' : one} for every ${counted(per, 'guest')} begun, counting ${countsWords(counts)}${least}`;
    });
    const texts = [...ways].map(([words, each]) => {
      const ids = each.flatMap((entry) => entry.packages ?? []);
      const menus = packages.filter(({ id }) => ids.includes(id)).map((menu) => menu.name);
      return ways.size > 1 && menus.length > 0 ? `with ${listWords(menus)} ${words}` : words;
    });
    return `${name}: ${texts.join('; ')}.`;
  });
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

function serviceCharge({ serviceCharge: charge, locale }: Terms): Condition[] {
  if (!charge) return [];
  const discount = charge.afterDiscount ? ', less any discount' : '';
  return [
    {
      head: charge.label,
      texts: [
        `${percentText(charge.rate, locale)} of ${listWords(charge.base)}${discount}. It is a charge of ours and not a gratuity.`,
      ],
    },
  ];
}

function taxText({ place, exempt, locale }: Terms): string {
  if (exempt) return 'You are exempt, so no tax is charged.';
  const rates = Map.groupBy(
    LINE_CLASSES.filter((line) => !/^0+(\.0+)? %$/.test(place.tax[line])),
    (line) => place.tax[line],
  );
  if (rates.size === 0) return 'No tax is charged.';
  const list = [...rates]
    .map(([rate, lines]) => `${percentText(rate, locale)} on ${listWords(lines)}`)
    .join('; ');
  return `${place.taxIncluded ? 'Within the prices' : 'On top of the prices'}, as in ${place.name}: ${list}.`;
}

function guaranteeText(content: OfferContent, accepted: Choice | null, event: EventDay | null): string {
  const { guarantee, eventDate, locale } = content.terms;
  const guests = (accepted ?? content.proposed).guests;
  const before = daysBeforeText(guarantee.daysBefore);
  const undated = event !== null && event.date === null;
  const due = undated
    ? `${before} the event`
    : `by the end of ${dateText(addDays(eventDate, -guarantee.daysBefore), locale)}${guarantee.daysBefore > 0 ? `, ${before} the event` : ''}`;
  const floor = counted(floorCount(guarantee.floorRate, guests), 'guest');
  const count = counted(atTable(guests), 'guest');
  const share = percentText(guarantee.floorRate, locale);
  const held = accepted
    ? `never for fewer than ${floor} at the table, ${share} of the ${count} you accepted`
    : `never for fewer than ${share} of the count you accept: ${floor} at the table of the ${count} in this quote`;
  return `It is due ${due}; after that it may only rise. The bill is for the larger of that count and the guests served, and ${held}.`;
}
