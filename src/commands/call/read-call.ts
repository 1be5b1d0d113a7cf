import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { nearest } from '../../book/findings/nearest.ts';
import { parseDay } from '../../engine/calendar/day.ts';
import type { Call, Command } from './command.ts';
import { sharedOptions } from './shared-options.ts';

/** What was typed, understood: everything of a `Call` but its two outputs. */
export type ReadCall = Omit<Call, 'write' | 'complain'> & { help: boolean };

/** Where the call comes from. */
export interface Surroundings {
  /** The folder of Salver itself; its `content` and `dist` are the defaults. */
  projectDir: string;
  /** The folder the caller stands in; paths on the command line count from there. */
  callerDir: string;
}

/**
 * Reads the words after a command's name. Returns the sentence to say when a flag is unknown, lacks its value,
 * has one it does not take, or is given twice, and when `--today` is no date.
 */
export function readCall(
  words: string[],
  { options }: Pick<Command, 'options'>,
  { projectDir, callerDir }: Surroundings,
): ReadCall | { sentence: string } {
  const known = { ...options, ...sharedOptions };
  const { tokens } = parseArgs({
    args: words.map((word) => (isNegative(word) ? `${NEGATIVE}${word}` : word)),
    options: Object.fromEntries(Object.entries(known).map(([name, { type }]) => [name, { type }])),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const flags: Call['flags'] = {};
  const args: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') args.push(asTyped(token.value));
    if (token.kind !== 'option') continue;
    const option = Object.hasOwn(known, token.name) ? known[token.name] : undefined;
    if (!option) {
      const near = nearest(token.name, Object.keys(known));
      const way = near ? `did you mean '--${near}'?` : '`--help` lists the flags.';
      return { sentence: `There is no flag '${token.rawName}'; ${way}` };
    }
    if (option.type === 'boolean') {
      if (token.value !== undefined) return { sentence: `'--${token.name}' takes no value.` };
      flags[token.name] = true;
      continue;
    }
    if (token.value === undefined || (!token.inlineValue && token.value.startsWith('--'))) {
      return {
        sentence: `'--${token.name}' needs a value, as in '--${token.name} ${option.value ?? 'TEXT'}'.`,
      };
    }
    if (option.multiple) {
      const earlier = flags[token.name];
      flags[token.name] = [...(Array.isArray(earlier) ? earlier : []), asTyped(token.value)];
    } else if (flags[token.name] !== undefined) {
      return { sentence: `'--${token.name}' is given twice; give it once.` };
    } else {
      flags[token.name] = asTyped(token.value);
    }
  }
  const { content, out, today, json, help, ...own } = flags;
  const day = typeof today === 'string' ? parseDay(today) : undefined;
  if (day && !day.ok) return { sentence: `'--today': ${day.what}; ${day.wayOut}.` };
  return {
    args,
    flags: own,
    contentDir: typeof content === 'string' ? resolve(callerDir, content) : resolve(projectDir, 'content'),
    outDir: typeof out === 'string' ? resolve(callerDir, out) : resolve(projectDir, 'dist'),
    today: day?.value,
    json: json === true,
    help: help === true,
  };
}

/** Stands before a negative number while the call is read, since a hyphen begins a flag. No shell passes it on. */
const NEGATIVE = '\0';

/** `-5`, `-$5.00`: no flag begins so. */
const isNegative = (word: string) => /^-\p{Sc}?\d/u.test(word);

const asTyped = (word: string) => (word.startsWith(NEGATIVE) ? word.slice(NEGATIVE.length) : word);
