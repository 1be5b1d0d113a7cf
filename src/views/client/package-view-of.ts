import { type Allergen, allergenText, parseAllergen } from '../../engine/food/allergen.ts';
import type { AllergenColumn } from '../../engine/food/allergen-columns.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { declaredNames, outsideLaw } from '../../engine/food/allergen-law.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { countsWords } from '../../engine/quote/counted-words.ts';
import type { CourseTerms, DishTerms, PackageTerms, Terms } from '../../engine/quote/terms.ts';
import { counted } from '../../engine/text/counted.ts';
import { marksOf, requestMarks } from '../diet-marks.ts';
import { rateWords } from '../price-words.ts';
import { shown } from '../quote-view-of.ts';
import { dishNeeds } from './need-filter-of.ts';
import type { CourseView, DishView, PackageView } from './proposal-view.ts';

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
    story: setting.story,
    prices: chosen.tiers.map(({ from, to, perHead }) => ({
      guests:
        to === null
          ? `${counted(from, 'guest')} and more`
          : from === to
            ? counted(from, 'guest')
            : `${from} to ${counted(to, 'guest')}`,
      price: shown(perHead, terms),
    })),
    rates: ratesOf(chosen, terms),
    courses: chosen.courses.map((course) => courseView(course, setting)),
  };
}

function ratesOf(chosen: PackageTerms, terms: Terms): string[] {
  const rates = [
    `Guests are counted as ${countsWords(chosen.tierCounts)}.`,
    `Children: ${rateWords(chosen.child, terms)}.`,
    `Vendor meals: ${rateWords(chosen.vendor, terms)}.`,
  ];
  if (chosen.minimumGuests > 1) rates.push(`Billed for at least ${counted(chosen.minimumGuests, 'guest')}.`);
  if (chosen.minimumSpend)
    rates.push(`The food comes to at least ${shown(chosen.minimumSpend.amount, terms)}.`);
  if (chosen.hours) rates.push(`Served over ${chosen.hours}.`);
  return rates;
}

function courseView(course: CourseTerms, setting: PackageSetting): CourseView {
  return {
    name: course.name,
    eachGuest: course.eachGuest,
    note:
      course.choose !== null
        ? `You choose ${inWords(course.choose)}; everybody is served ${course.choose === 2 ? 'both' : 'what you choose'}.`
        : course.eachGuest
          ? 'Each guest chooses one.'
          : '',
    dishes: course.dishes.map((dish) => dishView(dish, course, setting)),
  };
}

function dishView(
  dish: DishTerms,
  course: CourseTerms,
  { choice, laws, columns, agreed }: PackageSetting,
): DishView {
  const picked = choice?.courses[course.name]?.includes(dish.recipe) ?? false;
  const takers = choice?.mains[course.name]?.[dish.recipe] ?? 0;
  return {
    name: dish.name,
    chosen: picked || takers > 0,
    chosenBy: takers > 0 ? counted(takers, 'guest') : '',
    perGuest: `${dish.perGuest}${insteadText(dish, course)}`,
    role: dish.role ?? '',
    marks: [...marksOf(dish.marks), ...requestMarks(dish)],
    needs: dishNeeds(dish, columns),
    allergens: allergenSentence(dish, laws),
    agreed: agreedText(agreed.get(dish.recipe), dish, laws),
  };
}

/** What was agreed of a dish that is another now, or holds something else; empty where it stands as it was agreed. */
function agreedText(agreed: DishTerms | undefined, dish: DishTerms, laws: readonly AllergenLaw[]): string {
  if (!agreed) return '';
  const words = (each: DishTerms) => {
    const marks = [...marksOf(each.marks), ...requestMarks(each)].join(', ');
    return `${each.name}${marks === '' ? '' : ` (${marks})`}, ${each.perGuest}. ${allergenSentence(each, laws)}`;
  };
  // The amount of a menu is its own; only a dish served instead brings another.
  const was = words({ ...agreed, perGuest: agreed.name === dish.name ? dish.perGuest : agreed.perGuest });
  return was === words(dish) ? '' : `As agreed: ${was}`;
}

/** `, instead of Plum slab cake for vegan, no gluten`; empty where it takes the place of none. */
function insteadText({ insteadOf }: DishTerms, { dishes }: CourseTerms): string {
  if (!insteadOf) return '';
  const other = dishes.find(({ recipe }) => recipe === insteadOf.recipe)?.name ?? 'another dish';
  const whom = insteadOf.needs ? ` for ${insteadOf.needs.join(', ')}` : ' for guests who can’t eat it';
  return `, instead of ${other}${whom}`;
}

function allergenSentence(dish: DishTerms, laws: readonly AllergenLaw[]): string {
  const contains = names(dish.contains, laws);
  const may = names(dish.mayContain, laws);
  return [
    contains.length > 0 ? `Contains ${contains.join(', ')}.` : '',
    contains.length === 0 && !dish.unsaid ? 'None of the listed allergens is an ingredient.' : '',
    may.length > 0 ? `May contain ${may.join(', ')}.` : '',
    dish.unsaid ? 'Not all of its allergens are known yet: ask us.' : '',
  ]
    .filter((text) => text !== '')
    .join(' ');
}

/** Names as the kitchen's laws use them, then what no law names but the facts state. */
export function names(texts: readonly string[], laws: readonly AllergenLaw[]): string[] {
  const allergens = texts.flatMap((text): Allergen[] => {
    const allergen = parseAllergen(text);
    return allergen.ok ? [allergen.value] : [];
  });
  return [...declaredNames(allergens, laws), ...outsideLaw(allergens, laws).map(allergenText)];
}

function inWords(count: number): string {
  return ['none', 'one', 'two', 'three', 'four', 'five', 'six'][count] ?? String(count);
}
