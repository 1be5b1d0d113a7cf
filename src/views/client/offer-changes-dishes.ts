import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import type { CourseTerms, DishTerms, Terms } from '../../engine/quote/terms.ts';
import { groupsText } from '../../exports/words/counted-text.ts';
import { perGuestAsRead } from '../../exports/words/per-guest-as-read.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import { markWords, requestWords } from '../diet-marks.ts';
import { shown } from '../quote-view-of.ts';
import { changedLine, notIn } from './change-line.ts';
import { names } from './package-view-of.ts';

/** A dish and the course it stands in. */
interface Placed {
  readonly course: string;
  readonly dish: DishTerms;
}

/** The dishes of a menu that came, went, or stand in another course, and those whose portion or price is another. */
export function dishesChanged(
  before: readonly CourseTerms[],
  now: readonly CourseTerms[],
  terms: Pick<Terms, 'currency' | 'locale'>,
): string[] {
  const say = wordsIn(terms.locale);
  const past = placesOf(before);
  const present = placesOf(now);
  const lines = [...new Set([...present.keys(), ...past.keys()])].flatMap((recipe) => {
    const was = past.get(recipe) ?? [];
    const is = present.get(recipe) ?? [];
    const left = was.filter(({ course }) => !is.some((each) => each.course === course));
    const came = is.filter(({ course }) => !was.some((each) => each.course === course));
    const moved = came.slice(0, left.length);
    return [
      ...moved.map(({ course, dish }, index) =>
        say('changes.dish.moved', { dish: dish.name, from: left[index]?.course ?? '', to: course }),
      ),
      ...came
        .slice(moved.length)
        .map(({ course, dish }) => say('changes.dish.new', { course, dish: dish.name })),
      ...left
        .slice(moved.length)
        .map(({ course, dish }) => say('changes.dish.gone', { course, dish: dish.name })),
      ...is.flatMap((place) => {
        const other = was.find(({ course }) => course === place.course) ?? left[moved.indexOf(place)];
        return other ? portionChanged(other.dish, place.dish, terms) : [];
      }),
    ];
  });
  return lines;
}

function placesOf(courses: readonly CourseTerms[]): Map<string, Placed[]> {
  const places = new Map<string, Placed[]>();
  for (const { name, dishes } of courses)
    for (const dish of dishes) {
      const placed = places.get(dish.recipe);
      if (placed) placed.push({ course: name, dish });
      else places.set(dish.recipe, [{ course: name, dish }]);
    }
  return places;
}

/** What else than the food differs in a dish: its name, the portion, who gets it, what it costs on top. */
export function portionChanged(
  before: DishTerms,
  now: DishTerms,
  terms: Pick<Terms, 'currency' | 'locale'>,
): string[] {
  const say = wordsIn(terms.locale);
  const script = scriptWordsIn(terms.locale);
  const dish = now.name;
  const extra = ({ supplement }: DishTerms) =>
    supplement === undefined ? '' : say('changes.dish.supplement', { sum: shown(supplement, terms) });
  return [
    ...(before.name === now.name ? [] : [say('changes.renamed', { before: before.name, now: dish })]),
    ...changedLine(
      say,
      say('changes.dish.portion', { dish }),
      perGuestAsRead(before.perGuest, say),
      perGuestAsRead(now.perGuest, say),
    ),
    ...changedLine(
      say,
      say('changes.dish.counts', { dish }),
      groupsText(script, before.counts),
      groupsText(script, now.counts),
    ),
    ...changedLine(say, say('changes.dish.extra', { dish }), extra(before), extra(now)),
  ];
}

/** How the allergens and dietary marks of dishes differ that are offered in both; a line for each that came or went. */
export function foodChanged(
  before: readonly DishTerms[],
  now: readonly DishTerms[],
  laws: readonly AllergenLaw[],
  locale: string,
): string[] {
  const past = Map.groupBy(before, ({ recipe }) => recipe);
  const present = Map.groupBy(now, ({ recipe }) => recipe);
  return [...present].flatMap(([recipe, dishes]) => {
    const others = past.get(recipe) ?? [];
    // A dish offered in several places is the same food in each, so that the first stands for all unless they differ.
    const pairs = dishes.flatMap((dish, index) => {
      const other = others[index] ?? others[0];
      return other ? [[other, dish] as const] : [];
    });
    return pairs.flatMap(([was, is]) => factsChanged(was, is, laws, locale));
  });
}

function factsChanged(
  before: DishTerms,
  now: DishTerms,
  laws: readonly AllergenLaw[],
  locale: string,
): string[] {
  const say = wordsIn(locale);
  const { name: dish } = now;
  const allergens = (words: WordKey, list: readonly string[]) =>
    list.length === 0 ? [] : [say(words, { dish, allergens: namesOf(list, laws, locale).join(', ') })];
  const marks = (words: WordKey, list: readonly string[]) =>
    list.map((mark) => say(words, { dish, mark: markWords(mark, locale) }));
  const requests = (words: WordKey, list: readonly string[]) =>
    list.map((need) => say(words, { dish, mark: requestWords(need, locale) }));
  const [askedBefore, askedNow] = [before.onRequest ?? [], now.onRequest ?? []];
  return [
    ...allergens('changes.food.contains', notIn(now.contains, before.contains)),
    ...allergens('changes.food.no-longer-contains', notIn(before.contains, now.contains)),
    ...allergens('changes.food.may-contain', notIn(now.mayContain, before.mayContain)),
    ...allergens('changes.food.no-longer-may', notIn(before.mayContain, now.mayContain)),
    ...marks('changes.food.mark-lost', notIn(before.marks, now.marks)),
    ...marks('changes.food.mark-new', notIn(now.marks, before.marks)),
    ...requests('changes.food.request-lost', notIn(askedBefore, askedNow)),
    ...requests('changes.food.request-new', notIn(askedNow, askedBefore)),
    ...(before.unsaid === now.unsaid
      ? []
      : [say(now.unsaid ? 'changes.food.unknown' : 'changes.food.known', { dish })]),
  ];
}

/** By the names of the law; as the offer has it where the law's name says nothing. */
function namesOf(texts: readonly string[], laws: readonly AllergenLaw[], locale: string): string[] {
  const declared = names(texts, laws, locale);
  return declared.length > 0 ? declared : [...texts];
}
