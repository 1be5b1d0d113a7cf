import { compare, money } from '../../engine/money/money.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import { changedLine, changedLines } from '../kitchen/change-line.ts';
import { guestsText, shown } from '../quote-view-of.ts';
import { apart } from './proposal-choice-rows.ts';
import { needLabel } from './terms-of.ts';

/** What of an offer says what is proposed. */
export type Proposing = Pick<OfferContent, 'guests' | 'needs' | 'proposed' | 'samples' | 'terms'>;

/** Guests and their needs as the offer knows them, and as its quote counts them where that is something else. */
export function guestsChanged(before: Proposing, now: Proposing): string[] {
  const quoted = (each: Proposing) =>
    differs(each.guests, each.proposed.guests)
      ? `${guestsText(each.proposed)}, ${each.proposed.guests.staff} of our own people`
      : '';
  const quotedNeeds = (each: Proposing) =>
    differs(each.needs, each.proposed.needs)
      ? [...needTexts(each.proposed.needs)].map(([need, count]) => `${need}: ${count}`).join('; ')
      : '';
  return [
    ...changedLine('Guests', guestsText(before), guestsText(now)),
    ...changedLine('Meals of our own people', String(before.guests.staff), String(now.guests.staff)),
    ...changedLines(needTexts(before.needs), needTexts(now.needs)),
    ...changedLine('Guests in the quote', quoted(before), quoted(now)),
    ...changedLine('Needs in the quote', quotedNeeds(before), quotedNeeds(now)),
  ];
}

/** The menu proposed, and of every menu offered in both the dishes and add-ons proposed with it. */
export function choiceChanged(before: Proposing, now: Proposing): string[] {
  const nameOf = ({ terms, proposed }: Proposing) =>
    terms.packages.find(({ id }) => id === proposed.package)?.name ?? proposed.package;
  const past = new Map(choicesOf(before).map((choice) => [choice.package, choice]));
  return [
    ...changedLine('Proposed menu', nameOf(before), nameOf(now)),
    ...choicesOf(now).flatMap((choice) => {
      const was = past.get(choice.package);
      return was ? changedLines(choiceTexts(was, now, before), choiceTexts(choice, now, now)) : [];
    }),
  ];
}

/** What the proposed choice came to and comes to now, each as its own offer has it; empty where one does not say. */
export function totalChange(before: Proposing, now: Proposing): string {
  const was = totalOf(before);
  const is = totalOf(now);
  if (was === undefined || is === undefined) return '';
  const [past, present] = [shown(was, before.terms), shown(is, now.terms)];
  if (past === present) return `The quote comes to ${present} in all, as before.`;
  if (before.terms.currency !== now.terms.currency)
    return `The quote comes to ${present} in all; before it was ${past}.`;
  const { currency } = now.terms;
  const more = compare(money(is, currency), money(was, currency)) > 0;
  return `The quote comes to ${present} in all; before it was ${past}, so it is ${apart(was, is, now.terms)} ${more ? 'more' : 'less'}.`;
}

function totalOf({ proposed, samples }: Proposing): string | undefined {
  return samples.find(({ choice }) => choice.package === proposed.package)?.total;
}

/** What is proposed of each package: the first of its samples. */
function choicesOf({ proposed, samples }: Proposing): Choice[] {
  const first = new Map([[proposed.package, proposed]]);
  for (const { choice } of samples) if (!first.has(choice.package)) first.set(choice.package, choice);
  return [...first.values()];
}

/** What is chosen and added, by what it is called now; dishes and add-ons of an earlier offer may have left since. */
function choiceTexts(
  { package: id, courses, mains, addOns }: Choice,
  now: Proposing,
  own: Proposing,
): Map<string, string> {
  const menu = now.terms.packages.find((each) => each.id === id);
  const dishes = [now, own].flatMap(({ terms }) =>
    terms.packages
      .filter((each) => each.id === id)
      .flatMap((each) => each.courses.flatMap((course) => course.dishes)),
  );
  const dish = (recipe: string) => dishes.find((each) => each.recipe === recipe)?.name ?? recipe;
  const addOn = (key: string) =>
    [...now.terms.addOns, ...own.terms.addOns].find((each) => each.id === key)?.name ?? key;
  const of = menu?.name ?? id;
  const entries: [string, string][] = [
    ...Object.entries(courses).map(([course, recipes]): [string, string] => [
      `${of}, chosen under ${course}`,
      recipes.map(dish).join(', '),
    ]),
    ...Object.entries(mains).map(([course, counts]): [string, string] => [
      `${of}, taken under ${course}`,
      Object.entries(counts)
        .map(([recipe, count]) => `${count} ${dish(recipe)}`)
        .join(', '),
    ]),
    ...Object.entries(addOns).map(([key, count]): [string, string] => [
      `${of}, already in the quote: ${addOn(key)}`,
      count === 1 ? 'once' : `${count} times`,
    ]),
  ];
  return new Map(entries);
}

function needTexts(needs: Readonly<Record<string, number>>): Map<string, string> {
  return new Map(Object.entries(needs).map(([need, count]) => [`Guests, ${needLabel(need)}`, String(count)]));
}

function differs(a: object, b: object): boolean {
  return JSON.stringify(Object.entries(a).sort()) !== JSON.stringify(Object.entries(b).sort());
}
