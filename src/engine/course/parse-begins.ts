import { type Minutes, minutes, parseDuration } from '../measure/duration.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

const AT_ONCE = /^(0( ?min)?|at serving)( after)?$/i;

/** Reads when a course begins after serving does: `45 min after`, `45 min`, `1 h 15 min after`, or `0 min` for at once. */
export function parseBegins(text: string): Parsed<Minutes> {
  const words = text.trim().replace(/\s+/g, ' ');
  if (AT_ONCE.test(words)) return parsed(minutes(0));
  const after = parseDuration(words.replace(/ after$/i, ''));
  return after.ok
    ? after
    : notParsed(`“${text.slice(0, 40)}” is not a time after serving starts`, 'write it such as 45 min after');
}
