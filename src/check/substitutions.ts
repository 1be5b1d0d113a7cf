import type { Book } from '../book/book.ts';
import { type Finding, finding } from '../book/findings/finding.ts';
import { parseAllergen } from '../engine/food/allergen.ts';
import { DIETS } from '../engine/food/diet.ts';
import { parseNeed, suitsNeed } from '../engine/food/need.ts';
import { callsFor } from '../engine/food/swap-item.ts';
import { canEat } from '../offers/corrections/corrections.ts';
import { substitutionNotices } from '../offers/corrections/told.ts';
import { type CurrentEvent, currentEvent } from '../offers/event/current-event.ts';
import { type Served, servedNow } from '../offers/event/served-dishes.ts';
import { guestListOf } from '../offers/guest-list/guest-list.ts';
import { useText } from '../offers/offer-in-use.ts';
import { factFileName, type ListedGuest, type SubstitutionFact } from '../schema/event-fact.ts';
import type { Offer } from '../schema/offer.ts';

/**
 * Substitutions of a coming event that its client has not been told of. One that brings an allergen into what is
 * served now is an error, whoever is on record, since a guest who is not rests on what was offered; so is one that
 * takes away a diet that a guest on record keeps.
 */
export function substitutionsUntold(book: Book, offer: Offer): Finding[] {
  const event = currentEvent(book, offer.proposal);
  return substitutionNotices(book, offer).flatMap(({ number, fact, toldOn }) => {
    if (toldOn !== undefined) return [];
    const name = factFileName(number, fact.kind);
    const place = { file: `events/${offer.proposal}/${name}`, line: 1, column: 1 };
    const dishes = event.ok ? dishesWith(book, event.value, fact) : undefined;
    const guests = event.ok && dishes ? harmedGuests(event.value, fact, dishes) : [];
    const tell = `the client of ${useText(book, offer)} must be told: ${fact.tell.join(' ')}`.replace(
      /\.$/,
      '',
    );
    const what = guests.length > 0 ? `${tell}. It is not for these guests: ${guests.join(', ')}` : tell;
    const first = `tell ${offer.client.name}${guests.length > 0 ? ' at once, and give these guests another dish' : ''}`;
    const wayOut = `${first}; the page already shows it; then run: told ${offer.proposal}`;
    const isHarmful = guests.length > 0 || bringsAllergen(fact, dishes);
    return [finding(isHarmful ? 'substitution-allergen-untold' : 'substitution-untold', place, what, wayOut)];
  });
}

/** The dishes served now that have what was swapped in; one that cannot be read may have it. */
function dishesWith(
  book: Book,
  event: CurrentEvent,
  { what, to }: SubstitutionFact,
): readonly Served[] | undefined {
  const { status, offer } = event;
  const accepted = offer.terms.packages.find(({ id }) => id === status.choice.package);
  return (
    accepted &&
    servedNow(book, event, accepted).filter(
      ({ id, recipe }) => id === to || !recipe || (what === 'ingredient' && callsFor(recipe, to)),
    )
  );
}

/** Where nobody can tell what is served, what was recorded of the swap counts. */
function bringsAllergen(
  { contains, mayContain }: SubstitutionFact,
  dishes: readonly Served[] | undefined,
): boolean {
  const brought = [...contains, ...mayContain];
  if (!dishes) return brought.length > 0;
  return dishes.some((dish) =>
    brought.some((each) => !dish.recipe || dish.contains.includes(each) || dish.mayContain.includes(each)),
  );
}

/**
 * Guests on record whom the swap harms, as `2 × sesame` or `Ada Lund (sesame)`: what it brought in or took away is
 * against their need, and a dish that has it is neither made for them separately nor one they did not take.
 */
function harmedGuests(
  { facts, status }: CurrentEvent,
  fact: SubstitutionFact,
  dishes: readonly Served[],
): string[] {
  const isHarmed = (need: string, among: readonly Served[]) =>
    among.some(({ recipe }) => isAgainst(need, fact) && !(recipe && canEat(recipe, need)));
  const counted = Object.entries(status.choice.needs).filter(
    ([need, guests]) => guests > 0 && isHarmed(need, dishes),
  );
  const listed = (guestListOf(facts)?.guests ?? []).filter((guest) =>
    isHarmed(guest.need, dishesOf(guest, dishes)),
  );
  return [
    ...counted.map(([need, guests]) => `${guests} × ${need}`),
    ...listed.map(({ name, need }) => `${name} (${need})`),
  ];
}

/** What a guest of the list gets of some dishes: of a course where each takes one, the one taken. */
function dishesOf({ mains }: ListedGuest, dishes: readonly Served[]): Served[] {
  return dishes.filter(({ course, accepted }) => mains[course] === undefined || mains[course] === accepted);
}

/** Whether a swap brought in what a need forbids, or took away a diet it asks for. */
function isAgainst(text: string, { contains, mayContain, dietsLost }: SubstitutionFact): boolean {
  const need = parseNeed(text);
  if (!need.ok) return false;
  const sources = (words: readonly string[]) =>
    words.flatMap((word) => {
      const allergen = parseAllergen(word);
      return allergen.ok ? [{ allergen: allergen.value, paths: [] }] : [];
    });
  const facts = { contains: sources(contains), mayContain: sources(mayContain), unsaid: [] };
  const claims = DIETS.map((diet) => ({
    diet,
    suits: dietsLost.includes(diet) ? ('no' as const) : ('yes' as const),
    because: [],
  }));
  return suitsNeed(need.value, facts, claims) === 'no';
}
