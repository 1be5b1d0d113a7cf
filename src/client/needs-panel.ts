import type { DishRole } from '../engine/course/dish-role.ts';
import type { ServiceStyle } from '../engine/course/service-style.ts';
import { type CourseForNeed, coverageWords } from '../views/coverage-words.ts';
import { changeText } from './changed-text.ts';
import { type NeedAnswer, needAnswer } from './need-answer.ts';

const WORDS: Readonly<Record<NeedAnswer, string>> = {
  suits: 'Suits as it is',
  'on request': 'On request, made apart',
  not: 'Not for you',
  ask: 'Ask us',
};

/** Lets a guest tick what he or she needs; every dish of the menus then says what it is for them. */
export function needsPanel(root: Document): void {
  const panel = root.querySelector('[data-part="needs"]');
  const said = panel?.querySelector('[role="status"]');
  if (!panel || !said) return;
  const boxes = [...panel.querySelectorAll('input')];
  panel.addEventListener('change', show);
  // A browser that comes back to a page ticks again what was ticked.
  show();

  function show(): void {
    const chosen = boxes.flatMap((box, index) => (box.checked ? [index] : []));
    const sums = [...root.querySelectorAll<HTMLElement>('.menu')].map((menu) => {
      const dishes = [...menu.querySelectorAll<HTMLElement>('[data-suits]')];
      const answered = new Map(dishes.map((dish) => [dish, answerIn(dish, chosen)]));
      const courses = [...menu.querySelectorAll<HTMLElement>('.course')].map((course) =>
        courseFor(course, answered),
      );
      const answers = [...answered.values()];
      const count = (wanted: NeedAnswer) => answers.filter((answer) => answer === wanted).length;
      const [suit, apart, ask] = [count('suits'), count('on request'), count('ask')];
      const parts = [
        `${suit} of ${dishes.length} dishes ${suit === 1 ? 'suits' : 'suit'}`,
        apart > 0 ? `${apart} on request` : '',
        ask > 0 ? `${ask} to ask us about` : '',
      ];
      const { words } = coverageWords(menu.dataset.style as ServiceStyle, courses);
      return `${menu.querySelector('h3')?.textContent}: ${words}; ${parts.filter(Boolean).join(', ')}.`;
    });
    changeText(said as Element, chosen.length > 0 ? sums.join(' ') : '');
  }
}

/** A course of a menu as the page shows it, with what its dishes are for whoever has the needs chosen. */
function courseFor(
  course: HTMLElement,
  answered: ReadonlyMap<HTMLElement, NeedAnswer | undefined>,
): CourseForNeed {
  const dishes = [...course.querySelectorAll<HTMLElement>('[data-suits]')];
  return {
    name: course.querySelector('h4')?.textContent ?? '',
    eachGuest: course.dataset.each === 'guest',
    dishes: dishes.map((dish) => {
      const answer = answered.get(dish);
      return {
        name: dish.querySelector('.dish-name')?.textContent ?? '',
        role: dish.dataset.role as DishRole | undefined,
        feeds: answer === 'suits' || answer === 'on request',
        mayFeed: answer === 'ask',
      };
    }),
  };
}

function answerIn(dish: HTMLElement, chosen: readonly number[]): NeedAnswer | undefined {
  const { suits = '', made = '' } = dish.dataset;
  const known = dish.querySelector<HTMLElement>('.need-answer');
  if (chosen.length === 0) {
    known?.remove();
    delete dish.dataset.answer;
    return undefined;
  }
  const answer = needAnswer(suits, made, chosen);
  const words = known ?? dish.ownerDocument.createElement('p');
  if (!known) {
    words.className = 'need-answer';
    dish.querySelector('.dish-name')?.after(words);
  }
  words.textContent = WORDS[answer];
  dish.dataset.answer = answer;
  return answer;
}
