import type { ChoiceProblem } from '../engine/quote/choice-problem.ts';
import type { TextProblem } from '../engine/text/visible-text.ts';
import type { ScriptSay } from '../words/script-words.ts';
import type { DroppedNeed } from './answers/client-may.ts';

/** Why a choice cannot be accepted, as a sentence to the client: on the page, from the receiver and in commands. */
export function problemWords(say: ScriptSay, problem: ChoiceProblem): string {
  switch (problem.of) {
    case 'no such menu':
      return say('problem.no-menu', { menus: problem.menus.join(', ') });
    case 'no count of people':
      return say('problem.people', { group: problem.group, most: problem.most });
    case 'nobody comes':
      return say('problem.nobody');
    case 'beyond prices':
      return say('problem.prices', { menu: problem.menu, most: problem.most, guests: problem.guests });
    case 'no such course':
      return say(problem.eachGuest ? 'problem.no-mains' : 'problem.no-course', { menu: problem.menu });
    case 'dish twice':
      return say('problem.twice', { course: problem.course });
    case 'dish not offered':
      return say(problem.eachGuest ? 'problem.no-main' : 'problem.no-dish', { course: problem.course });
    case 'dishes to choose':
      return say('problem.choose', { due: problem.due, course: problem.course, chosen: problem.chosen });
    case 'no count of a dish':
      return say('problem.dish-count');
    case 'counts do not add up': {
      const { course, due, sum } = problem;
      return sum < due
        ? say('problem.too-few', { course, due, gap: due - sum })
        : say('problem.too-many', { course, due, gap: sum - due });
    }
    case 'no such add-on':
      return say('problem.no-add-on');
    case 'no such hours':
      return say('problem.hours', { most: problem.most, addOn: problem.addOn });
    case 'more than once':
      return say('problem.taken', { addOn: problem.addOn });
    case 'no count of a need':
      return say('problem.need-count', { need: problem.need });
    case 'name of a need':
      return say('problem.need-name', wrongSpoken(problem.wrong));
    case 'more with a need':
      return say('problem.need-guests', {
        need: problem.need,
        guests: problem.guests,
        people: problem.people,
      });
    case 'crew':
      return say('problem.crew', { recorded: problem.recorded, given: problem.given });
    case 'beyond asking':
      return say('problem.asking', { most: problem.most, guests: problem.guests });
    case 'many vendors':
      return say('problem.vendors', { vendors: problem.vendors, guests: problem.guests });
  }
}

/** What is wrong with a text, as messages speak of it. */
export function wrongSpoken(wrong: TextProblem): { readonly wrong: string; readonly sign: string } {
  return { wrong: wrong.is, sign: wrong.is === 'hidden' ? wrong.sign : '' };
}

/** `vegan + tree nuts (1 guest), celery (2 guests)`. */
export function droppedWords(say: ScriptSay, dropped: readonly DroppedNeed[]): string {
  return dropped.map(({ name, guests }) => say('dropped.need', { need: name, n: guests })).join(', ');
}
