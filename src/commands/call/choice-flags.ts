import { nearest } from '../../book/findings/nearest.ts';
import { parseGuestCount } from '../../engine/measure/guest-count.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { ChoiceProblem } from '../../engine/quote/choice-problem.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { choiceAtCount } from '../../engine/quote/scaled-choice.ts';
import type { PackageTerms, Terms } from '../../engine/quote/terms.ts';
import { tidyLine } from '../../engine/text/visible-text.ts';
import { problemClause } from '../../offers/problem-words.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import type { CommandOption } from './command.ts';

/** Flags that say what a client chooses; what they leave out stays as proposed. */
export const CHOICE_OPTIONS: Record<string, CommandOption> = {
  package: { type: 'string', summary: 'a different package', value: 'ID' },
  adults: { type: 'string', summary: 'number of adults', value: 'N' },
  children: { type: 'string', summary: 'number of children', value: 'N' },
  vendors: { type: 'string', summary: 'vendor meals', value: 'N' },
  take: {
    type: 'string',
    summary: 'dishes of a course: “Mains=a,b”, or with counts “Main course=a:50,b:34”',
    value: 'COURSE=DISHES',
    multiple: true,
  },
  add: {
    type: 'string',
    summary: 'an add-on, with hours if it is priced by the hour: “extra-hour=2”',
    value: 'ADD-ON',
    multiple: true,
  },
  need: {
    type: 'string',
    summary: 'guests with a dietary need or allergy: “vegan=3”, “tree nuts=1”; 0 removes it',
    value: 'NEED=N',
    multiple: true,
  },
};

/**
 * The choice that flags ask for. `bases` are the proposed choices, one for each package, the proposed first.
 * With other counts and no counts by dish, mains keep their proportions. Fails on a package, count or form that is
 * none; whether the choice fits the terms is `checkChoice`'s to say.
 */
export function choiceFromFlags(
  terms: Terms,
  bases: readonly Choice[],
  flags: Record<string, string | boolean | string[] | undefined>,
): Parsed<Choice> {
  const [first] = bases;
  const wanted = typeof flags.package === 'string' ? flags.package : first?.package;
  const base = bases.find((each) => each.package === wanted);
  const chosen = terms.packages.find((each) => each.id === wanted);
  if (!base || !chosen) {
    const ids = terms.packages.map((each) => each.id);
    const close = nearest(wanted ?? '', ids);
    return notParsed(
      `there is no package ${wanted} in it`,
      close ? `did you mean ${close}?` : `choose one of ${ids.join(', ')}`,
    );
  }
  const guests = { ...base.guests };
  for (const group of ['adults', 'children', 'vendors'] as const) {
    const text = flags[group];
    if (typeof text !== 'string') continue;
    const count = parseGuestCount(text);
    if (!count.ok) return notParsed(`--${group}: ${count.what}`, count.wayOut);
    guests[group] = count.value;
  }
  const scaled = choiceAtCount(chosen, { ...base, guests }, atTable(guests));
  const choice = {
    ...scaled,
    guests,
    courses: { ...base.courses },
    mains: { ...scaled.mains },
    addOns: { ...base.addOns },
    needs: { ...base.needs },
  };
  for (const text of listOf(flags.take)) {
    const problem = takeDishes(choice, text, chosen);
    if (problem) return problem;
  }
  for (const text of listOf(flags.add)) {
    const [, id = '', quantity = '1'] = /^([a-z0-9-]+)(?:=(\d+(?:\.\d+)?))?$/.exec(text) ?? [];
    if (id === '')
      return notParsed(`can’t read --add ${text}`, 'write --add espresso-cart or --add extra-hour=2');
    choice.addOns[id] = Number(quantity);
  }
  for (const text of listOf(flags.need)) {
    const problem = takeNeed(choice.needs, text);
    if (problem) return problem;
  }
  return parsed(choice);
}

/** A choice that does not fit the terms, as what is refused and what would do. */
export function misfit(problem: ChoiceProblem, locale: string): { what: string; wayOut: string } {
  return {
    what: `at ${problem.path}: ${problemClause(scriptWordsIn(locale), problem)}`,
    wayOut: 'change it with --package, --adults, --children, --vendors, --take or --add',
  };
}

function takeDishes(
  choice: {
    courses: Record<string, readonly string[]>;
    mains: Record<string, Readonly<Record<string, number>>>;
  },
  text: string,
  chosen: PackageTerms,
): Parsed<never> | undefined {
  const at = text.indexOf('=');
  const course = text.slice(0, at).trim();
  const dishes = text
    .slice(at + 1)
    .split(',')
    .map((each) => each.trim());
  const names = chosen.courses.map((each) => each.name);
  if (at > 0 && !names.includes(course)) {
    const close = nearest(course, names);
    return notParsed(
      `${chosen.name} has no course “${course}”`,
      close ? `did you mean ${close}?` : `its courses are ${names.join(', ')}`,
    );
  }
  const counted = dishes.map((each) => /^([a-z0-9-]+):(\d{1,6})$/.exec(each));
  if (at > 0 && counted.every((each) => each !== null))
    choice.mains[course] = Object.fromEntries(counted.map((each) => [each[1], Number(each[2])]));
  else if (at > 0 && dishes.every((each) => /^[a-z0-9-]+$/.test(each))) choice.courses[course] = dishes;
  else
    return notParsed(
      `can’t read --take ${text}`,
      'write --take "Mains=a,b" or --take "Main course=a:50,b:34"',
    );
  return undefined;
}

function takeNeed(needs: Record<string, number>, text: string): Parsed<never> | undefined {
  const [, name = '', count = ''] = /^([^=]{1,80})=(\d{1,6})$/.exec(text) ?? [];
  const need = tidyLine(name);
  if (need === '')
    return notParsed(`can’t read --need ${text}`, 'write --need vegan=3 or --need "tree nuts=1"');
  if (Number(count) === 0) delete needs[need];
  else needs[need] = Number(count);
  return undefined;
}

function listOf(flag: string | boolean | string[] | undefined): string[] {
  return Array.isArray(flag) ? flag : typeof flag === 'string' ? [flag] : [];
}
