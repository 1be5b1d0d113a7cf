import { addOnsOf, type Choice, choosers, entryOf } from '../../engine/quote/choice.ts';
import type { AddOnTerms, CourseTerms, PackageTerms, Terms } from '../../engine/quote/terms.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { marksOf, markWords } from '../diet-marks.ts';
import { shown } from '../quote-view-of.ts';
import type { AddOnFieldView, CountFieldView, CourseFieldView, MenuFieldView } from './proposal-choice.ts';
import { addOnField, courseField, mainField, needField, peopleField } from './proposal-choice-fields.ts';
import { proposedChoice } from './proposal-choice-sides.ts';
import type { ClientTerms } from './terms.ts';

/** A menu with a field for each dish of a course that there is something to choose in, filled as chosen or proposed. */
export function menuFields(
  data: ClientTerms,
  chosen: PackageTerms,
  menu: number,
  choice: Choice,
): MenuFieldView {
  const own = choice.package === chosen.id ? choice : proposedChoice(data, chosen);
  const open = [...chosen.courses.entries()].filter(
    ([, course]) => course.eachGuest || course.choose !== null,
  );
  return {
    id: chosen.id,
    name: chosen.name,
    style: chosen.style,
    chosen: choice.package === chosen.id,
    courses: open.map(([index, course]) => courseFields(course, own, [menu, index], data.terms)),
  };
}

function courseFields(
  course: CourseTerms,
  choice: Choice,
  [menu, index]: readonly [number, number],
  { locale }: Terms,
): CourseFieldView {
  const say = wordsIn(locale);
  const taken = entryOf(choice.courses, course.name) ?? [];
  const counts = entryOf(choice.mains, course.name) ?? {};
  const byGuest = course.eachGuest;
  return {
    name: course.name,
    ask: byGuest
      ? say('form.by-guest', { n: choosers(course, choice.guests) })
      : say('dishes.course.choose', { n: course.choose ?? 0 }),
    byGuest,
    field: courseField(menu, index, 0),
    dishes: course.dishes.map((dish, place) => ({
      field: byGuest ? mainField(menu, index, place) : courseField(menu, index, place),
      name: dish.name,
      marks: marksOf(dish.marks)
        .map((mark) => markWords(mark, locale))
        .join(', '),
      value: byGuest ? String(entryOf(counts, dish.recipe) ?? 0) : taken.includes(dish.recipe) ? 'on' : '',
    })),
  };
}

/** The counts of guests. */
export function peopleFields({ guests }: Choice, say: Say): CountFieldView[] {
  const field = (group: 'adults' | 'children' | 'vendors', label: string, hint: string) => ({
    field: peopleField(group),
    label,
    hint,
    value: String(guests[group]),
  });
  return [
    field('adults', say('form.adults'), ''),
    field('children', say('form.children'), ''),
    field('vendors', say('form.vendors'), say('form.vendors.hint')),
  ];
}

/** A count for each need that the page names. */
export function needFields(data: ClientTerms, choice: Choice): CountFieldView[] {
  return data.needs.map(({ name, label }, index) => ({
    field: needField(index),
    label,
    hint: '',
    value: String(entryOf(choice.needs, name) || ''),
  }));
}

/** A field for each add-on that some menu offers, with what is taken of it; `prefix` tells the sides of the comparison from each other. */
export function addOnFields(terms: Terms, taken: Choice['addOns'], prefix = ''): AddOnFieldView[] {
  return terms.addOns.map((addOn, index) => ({
    field: addOnField(index, prefix),
    name: addOn.name,
    price: priceWords(addOn, terms),
    byHour: addOn.per === 'hour',
    value: String(entryOf(taken, addOn.id) || ''),
    menus: terms.packages
      .filter((chosen) => addOnsOf(terms, chosen).includes(addOn))
      .map(({ id }) => id)
      .join(' '),
  }));
}

function priceWords({ price, per, guests }: AddOnTerms, terms: Terms): string {
  const say = wordsIn(terms.locale);
  const sum = shown(price, terms);
  if (per === 'guest') return say('form.price.per-guest', { sum });
  if (per === 'hour') return say('form.price.per-hour', { sum });
  return per === 'guests'
    ? say('form.price.per-guests', { sum, n: guests ?? 1 })
    : say('form.price.flat', { sum });
}
