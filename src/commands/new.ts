import { join } from 'node:path';
import { z } from 'zod';
import type { Book } from '../book/book.ts';
import { isReservedName } from '../book/files/is-id.ts';
import { nearest } from '../book/findings/nearest.ts';
import { addDays, type Day, parseDay } from '../engine/calendar/day.ts';
import { parseClock } from '../engine/kitchen/parse-clock.ts';
import { parseGuestCount } from '../engine/measure/guest-count.ts';
import { newLink, type ProposalStart, proposalText } from '../offers/issue/proposal-text.ts';
import { writeTextOnce } from '../offers/write-once.ts';
import { ask, type Question } from './ask.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';

const FLAGS: Record<string, string> = {
  client: 'who it is for',
  email: 'the client’s address',
  occasion: 'the occasion',
  date: 'the day of the event, YYYY-MM-DD',
  'serve-at': 'when the food is served, such as 5:30 pm or 17:30',
  place: 'one of the kitchen’s places',
  'valid-until': 'the last day to accept',
  adults: 'number of adults',
  children: 'number of children',
  packages: 'packages to offer, separated by commas, the proposed one first',
};

/** Writes a new proposal with its link, from flags or by asking. */
export const command: Command = {
  summary: 'start a proposal, with its secret link',
  usage: 'ID [--client NAME] [--date DATE] …',
  options: Object.fromEntries(
    Object.entries(FLAGS).map(([name, summary]) => [
      name,
      { type: 'string' as const, summary, value: 'TEXT' },
    ]),
  ),
  async run(call) {
    const [id, ...more] = call.args;
    if (id === undefined || more.length > 0)
      return wrongCall(call, 'Give the proposal an id: new harbour-wedding.');
    if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id) || id.length > 60)
      return wrongCall(
        call,
        `The id ${id} must be lower-case words joined by hyphens, such as harbour-wedding.`,
      );
    if (isReservedName(id))
      return wrongCall(
        call,
        `Windows reserves the name ${id}, so no file there can have it; add a word, such as ${id}-supper.`,
      );
    const open = await openBook(call);
    if (!open) return 1;
    const given = Object.fromEntries(
      Object.entries(call.flags).flatMap(([key, value]) =>
        typeof value === 'string' ? [[key, value.trim()] as const] : [],
      ),
    );
    const questions = questionsFor(open.book, open.today, given.date);
    for (const question of questions) {
      const value = given[question.key];
      const wrong = value === undefined ? undefined : question.problem(value);
      if (wrong !== undefined) return wrongCall(call, `--${question.key}: ${wrong}`);
    }
    const missing = questions.filter(({ key }) => given[key] === undefined);
    if (!process.stdin.isTTY) {
      const needed = missing.filter(({ fallback }) => fallback === undefined).map(({ key }) => `--${key}`);
      if (needed.length > 0)
        return wrongCall(call, `Not running in a terminal, so give ${needed.join(', ')}.`);
    }
    const asked = process.stdin.isTTY
      ? await ask(missing)
      : Object.fromEntries(missing.map(({ key, fallback }) => [key, fallback ?? '']));
    if (!asked) {
      call.complain('Stopped; nothing was written.');
      return 1;
    }
    const file = join(call.contentDir, 'proposals', `${id}.md`);
    const link = newLink();
    if (!(await writeTextOnce(file, proposalText(startOf({ ...asked, ...given }), link))))
      return refused(call, {
        what: `there is already a proposal ${id}`,
        wayOut: 'choose another id, or edit that proposal',
      });
    call.write(
      call.json
        ? JSON.stringify({ id, file, link })
        : `Written: proposals/${id}.md. Write the letter below the data, then run: issue ${id}.`,
    );
    return 0;
  },
};

function startOf(answers: Record<string, string | undefined>): ProposalStart {
  const answer = (key: string) => answers[key] ?? '';
  return {
    client: answer('client'),
    email: answer('email'),
    occasion: answer('occasion'),
    date: answer('date'),
    serveAt: answer('serve-at'),
    place: answer('place'),
    validUntil: answer('valid-until'),
    adults: answer('adults'),
    children: answer('children'),
    packages: answer('packages'),
  };
}

function questionsFor(book: Book, today: Day, eventDate: string | undefined): Question[] {
  const inThreeWeeks = addDays(today, 21);
  const validUntil = eventDate !== undefined && eventDate < inThreeWeeks ? eventDate : inThreeWeeks;
  const some = (answer: string) => (answer === '' ? 'Please enter something.' : undefined);
  const date = (answer: string) => {
    const day = parseDay(answer);
    return day.ok ? undefined : `${day.what}; ${day.wayOut}.`;
  };
  const count = (answer: string) => {
    const guests = parseGuestCount(answer);
    return guests.ok ? undefined : `${guests.what}; ${guests.wayOut}.`;
  };
  const someOf = (known: readonly string[]) => (answer: string) => {
    const chosen = answer.split(',').map((each) => each.trim());
    if (new Set(chosen).size < chosen.length) return 'Name each one once.';
    const unknown = chosen.find((each) => !known.includes(each));
    if (unknown === undefined) return undefined;
    const close = nearest(unknown, known);
    return `“${unknown}” is not known; ${close ? `did you mean ${close}?` : `choose from ${known.join(', ')}.`}`;
  };
  const oneOf = (known: readonly string[]) => (answer: string) =>
    known.includes(answer) || !answer.includes(',') ? someOf(known)(answer) : 'Name one only.';
  const places = [...book.kitchen.places.keys()];
  const packages = [...book.packages.keys()];
  const question = (
    key: string,
    text: string,
    fallback: string | undefined,
    problem: Question['problem'],
  ) => ({ key, text, fallback, problem });
  return [
    question('client', 'Client', undefined, some),
    question('email', 'Client’s email', '', (answer) =>
      answer === '' || z.email().max(254).safeParse(answer).success
        ? undefined
        : 'Write it as name@example.org, or leave it blank.',
    ),
    question('occasion', 'Occasion', undefined, some),
    question('date', 'Date (YYYY-MM-DD)', undefined, date),
    question('serve-at', 'Food is served at', '18:00', (answer) =>
      parseClock(answer).ok ? undefined : 'Write the time such as 5:30 pm or 17:30.',
    ),
    question('place', `Place (${places.join(', ')})`, places[0], oneOf(places)),
    question('valid-until', 'Valid until (YYYY-MM-DD)', validUntil, date),
    question('adults', 'Adults', undefined, count),
    question('children', 'Children', '0', count),
    question(
      'packages',
      `Packages, the proposed one first (${packages.join(', ')})`,
      undefined,
      someOf(packages),
    ),
  ];
}
