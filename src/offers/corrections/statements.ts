import type { Book } from '../../book/book.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import type { FoodFacts } from '../issue/dish-terms.ts';

/** What a record states of a dish beyond its offer: a correction that was published, or what a client was told. */
export interface Statement {
  readonly recipe: string;
  /** The recipe served instead when it was stated; missing where it is of the dish that was offered. */
  readonly instead?: string | undefined;
  /** What the dish was made with instead, by swaps of this event; missing for none. */
  readonly madeWith?: readonly string[] | undefined;
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  readonly lostMarks: readonly string[];
}

/** What is on record of the dishes of an offer. */
export interface OnRecord {
  readonly published: readonly Statement[];
  readonly told: readonly Statement[];
  /** True where a published correction cannot be read, so that nobody knows what a page has shown. */
  readonly isLost: boolean;
}

/** Which records count beside what a recipe says now. */
export type Counted = (record: OnRecord, isReadable: boolean) => readonly Statement[];

/** What a page shows: a correction once published stays; of a dish that cannot be read, what its client was told too. */
export const asPublished: Counted = ({ published, told }, isReadable) =>
  isReadable ? published : [...published, ...told];

/** What is so now: records count only for a dish that cannot be read. */
export const asNow: Counted = ({ published, told }, isReadable) =>
  isReadable ? [] : [...published, ...told];

/** The records of an offer's revision. */
export function onRecord(
  { proposal, revision }: Pick<Offer, 'proposal' | 'revision'>,
  book: Pick<Book, 'corrections' | 'told' | 'held'>,
): OnRecord {
  const of = (
    records: readonly { readonly revision: number; readonly dishes: readonly Statement[] }[] = [],
  ) => records.filter((each) => each.revision === revision).flatMap(({ dishes }) => dishes);
  return {
    published: of(book.corrections.get(proposal)),
    told: of(book.told.get(proposal)),
    isLost: book.held.has(`corrections/${proposal}`),
  };
}

/** Statements on a dish as it was offered. */
export function onOffered(statements: readonly Statement[], recipe: string): Statement[] {
  return statements.filter(
    (each) => each.recipe === recipe && each.instead === undefined && each.madeWith === undefined,
  );
}

/**
 * Statements on a dish as an event's substitutions leave it: those made of the same recipe, as long as one of the
 * foods it was then made with instead is still in. What was stated before any swap counts where the dish cannot be
 * read, since nobody knows then what a swap took out.
 */
export function onServed(
  record: OnRecord,
  counted: Counted,
  dish: Pick<Statement, 'recipe' | 'instead'> & { readonly isReadable: boolean },
  substitutions: readonly SubstitutionFact[],
): Statement[] {
  const stillIn = swappedIn(substitutions);
  return counted(record, dish.isReadable).filter(
    ({ recipe, instead, madeWith }) =>
      recipe === dish.recipe &&
      instead === dish.instead &&
      (madeWith ? madeWith.some((id) => stillIn.includes(id)) : instead !== undefined || !dish.isReadable),
  );
}

/** Foods that were taken instead of others and that no later swap has taken out again, by id. */
export function swappedIn(substitutions: readonly SubstitutionFact[]): string[] {
  const swaps = substitutions.filter(({ what }) => what === 'ingredient');
  return swaps
    .filter(({ to }, index) => !swaps.slice(index + 1).some(({ from }) => from === to))
    .map(({ to }) => to);
}

/** Facts of a dish with statements added: allergens come in, lost claims go, and nothing gets safer. */
export function withStatements(food: FoodFacts, statements: readonly Statement[]): FoodFacts {
  if (statements.length === 0) return food;
  const all = (field: 'contains' | 'mayContain' | 'lostMarks') => statements.flatMap((each) => each[field]);
  const lost = all('lostMarks');
  const contains = [...new Set([...food.contains, ...all('contains')])];
  const mayContain = [...new Set([...food.mayContain, ...all('mayContain')])];
  const onRequest = (food.onRequest ?? []).filter((need) => !lost.includes(markOnRequest(need)));
  const { onRequest: _, ...rest } = food;
  return {
    ...rest,
    marks: food.marks.filter((mark) => !lost.includes(mark)),
    contains,
    mayContain: mayContain.filter((each) => !contains.includes(each)),
    ...(onRequest.length > 0 ? { onRequest } : {}),
  };
}

const ON_REQUEST = ' on request';

/** A need that a dish can be made for, as records name it among lost marks: `vegan on request`. Pages word it themselves. */
export function markOnRequest(need: string): string {
  return need + ON_REQUEST;
}

/** The need that such a mark is of; undefined for any other mark. */
export function needOnRequest(mark: string): string | undefined {
  return mark.endsWith(ON_REQUEST) ? mark.slice(0, -ON_REQUEST.length) : undefined;
}
