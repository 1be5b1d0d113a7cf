import { compare, money } from '../../engine/money/money.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import { guestsText, shown } from '../quote-view-of.ts';
import { changedLine, changedLines } from './change-line.ts';
import { apart } from './proposal-choice-rows.ts';
import { needLabel } from './terms-of.ts';

/** What of an offer says what is proposed. */
export type Proposing = Pick<OfferContent, 'guests' | 'needs' | 'proposed' | 'samples' | 'terms'>;

/** Guests and their needs as the offer knows them, and as its quote counts them where that is something else. */
export function guestsChanged(before: Proposing, now: Proposing): string[] {
  const say = wordsIn(now.terms.locale);
  const script = scriptWordsIn(now.terms.locale);
  const quoted = ({ guests, proposed }: Proposing) =>
    differs(guests, proposed.guests)
      ? say('changes.guests.with-crew', { guests: guestsText(script, proposed), n: proposed.guests.staff })
      : '';
  const quotedNeeds = (each: Proposing) =>
    differs(each.needs, each.proposed.needs)
      ? Object.entries(each.proposed.needs)
          .map(([need, n]) =>
            say('changes.guests.need-count', { need: needLabel(need, now.terms.locale), n }),
          )
          .join('; ')
      : '';
  return [
    ...changedLine(say, say('changes.guests'), guestsText(script, before), guestsText(script, now)),
    ...changedLine(say, say('changes.guests.crew'), String(before.guests.staff), String(now.guests.staff)),
    ...changedLines(say, needTexts(before.needs, now.terms.locale), needTexts(now.needs, now.terms.locale)),
    ...changedLine(say, say('changes.guests.quoted'), quoted(before), quoted(now)),
    ...changedLine(say, say('changes.guests.needs-quoted'), quotedNeeds(before), quotedNeeds(now)),
  ];
}

/** The menu proposed, and of every menu offered in both the dishes and add-ons proposed with it. */
export function choiceChanged(before: Proposing, now: Proposing): string[] {
  const nameOf = ({ terms, proposed }: Proposing) =>
    terms.packages.find(({ id }) => id === proposed.package)?.name ?? proposed.package;
  const say = wordsIn(now.terms.locale);
  const past = new Map(choicesOf(before).map((choice) => [choice.package, choice]));
  return [
    ...changedLine(say, say('changes.choice.menu'), nameOf(before), nameOf(now)),
    ...choicesOf(now).flatMap((choice) => {
      const was = past.get(choice.package);
      return was ? changedLines(say, choiceTexts(was, now, before), choiceTexts(choice, now, now)) : [];
    }),
  ];
}

/** What the proposed choice came to and comes to now, each as its own offer has it; empty where one does not say. */
export function totalChange(before: Proposing, now: Proposing): string {
  const was = totalOf(before);
  const is = totalOf(now);
  if (was === undefined || is === undefined) return '';
  const [past, present] = [shown(was, before.terms), shown(is, now.terms)];
  const say = wordsIn(now.terms.locale);
  if (past === present) return say('changes.total.same', { sum: present });
  if (before.terms.currency !== now.terms.currency)
    return say('changes.total.other', { sum: present, before: past });
  const { currency } = now.terms;
  const more = compare(money(is, currency), money(was, currency)) > 0;
  const difference = apart(was, is, now.terms);
  return say(more ? 'changes.total.up' : 'changes.total.down', { sum: present, difference, before: past });
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
  const name = menu?.name ?? id;
  const say = wordsIn(now.terms.locale);
  const entries: [string, string][] = [
    ...Object.entries(courses).map(([course, recipes]): [string, string] => [
      say('changes.choice.chosen', { menu: name, course }),
      recipes.map(dish).join(', '),
    ]),
    ...Object.entries(mains).map(([course, counts]): [string, string] => [
      say('changes.choice.mains', { menu: name, course }),
      Object.entries(counts)
        .map(([recipe, n]) => say('changes.choice.main', { n, dish: dish(recipe) }))
        .join(', '),
    ]),
    ...Object.entries(addOns).map(([key, count]): [string, string] => [
      say('changes.choice.add-on', { menu: name, addOn: addOn(key) }),
      say('changes.choice.taken', { n: count }),
    ]),
  ];
  return new Map(entries);
}

function needTexts(needs: Readonly<Record<string, number>>, locale: string): Map<string, string> {
  const say = wordsIn(locale);
  return new Map(
    Object.entries(needs).map(([need, count]) => [
      say('changes.guests.need', { need: needLabel(need, locale) }),
      String(count),
    ]),
  );
}

function differs(a: object, b: object): boolean {
  return JSON.stringify(Object.entries(a).sort()) !== JSON.stringify(Object.entries(b).sort());
}
