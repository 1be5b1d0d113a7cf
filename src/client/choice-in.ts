import type { Choice } from '../engine/quote/choice.ts';
import type { CourseTerms } from '../engine/quote/terms.ts';
import { textProblem, tidyLine } from '../engine/text/visible-text.ts';
import { answerProblems } from '../offers/answers/client-may.ts';
import { problemWords } from '../offers/problem-words.ts';
import {
  addOnField,
  courseField,
  mainField,
  needField,
  OTHER_NEEDS,
  otherNeedField,
  PACKAGE_FIELD,
  PEOPLE,
  peopleField,
} from '../views/client/proposal-choice-fields.ts';
import { packageOf } from '../views/client/proposal-choice-sides.ts';
import type { ClientTerms } from '../views/client/terms.ts';
import type { Texts } from './form-texts.ts';
import { say } from './words.ts';

/** What is wrong with a field, as a sentence. */
export interface FieldProblem {
  readonly field: string;
  readonly what: string;
}

/** A choice read from a form, with what could not be read; there the choice has nothing. */
export interface ReadChoice {
  readonly choice: Choice;
  readonly unread: readonly FieldProblem[];
}

/** The choice that a form's texts make. */
export function choiceIn(data: ClientTerms, texts: Texts): ReadChoice {
  const unread: FieldProblem[] = [];
  const count = (field: string): number => {
    const text = texts.get(field)?.trim() ?? '';
    if (text === '') return 0;
    if (/^\d{1,6}$/.test(text)) return Number(text);
    unread.push({ field, what: say('ask.number') });
    return 0;
  };
  const chosen = packageOf(data, texts.get(PACKAGE_FIELD) ?? '');
  const menu = data.terms.packages.indexOf(chosen);
  const [adults = 0, children = 0, vendors = 0] = PEOPLE.map((group) => count(peopleField(group)));
  const choice: Choice = {
    package: chosen.id,
    guests: { adults, children, vendors, staff: data.staff },
    courses: byCourse(
      chosen.courses,
      ({ choose }) => choose !== null,
      (course, index) =>
        course.dishes
          .filter((_, dish) => texts.get(courseField(menu, index, dish)) === 'on')
          .map(({ recipe }) => recipe),
    ),
    mains: byCourse(
      chosen.courses,
      ({ eachGuest }) => eachGuest,
      (course, index) =>
        Object.fromEntries(
          course.dishes.map(({ recipe }, dish) => [recipe, count(mainField(menu, index, dish))]),
        ),
    ),
    addOns: addOnsIn(data, texts, chosen.addOns, unread),
    needs: needsIn(data, texts, count, unread),
  };
  return { choice, unread };
}

/** Everything that keeps a form's choice from being answered with, each at its field. */
export function choiceProblems(data: ClientTerms, texts: Texts): FieldProblem[] {
  const { choice, unread } = choiceIn(data, texts);
  if (unread.length > 0) return [...unread];
  return answerProblems(data, choice, data.accepted?.choice.guests).map((problem) => ({
    field: fieldAt(data, texts, choice, problem.path),
    what: problemWords(say, problem),
  }));
}

function byCourse<T>(
  courses: readonly CourseTerms[],
  asked: (course: CourseTerms) => boolean,
  answer: (course: CourseTerms, index: number) => T,
): Record<string, T> {
  return Object.fromEntries(
    courses.flatMap((course, index) => (asked(course) ? [[course.name, answer(course, index)]] : [])),
  );
}

function addOnsIn(
  { terms }: ClientTerms,
  texts: Texts,
  suited: readonly string[] | undefined,
  unread: FieldProblem[],
): Record<string, number> {
  return Object.fromEntries(
    terms.addOns.flatMap(({ id, per }, index): [string, number][] => {
      const field = addOnField(index);
      const text = texts.get(field)?.trim() ?? '';
      if (text === '' || (suited && !suited.includes(id))) return [];
      if (per !== 'hour') return [[id, 1]];
      // With a point or a comma, whatever the page's language: no thousands are that short.
      const hours = /^\d{1,2}([.,]\d{1,2})?$/.test(text) ? Number(text.replace(',', '.')) : -1;
      if (hours < 0) unread.push({ field, what: say('ask.hours') });
      return hours > 0 ? [[id, hours]] : [];
    }),
  );
}

function needsIn(
  data: ClientTerms,
  texts: Texts,
  count: (field: string) => number,
  unread: FieldProblem[],
): Record<string, number> {
  const needs = new Map<string, number>();
  const add = (name: string, guests: number) => {
    if (guests > 0) needs.set(name, (needs.get(name) ?? 0) + guests);
  };
  for (const [index, { name }] of data.needs.entries()) add(name, count(needField(index)));
  for (let index = 0; index < OTHER_NEEDS; index += 1) {
    const name = tidyLine(texts.get(otherNeedField(index, 'name')) ?? '');
    const guests = count(otherNeedField(index, 'count'));
    const field = otherNeedField(index, name === '' ? 'name' : 'count');
    const problem = textProblem(name);
    if (name === '' && guests > 0) unread.push({ field, what: say('ask.need') });
    else if (name !== '' && guests === 0) unread.push({ field, what: say('ask.need-count', { need: name }) });
    else if (problem !== undefined)
      unread.push({
        field: otherNeedField(index, 'name'),
        what: say('ask.need-again', problem),
      });
    // The one name that JSON readers take for something else.
    else if (name === '__proto__')
      unread.push({ field: otherNeedField(index, 'name'), what: say('ask.need-plain') });
    else add(name, guests);
  }
  return Object.fromEntries(needs);
}

/** The field that a problem's path in the choice stands for. */
function fieldAt(data: ClientTerms, texts: Texts, choice: Choice, path: string): string {
  const chosen = packageOf(data, choice.package);
  const menu = data.terms.packages.indexOf(chosen);
  for (const [index, { name }] of chosen.courses.entries()) {
    if (path === `courses.${name}` || path === `mains.${name}` || path.startsWith(`mains.${name}.`))
      return courseField(menu, index, 0);
  }
  const addOn = data.terms.addOns.findIndex(({ id }) => path === `addOns.${id}`);
  if (addOn !== -1) return addOnField(addOn);
  const need = data.needs.findIndex(({ name }) => path === `needs.${name}`);
  if (need !== -1) return needField(need);
  if (!path.startsWith('needs.')) return path === 'package' ? PACKAGE_FIELD : path;
  const others = Array.from({ length: OTHER_NEEDS }, (_, index) => index);
  const other = others.find(
    (index) => path === `needs.${tidyLine(texts.get(otherNeedField(index, 'name')) ?? '')}`,
  );
  return otherNeedField(other ?? 0, 'count');
}
