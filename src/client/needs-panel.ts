import type { DishRole } from '../engine/course/dish-role.ts';
import type { ServiceStyle } from '../engine/course/service-style.ts';
import { type CourseForNeed, coverageWords } from '../views/coverage-words.ts';
import type { ScriptKey } from '../words/script-words.ts';
import { changeText } from './changed-text.ts';
import { type NeedAnswer, needAnswer } from './need-answer.ts';
import { say } from './words.ts';

const WORDS: Readonly<Record<NeedAnswer, ScriptKey>> = {
  suits: 'need.suits',
  'on request': 'need.on-request',
  not: 'need.not',
  ask: 'need.ask',
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
      return say('need.sums', {
        menu: menu.querySelector('h3')?.textContent ?? '',
        fed: coverageWords(say, menu.dataset.style as ServiceStyle, courses).words,
        suit: count('suits'),
        all: dishes.length,
        request: count('on request'),
        ask: count('ask'),
      });
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
  words.textContent = say(WORDS[answer]);
  dish.dataset.answer = answer;
  return answer;
}
