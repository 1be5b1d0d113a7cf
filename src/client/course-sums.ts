import { type Choice, choosers } from '../engine/quote/choice.ts';
import { shareOut } from '../engine/quote/scaled-choice.ts';
import { courseField, mainField } from '../views/client/proposal-choice-fields.ts';
import { packageOf } from '../views/client/proposal-choice-sides.ts';
import type { ClientTerms } from '../views/client/terms.ts';
import { changeText } from './changed-text.ts';
import { say } from './words.ts';

/**
 * Says under each course how far its choice is: how many dishes are chosen, or how the counts stand against the
 * guests. Where counts do not make the guests, a button offers to fit them in their proportion.
 */
export function showCourseSums(form: HTMLFormElement, data: ClientTerms, choice: Choice): void {
  const chosen = packageOf(data, choice.package);
  const menu = data.terms.packages.indexOf(chosen);
  for (const [index, course] of chosen.courses.entries()) {
    const group = form.querySelector(`[data-course="${courseField(menu, index, 0)}"]`);
    const place = group?.querySelector('[data-part="sum"]');
    if (!group || !place) continue;
    if (course.choose !== null) {
      changeText(
        place,
        say('course.chosen', { n: choice.courses[course.name]?.length ?? 0, all: course.choose }),
      );
      continue;
    }
    const due = choosers(course, choice.guests);
    const sum = Object.values(choice.mains[course.name] ?? {}).reduce((all, count) => all + count, 0);
    const words = sum === due ? 'course.even' : sum < due ? 'course.missing' : 'course.too-many';
    changeText(place, say(words, { sum, due, gap: Math.abs(due - sum) }));
    const fit = group.querySelector<HTMLButtonElement>('[data-fit]');
    if (fit) {
      fit.disabled = sum === due;
      fit.onclick = () => fitCounts(form, data, menu, index, choice);
    }
  }
}

function fitCounts(
  form: HTMLFormElement,
  data: ClientTerms,
  menu: number,
  index: number,
  choice: Choice,
): void {
  const course = data.terms.packages[menu]?.courses[index];
  if (!course) return;
  const counts = choice.mains[course.name] ?? {};
  const shares = shareOut(
    choosers(course, choice.guests),
    course.dishes.map(({ recipe }) => counts[recipe] ?? 0),
  );
  for (const [dish, share] of shares.entries()) {
    const field = form.elements.namedItem(mainField(menu, index, dish));
    if (field instanceof HTMLInputElement) field.value = String(share);
  }
  form.dispatchEvent(new Event('input', { bubbles: true }));
}
