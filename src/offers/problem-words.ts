import type { ChoiceProblem } from '../engine/quote/choice-problem.ts';
import type { ScriptSay } from '../words/script-words.ts';
import type { DroppedNeed } from './answers/client-may.ts';

/** Why a choice cannot be accepted, as a sentence to the client: on the page, from the receiver and in commands. */
export function problemWords(say: ScriptSay, { code, values }: ChoiceProblem): string {
  return say(code, values);
}

/** The same inside of a sentence that goes on: without full stop. */
export function problemClause(say: ScriptSay, problem: ChoiceProblem): string {
  return problemWords(say, problem).replace(/\.$/, '');
}

/** `vegan + tree nuts (1 guest), celery (2 guests)`. */
export function droppedWords(say: ScriptSay, dropped: readonly DroppedNeed[]): string {
  return dropped.map(({ name, guests }) => say('dropped.need', { need: name, n: guests })).join(', ');
}
