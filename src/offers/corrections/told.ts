import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { EventFact, SubstitutionFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import type { Told } from '../../schema/told.ts';
import type { ServedSources } from '../event/recipes.ts';
import { offerInUse } from '../offer-in-use.ts';
import type { CorrectionSources, DishCorrection } from './corrections.ts';
import { knownSince } from './known-since.ts';
import { asNow } from './statements.ts';

/**
 * Where the food of an offer in use is less safe than was offered, split by whether its client has been told. Of an
 * accepted offer only what was accepted counts. Of a dish that has changed once more since, only the rest is untold.
 * That a dish cannot be read now is the kitchen's to put right and nothing to tell.
 */
export function correctionsToTell(
  book: CorrectionSources & ServedSources & Pick<Book, 'events'>,
  offer: Offer,
): {
  readonly untold: readonly DishCorrection[];
  readonly told: readonly DishCorrection[];
  /** A dish that cannot be read now, by its name. */
  readonly unreadable: string | undefined;
} {
  const records = toldOf(book, offer);
  const substitutions = factsOf(book, offer).filter((fact) => fact.kind === 'substitution');
  const accepted = { ...offer, terms: acceptedTerms(book, offer) };
  const now = knownSince(accepted, book, substitutions, asNow).corrections;
  const all = now.map((each) => withoutTold(each, records));
  return {
    untold: all.flatMap(({ rest }) => rest ?? []),
    told: all.flatMap(({ known }) => known ?? []),
    unreadable: now.find((each) => each.unreadable)?.dish,
  };
}

/** A substitution that a client has to be told of, under the number of its fact. */
export interface SubstitutionNotice {
  readonly number: number;
  readonly fact: SubstitutionFact;
  /** The day the client was told; missing before. */
  readonly toldOn?: Day;
}

/** The substitutions of an event that its client has to be told of, in the order decided. One later is a notice of its own. */
export function substitutionNotices(
  book: Pick<Book, 'events' | 'told'>,
  offer: Pick<Offer, 'proposal' | 'revision'>,
): SubstitutionNotice[] {
  const records = toldOf(book, offer);
  return factsOf(book, offer).flatMap((fact, index): SubstitutionNotice[] => {
    if (fact.kind !== 'substitution' || fact.tell.length === 0) return [];
    const number = index + 1;
    const record = records.find(({ substitutions }) => substitutions?.includes(number));
    return [{ number, fact, ...(record ? { toldOn: record.on } : {}) }];
  });
}

function factsOf(book: Pick<Book, 'events'>, { proposal }: Pick<Offer, 'proposal'>): readonly EventFact[] {
  return book.events.get(proposal)?.facts ?? [];
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

/** A correction split into what no record says and what one does; missing where there is nothing of it. */
function withoutTold(
  correction: DishCorrection,
  records: readonly Told[],
): { readonly rest?: DishCorrection; readonly known?: DishCorrection } {
  const { recipe, instead, dish, unsaid } = correction;
  // What the client was told about a dish does not count for another served in its place.
  const about = records.flatMap(({ on, dishes }) =>
    dishes
      .filter((each) => each.recipe === recipe && each.instead === instead)
      .map((each) => ({ ...each, on })),
  );
  const part = (field: 'contains' | 'mayContain' | 'lostMarks') =>
    Object.groupBy(correction[field], (word) =>
      about.some((each) => each[field].includes(word)) ? 'told' : 'new',
    );
  const [contains, mayContain, lostMarks] = [part('contains'), part('mayContain'), part('lostMarks')];
  const side = (which: 'told' | 'new', isUnsaid: boolean): DishCorrection | undefined => {
    const made = {
      recipe,
      ...(instead === undefined ? {} : { instead }),
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
    return notParsed(`nothing was issued for “${proposal}”`, 'name a proposal that has been issued');
  const offer = offerInUse(book, proposal, today);
  if (!offer)
    return notParsed(`the offer of ${proposal} is no longer in use`, 'there is nothing to tell the client');
  if (on > today) return notParsed(`${on} is in the future`, 'name the day on which the client was told');
  if (on < offer.issued)
    return notParsed(`${on} is before the offer was issued`, 'name the day on which the client was told');
  const { untold, told, unreadable } = correctionsToTell(book, offer);
  const notices = substitutionNotices(book, offer);
  const substitutions = notices.filter(({ toldOn }) => toldOn === undefined);
  if (untold.length + substitutions.length === 0 && unreadable !== undefined)
    return notParsed(
      `what is in “${unreadable}” can’t be read right now`,
      'fix what `check` reports about it, then run this command again',
    );
  if (untold.length + substitutions.length === 0)
    return notParsed(
      told.length + notices.length > 0
        ? `the client of ${proposal} has already been told of everything`
        : `no allergens or dishes of ${proposal} have changed`,
      'there is nothing to tell the client',
    );
  const first = substitutions.map(({ fact }) => fact.on).sort()[0];
  if (first !== undefined && on < first)
    return notParsed(
      `${on} is before the substitution of ${first}`,
      'name the day on which the client was told',
    );
  const dishes = untold.map(({ recipe, instead, dish, contains, mayContain, lostMarks, unsaid }) => ({
    recipe,
    ...(instead === undefined ? {} : { instead }),
    dish,
    contains: [...contains],
    mayContain: [...mayContain],
    lostMarks: [...lostMarks],
    ...(unsaid ? { unsaid } : {}),
  }));
  return parsed({
    version: 1,
    kind: 'told',
    on,
    proposal,
    revision: offer.revision,
    dishes,
    ...(substitutions.length > 0 ? { substitutions: substitutions.map(({ number }) => number) } : {}),
  });
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
