import Fraction from 'fraction.js';
import type { Book } from '../../book/book.ts';
import { kitchenAmount } from '../../engine/measure/kitchen-amount.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { money, roundToMinor } from '../../engine/money/money.ts';
import { decimalOfFraction } from '../../engine/purchase/price-fraction.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { eachText, guestsCountedText } from '../../exports/words/each-text.ts';
import { eatenText, fewEventsText } from '../../exports/words/eaten-text.ts';
import { perGuestWords } from '../../exports/words/per-guest-as-read.ts';
import type { DishAtEvent } from '../../offers/learned/dishes-so-far.ts';
import { type EatenDish, eatenSoFar } from '../../offers/learned/eaten-so-far.ts';
import { type PortionProposal, portionProposal } from '../../offers/learned/portion-proposals.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { BrandView } from '../brand/brand-view.ts';
import { costLeft, leftByDestiny } from './left-by-destiny.ts';
import type { LeftDishView, LeftEventView, LeftoversView } from './leftovers-view.ts';
import type { BannerView } from './view.ts';

/** What came back so far, dish by dish, the dearest first; undefined while nothing is recorded. */
export function leftoversView(
  book: Book,
  brand: BrandView,
  banner: BannerView | null,
): LeftoversView | undefined {
  const say = wordsIn(book.kitchen.locale);
  const ranked = eatenSoFar(book)
    .map((eaten) => ({ eaten, ...carriedHome(eaten.events), ranOut: ranOutAt(eaten.events) }))
    .sort((a, b) => b.cost.compare(a.cost));
  if (ranked.length === 0) return undefined;
  const dishes = ranked.map(({ eaten, cost, known }) =>
    dishView(book, eaten, known ? shown(book, cost) : '', say),
  );
  const events = new Set(ranked.flatMap(({ eaten }) => eaten.events.map(({ event }) => event)));
  const all = ranked.reduce((sum, { cost }) => sum.add(cost), new Fraction(0n));
  const out = ranked
    .filter(({ ranOut }) => ranOut.length > 0)
    .sort((a, b) => b.ranOut.length - a.ranOut.length);
  return {
    kind: 'leftovers',
    brand,
    banner,
    figures: [
      {
        label: say('leftovers.food-left'),
        amount: shown(book, all),
        why: say('leftovers.food-left.why', { n: events.size }),
      },
      ...leftByDestiny(
        ranked.flatMap(({ eaten }) => eaten.events),
        (sum) => shown(book, sum),
        say,
      ),
      {
        label: say('leftovers.dishes-out'),
        amount: String(out.length),
        why: out.length === 0 ? say('leftovers.none-out') : out.map(({ eaten }) => eaten.name).join(', '),
      },
    ],
    dishes,
    short: out.map(({ eaten, ranOut }) => ({
      key: keyOf(eaten),
      name: eaten.name,
      what: ranOut
        .map((at) =>
          say('leftovers.out-at', {
            event: at.occasion,
            day: dateText(at.date, book.kitchen.locale),
            out: outText(at, say),
          }),
        )
        .join('; '),
    })),
    notes: [
      `${fewEventsText(say)} ${say('leftovers.note.accept')}`,
      say('leftovers.note.out'),
      say('leftovers.note.guests'),
    ],
  };
}

/** Food cost of what came back; `known` is false where some of it has no price. */
function carriedHome(events: readonly DishAtEvent[]): { cost: Fraction; known: boolean } {
  let cost = new Fraction(0n);
  for (const at of events) cost = cost.add(costLeft(at) ?? 0n);
  return { cost, known: events.every(({ dish }) => dish.cost !== null) };
}

function ranOutAt(events: readonly DishAtEvent[]): DishAtEvent[] {
  return events.filter(({ dish }) => dish.ranOut === true);
}

function dishView(book: Book, eaten: EatenDish, cost: string, say: Say): LeftDishView {
  const { measures } = book.kitchen;
  const text = eatenText(eaten, say);
  const longest = eaten.events.reduce(
    (most, { amounts: { planned, carried, came, counted } }) =>
      Math.max(
        most,
        carried.amount.div(came).valueOf(),
        counted.n === 0n ? 0 : planned.amount.div(counted).valueOf(),
      ),
    0,
  );
  const back = eaten.events.map(({ amounts }) => amounts.back);
  const sameUnit = back.every(({ unit }) => unit === eaten.unit);
  const all = back.reduce((sum, { amount }) => sum.add(amount), new Fraction(0n));
  const events = eaten.events.map((at) => eventView(book, at, longest, say));
  return {
    key: keyOf(eaten),
    name: eaten.name,
    menu: book.packages.get(eaten.packageId)?.name ?? eaten.packageId,
    style: eaten.style,
    cost,
    back: !sameUnit
      ? ''
      : all.n === 0n
        ? say('leftovers.nothing')
        : kitchenAmount({ amount: all, unit: eaten.unit }, measures, 'line'),
    ranOut: ranOutAt(eaten.events).length,
    said: text.said,
    proposal: proposalText(portionProposal(book, eaten), say),
    events,
    picture: say('leftovers.picture', {
      dish: eaten.name,
      events: events.map((event) => pictureText(event, say)).join('. '),
    }),
  };
}

function pictureText({ dateText: day, planned, served, eaten, out }: LeftEventView, say: Say): string {
  const values = { day, planned, served, eaten };
  return out === ''
    ? say('leftovers.picture.event', values)
    : say('leftovers.picture.event-out', { ...values, out });
}

function eventView(book: Book, at: DishAtEvent, longest: number, say: Say): LeftEventView {
  const { measures, locale } = book.kitchen;
  const { planned, carried, back, eaten, counted, came } = at.amounts;
  const share = (amount: Fraction, guests: Fraction) =>
    guests.n === 0n || longest === 0 ? 0 : amount.div(guests).valueOf() / longest;
  return {
    event: at.event,
    dateText: dateText(at.date, locale),
    occasion: at.occasion,
    guests: guestsCountedText(came),
    planned: eachText(planned, counted),
    served: eachText(carried, came),
    eaten: eachText(eaten, came),
    back: back.amount.n === 0n ? say('leftovers.nothing') : kitchenAmount(back, measures, 'line'),
    destiny: at.dish.destiny
      ? say('leftovers.destiny', { destiny: at.dish.destiny.split(' ')[0] ?? '' })
      : '',
    note: at.dish.note ?? '',
    plannedShare: share(planned.amount, counted),
    servedShare: share(carried.amount, came),
    eatenShare: share(eaten.amount, came),
    out: outText(at, say),
  };
}

function outText({ dish, amounts }: DishAtEvent, say: Say): string {
  if (dish.ranOut)
    return dish.at === undefined ? say('leftovers.out') : say('leftovers.out-when', { time: dish.at });
  return amounts.back.amount.n === 0n ? say('leftovers.nothing-left') : '';
}

function proposalText(proposal: PortionProposal | undefined, say: Say): string {
  if (!proposal) return '';
  const present = perGuestWords(proposal.present, say);
  return proposal.proposed
    ? say('leftovers.proposed', { present, proposed: perGuestWords(proposal.proposed, say) })
    : say('leftovers.not-proposed', { present });
}

/** A name for the place on the page; an add-on has the dish beside the menu. */
function keyOf({ recipe, packageId, course }: EatenDish): string {
  return [recipe, packageId, ...course.toLowerCase().split(/[^\p{L}\d]+/u)]
    .filter((word) => word !== '')
    .join('-');
}

function shown(book: Book, sum: Fraction): string {
  const { currency, locale } = book.kitchen;
  return displayMoney(roundToMinor(money(decimalOfFraction(sum), currency)), locale);
}
