import type { Book } from '../book/book.ts';
import { offerInUse } from '../book/offer-in-use.ts';
import type { Day } from '../engine/calendar/day.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import type { Offer } from '../schema/offer.ts';
import type { Told } from '../schema/told.ts';
import { type CorrectionSources, correctionsNow, type DishCorrection } from './corrections.ts';

/**
 * Where the food of an offer in use is less safe than was offered, apart by whether its client has been told. Of an
 * accepted offer only what was accepted counts. Of a dish that has changed once more since, only the rest is untold.
 * That a dish cannot be read now is the kitchen's to put right and nothing to tell.
 */
export function correctionsToTell(
  book: CorrectionSources & Pick<Book, 'events'>,
  offer: Offer,
): {
  readonly untold: readonly DishCorrection[];
  readonly told: readonly DishCorrection[];
  /** A dish that cannot be read now, by its name. */
  readonly unreadable: string | undefined;
} {
  const records = toldOf(book, offer);
  const now = correctionsNow({ ...offer, terms: acceptedTerms(book, offer) }, book);
  const all = now.map((each) => withoutTold(each, records));
  return {
    untold: all.flatMap(({ rest }) => rest ?? []),
    told: all.flatMap(({ known }) => known ?? []),
    unreadable: now.find((each) => each.unreadable)?.dish,
  };
}

/** A correction with the day on which the client was told, where there is nothing of it left to tell. */
export function dated(correction: DishCorrection, records: readonly Told[]): DishCorrection {
  const { rest, known } = withoutTold(correction, records);
  return rest || !known?.toldOn ? correction : { ...correction, toldOn: known.toldOn };
}

/** What the client of an offer was told of it, in the order written. */
export function toldOf(
  book: Pick<Book, 'told'>,
  { proposal, revision }: Pick<Offer, 'proposal' | 'revision'>,
): Told[] {
  return (book.told.get(proposal) ?? []).filter((each) => each.revision === revision);
}

/** A correction parted into what no record says and what one does; missing where there is nothing of it. */
function withoutTold(
  correction: DishCorrection,
  records: readonly Told[],
): { readonly rest?: DishCorrection; readonly known?: DishCorrection } {
  const { recipe, dish, unsaid } = correction;
  const about = records.flatMap(({ on, dishes }) =>
    dishes.filter((each) => each.recipe === recipe).map((each) => ({ ...each, on })),
  );
  const part = (field: 'contains' | 'mayContain' | 'lostMarks') =>
    Object.groupBy(correction[field], (word) =>
      about.some((each) => each[field].includes(word)) ? 'told' : 'new',
    );
  const [contains, mayContain, lostMarks] = [part('contains'), part('mayContain'), part('lostMarks')];
  const side = (which: 'told' | 'new', isUnsaid: boolean): DishCorrection | undefined => {
    const made = {
      recipe,
      dish,
      contains: contains[which] ?? [],
      mayContain: mayContain[which] ?? [],
      lostMarks: lostMarks[which] ?? [],
      ...(isUnsaid ? { unsaid: true as const } : {}),
    };
    const empty = made.contains.length + made.mayContain.length + made.lostMarks.length === 0 && !isUnsaid;
    return empty ? undefined : made;
  };
  const unsaidTold = unsaid === true && about.some((each) => each.unsaid);
  const rest = side('new', unsaid === true && !unsaidTold);
  const known = side('told', unsaidTold);
  const toldOn = about
    .map(({ on }) => on)
    .sort()
    .at(-1);
  return { ...(rest ? { rest } : {}), ...(known && toldOn ? { known: { ...known, toldOn } } : {}) };
}

/** The record that a client has been told of all that is to be told now. Fails where there is nothing. */
export function tell(book: Book, proposal: string, on: Day, today: Day): Parsed<Told> {
  if (!book.offers.has(proposal))
    return notParsed(`nothing was issued for “${proposal}”`, 'name a proposal that `issue` made an offer of');
  const offer = offerInUse(book, proposal, today);
  if (!offer)
    return notParsed(`nobody can be fed by the offer of ${proposal} any longer`, 'nothing is to be told');
  if (on > today) return notParsed(`${on} is still to come`, 'name the day on which the client was told');
  if (on < offer.issued)
    return notParsed(`${on} is before the offer was issued`, 'name the day on which the client was told');
  const { untold, told, unreadable } = correctionsToTell(book, offer);
  if (untold.length === 0 && unreadable !== undefined)
    return notParsed(
      `what is in “${unreadable}” cannot be read now`,
      'correct what `check` says of it, then run this again',
    );
  if (untold.length === 0)
    return notParsed(
      told.length > 0
        ? `the client of ${proposal} has been told of everything already`
        : `the dishes of ${proposal} are as they were offered`,
      'nothing is to be told',
    );
  const dishes = untold.map(({ recipe, dish, contains, mayContain, lostMarks, unsaid }) => ({
    recipe,
    dish,
    contains: [...contains],
    mayContain: [...mayContain],
    lostMarks: [...lostMarks],
    ...(unsaid ? { unsaid } : {}),
  }));
  return parsed({ version: 1, kind: 'told', on, proposal, revision: offer.revision, dishes });
}

/** The file of a proposal's record of that number, in the content folder. */
export function toldFile(proposal: string, number: number): string {
  return `told/${proposal}-${String(number).padStart(3, '0')}.json`;
}

/** The terms with the package and add-ons that the client took, where the offer is accepted. */
export function acceptedTerms(book: Pick<Book, 'events'>, { proposal, terms }: Offer): Offer['terms'] {
  const [accepted] = book.events.get(proposal)?.facts ?? [];
  if (accepted?.kind !== 'accepted') return terms;
  const { choice } = accepted.acceptance;
  return {
    ...terms,
    packages: terms.packages.filter(({ id }) => id === choice.package),
    addOns: terms.addOns.filter(({ id }) => (choice.addOns[id] ?? 0) > 0),
  };
}
