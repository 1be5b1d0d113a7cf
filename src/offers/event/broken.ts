import type { Book } from '../../book/book.ts';
import { nearest } from '../../book/findings/nearest.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { compare, exactMoneyText, type Money, money } from '../../engine/money/money.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { LineClass } from '../../engine/quote/line-class.ts';
import type { BrokenFact, EventFact } from '../../schema/event-fact.ts';
import { currentEvent, type NextFact, nextFact } from './current-event.ts';

/** What somebody counted back in and found wanting. */
export interface BrokenSaid {
  readonly what: BrokenFact['what'];
  /** The thing by its id or its name. */
  readonly item: string;
  /** Negative takes back what was recorded by mistake. */
  readonly count: number;
  /** What the client is charged for each; null for nothing; undefined for the replacement price, where there is one. */
  readonly each: Money | null | undefined;
  readonly why: string | undefined;
}

/** A thing that may break, with what one costs the client. */
interface Thing {
  readonly id: string;
  readonly name: string;
  readonly class: LineClass;
  readonly replacement: string | undefined;
}

/**
 * The fact that says what was broken or is missing. Refused before the event's day, for an event that did not take place, for a
 * thing that neither the kitchen nor the offer knows, for taking back more than was recorded, and for what is recorded already
 * on that day, unless `second` says that it happened twice.
 */
export function broken(
  book: Book,
  event: string,
  said: BrokenSaid,
  today: Day,
  second = false,
): Parsed<NextFact<BrokenFact>> {
  const found = currentEvent(book, event);
  if (!found.ok) return found;
  const { facts, status } = found.value;
  if (status.date === null)
    return notParsed(`${event} is ${status.state}, so nothing went out`, 'check which event is meant');
  if (today < status.date)
    return notParsed(
      `${event} is on ${status.date}, so nothing is back yet`,
      'record it once the event is over',
    );
  const thing = thingNamed(book, event, said.item);
  if (!thing.ok) return thing;
  const fact = factOf(said, thing.value, found.value.offer.terms.currency, today);
  if (fact.count < 0) {
    const before = recordedLike(facts, fact).reduce((sum, { count }) => sum + count, 0);
    if (before + fact.count < 0)
      return notParsed(
        `${-fact.count} can’t be taken back: ${before} of “${fact.name}” recorded as ${fact.what} ${priceText(fact, found.value.offer.terms)}`,
        'name the same price, and no more than that many',
      );
  } else if (!second && recordedOn(facts, fact))
    return notParsed(
      `${fact.count} × “${fact.name}”, ${fact.what}, ${today} is already recorded for ${event}`,
      'if as many more are, add --again',
    );
  return nextFact(facts, fact);
}

/** Whether the same count of the same thing at the same price was recorded on that day already. */
export function recordedOn(facts: readonly EventFact[], fact: BrokenFact): boolean {
  return recordedLike(facts, fact).some(({ count, on }) => count === fact.count && on === fact.on);
}

function recordedLike(facts: readonly EventFact[], fact: BrokenFact): BrokenFact[] {
  return facts.filter(
    (each): each is BrokenFact =>
      each.kind === 'broken' &&
      each.item === fact.item &&
      each.what === fact.what &&
      each.class === fact.class &&
      isSamePrice(each.each, fact.each),
  );
}

function isSamePrice(a: string | null, b: string | null): boolean {
  return a === null || b === null ? a === b : compare(money(a, ''), money(b, '')) === 0;
}

function priceText({ each }: BrokenFact, terms: { currency: string; locale: string }): string {
  return each === null ? 'without a charge' : `at ${displayMoney(money(each, terms.currency), terms.locale)}`;
}

function factOf(
  { what, count, each, why }: BrokenSaid,
  thing: Thing,
  currency: string,
  today: Day,
): BrokenFact {
  const price = each === undefined ? (thing.replacement ?? null) : each && exactMoneyText(each);
  return {
    version: 1,
    kind: 'broken',
    on: today,
    what,
    item: thing.id,
    name: thing.name,
    count,
    each: price === null ? null : exactMoneyText(money(price, currency)),
    class: thing.class,
    ...(why !== undefined && { why }),
  };
}

/** A thing of the kitchen's or an add-on of the offer by id or name; what serves and carries is taxed as a rental. */
function thingNamed(book: Book, event: string, item: string): Parsed<Thing> {
  const word = item.trim().toLowerCase();
  const { rentals, containers, carriers, equipment, kit } = book.kitchen;
  const offered = currentEvent(book, event);
  const addOns = offered.ok ? offered.value.offer.terms.addOns : [];
  const things: Thing[] = [
    ...[rentals, containers, carriers, equipment, kit].flatMap((kind) =>
      [...(kind?.values() ?? [])].map(({ id, name, back }) => ({
        id,
        name: String(name),
        class: 'rental' as const,
        replacement: back?.replacement,
      })),
    ),
    ...addOns.map(({ id, name, class: of }) => ({ id, name, class: of, replacement: undefined })),
  ];
  const found = things.find(({ id, name }) => id === word || name.toLowerCase() === word);
  if (found) return parsed(found);
  const close = nearest(
    word,
    things.map(({ id }) => id),
  );
  return notParsed(
    `no rental, container, carrier, equipment, kit or add-on is called “${item}”`,
    close ? `did you mean ${close}?` : 'list it in kitchen.yaml, under `rentals` or where it belongs',
  );
}
