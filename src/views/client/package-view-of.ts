import { type Allergen, allergenText, parseAllergen } from '../../engine/food/allergen.ts';
import type { AllergenColumn } from '../../engine/food/allergen-columns.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { declaredNames, outsideLaw } from '../../engine/food/allergen-law.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { CourseTerms, DishTerms, PackageTerms, Terms } from '../../engine/quote/terms.ts';
import { allergenAsRead } from '../../exports/words/allergen-as-read.ts';
import { groupsText } from '../../exports/words/counted-text.ts';
import { perGuestAsRead } from '../../exports/words/per-guest-as-read.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { marksAsRead } from '../diet-marks.ts';
import { rateWords } from '../price-words.ts';
import { shown } from '../quote-view-of.ts';
import { dishNeeds } from './need-filter-of.ts';
import type { CourseView, DishView, PackageView } from './proposal-view.ts';
import { styleWords } from './style-words.ts';

/** What a package's view needs besides the package. */
export interface PackageSetting {
  readonly terms: Terms;
  readonly laws: readonly AllergenLaw[];
  /** Dishes that a substitution has touched, as they were agreed, by the recipe offered. */
  readonly agreed: ReadonlyMap<string, DishTerms>;
  /** The allergens that guests can ask about. */
  readonly columns: readonly AllergenColumn[];
  /** The choice shown for this package. */
  readonly choice: Choice | undefined;
  readonly proposed: boolean;
  /** Key of its story among the rendered bodies; empty where it has none. */
  readonly story: string;
}

/** A package as its menu is printed: prices by guest count, courses, dishes with marks and allergens. */
export function packageView(chosen: PackageTerms, setting: PackageSetting): PackageView {
  const { terms } = setting;
  return {
    id: chosen.id,
    name: chosen.name,
    proposed: setting.proposed,
    style: chosen.style,
    served: styleWords(chosen.style, terms.locale),
    story: setting.story,
    prices: chosen.tiers.map((tier) => ({
      guests: tierWords(tier, terms),
      price: shown(tier.perHead, terms),
    })),
    rates: ratesOf(chosen, terms),
    courses: chosen.courses.map((course) => courseView(course, setting)),
  };
}

function tierWords({ from, to }: PackageTerms['tiers'][number], { locale }: Terms): string {
  const say = wordsIn(locale);
  if (to === null) return say('dishes.tier.and-more', { n: from });
  return from === to ? say('dishes.tier.only', { n: from }) : say('dishes.tier.range', { from, n: to });
}

function ratesOf(chosen: PackageTerms, terms: Terms): string[] {
  const say = wordsIn(terms.locale);
  const { tierCounts, child, vendor, minimumGuests, minimumSpend, hours } = chosen;
  return [
    say('dishes.rates.counted', { counted: groupsText(scriptWordsIn(terms.locale), tierCounts) }),
    say('dishes.rates.children', { rate: rateWords(child, terms) }),
    say('dishes.rates.vendors', { rate: rateWords(vendor, terms) }),
    ...(minimumGuests > 1 ? [say('dishes.rates.minimum', { n: minimumGuests })] : []),
    ...(minimumSpend ? [say('dishes.rates.minimum-spend', { sum: shown(minimumSpend.amount, terms) })] : []),
    ...(hours ? [say('dishes.rates.hours', { hours })] : []),
  ];
}

function courseView(course: CourseTerms, setting: PackageSetting): CourseView {
  const say = wordsIn(setting.terms.locale);
  return {
    name: course.name,
    eachGuest: course.eachGuest,
    note:
      course.choose !== null
        ? say('dishes.course.choose', { n: course.choose })
        : course.eachGuest
          ? say('dishes.course.each-guest')
          : '',
    dishes: course.dishes.map((dish) => dishView(dish, course, setting)),
  };
}

function dishView(
  dish: DishTerms,
  course: CourseTerms,
  { choice, terms, laws, columns, agreed }: PackageSetting,
): DishView {
  const say = wordsIn(terms.locale);
  const picked = choice?.courses[course.name]?.includes(dish.recipe) ?? false;
  const takers = choice?.mains[course.name]?.[dish.recipe] ?? 0;
  return {
    name: dish.name,
    chosen: picked || takers > 0,
    chosenBy: takers > 0 ? say('script.guests', { n: takers }) : '',
    perGuest: amountText(dish, course, say),
    role: dish.role ?? '',
    marks: marksAsRead(dish, terms.locale),
    needs: dishNeeds(dish, columns),
    allergens: allergenSentences(dish, laws, terms.locale),
    agreed: agreedText(agreed.get(dish.recipe), dish, laws, terms.locale),
  };
}

/** What was agreed of a dish that is another now, or holds something else; empty where it stands as it was agreed. */
function agreedText(
  agreed: DishTerms | undefined,
  dish: DishTerms,
  laws: readonly AllergenLaw[],
  locale: string,
): string {
  if (!agreed) return '';
  const say = wordsIn(locale);
  const words = (each: DishTerms) => {
    const marks = marksAsRead(each, locale).join(', ');
    const allergens = allergenSentences(each, laws, locale);
    const spoken = { dish: each.name, amount: perGuestAsRead(each.perGuest, say), allergens };
    return marks === '' ? say('dishes.agreed', spoken) : say('dishes.agreed.marks', { ...spoken, marks });
  };
  // The amount of a menu is its own; only a dish served instead brings another.
  const was = words({ ...agreed, perGuest: agreed.name === dish.name ? dish.perGuest : agreed.perGuest });
  return was === words(dish) ? '' : was;
}

/** `1 piece per guest, instead of Plum slab cake for vegan, no gluten`; the amount alone where it takes the place of none. */
function amountText({ insteadOf, perGuest }: DishTerms, { dishes }: CourseTerms, say: Say): string {
  const amount = perGuestAsRead(perGuest, say);
  if (!insteadOf) return amount;
  const { recipe: other, needs } = insteadOf;
  const dish = dishes.find(({ recipe }) => recipe === other)?.name ?? say('dishes.another-dish');
  return needs
    ? say('dishes.instead-of', { amount, dish, needs: needs.join(', ') })
    : say('dishes.instead-of.cannot-eat', { amount, dish });
}

function allergenSentences(dish: DishTerms, laws: readonly AllergenLaw[], locale: string): string {
  const say = wordsIn(locale);
  const contains = names(dish.contains, laws, locale);
  const may = names(dish.mayContain, laws, locale);
  return [
    contains.length > 0 ? say('dishes.contains', { allergens: contains.join(', ') }) : '',
    contains.length === 0 && !dish.unsaid ? say('dishes.contains.none') : '',
    may.length > 0 ? say('dishes.may-contain', { allergens: may.join(', ') }) : '',
    dish.unsaid ? say('dishes.not-known') : '',
  ]
    .filter((text) => text !== '')
    .join(' ');
}

/** Names as the kitchen's laws use them, then what no law names but the facts state, as the locale spells them. */
export function names(texts: readonly string[], laws: readonly AllergenLaw[], locale: string): string[] {
  const allergens = texts.flatMap((text): Allergen[] => {
    const allergen = parseAllergen(text);
    return allergen.ok ? [allergen.value] : [];
  });
  const named = [...declaredNames(allergens, laws), ...outsideLaw(allergens, laws).map(allergenText)];
  return named.map((name) => allergenAsRead(name, locale));
}
