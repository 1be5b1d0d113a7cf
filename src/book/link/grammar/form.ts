import type { z } from 'zod';
import { asId } from '../../files/as-id.ts';
import type { Path } from '../../files/place-of.ts';
import type { FindingCode } from '../../findings/catalogue.ts';
import { nearest } from '../../findings/nearest.ts';
import { knownField } from './known-fields.ts';
import type { Reading } from './reading.ts';

/** What a schema has against some data, in the words of a finding. Paths are those of the data written out. */
export interface FormProblem {
  readonly code: FindingCode;
  readonly path: Path;
  readonly part: 'key' | 'value';
  readonly what: string;
  readonly wayOut: string;
}

/** The data in their checked form, or all that is wrong with it. */
export type Formed<T> = { readonly value: T } | { readonly problems: readonly FormProblem[] };

/** Checks the form of data by their schema. */
export function formed<T>(schema: z.ZodType<T>, data: unknown): Formed<T> {
  const result = schema.safeParse(data, { reportInput: true });
  if (result.success) return { value: result.data };
  return { problems: result.error.issues.flatMap((issue) => problemsOf(schema, issue)) };
}

/** Checks the form of an item's data; each problem is a finding, unless reading the file has told it already. */
export function readForm<T>(reading: Reading, schema: z.ZodType<T>, data: unknown): T | undefined {
  const result = formed(schema, data);
  if ('value' in result) return result.value;
  sayProblems(reading, result.problems);
  return undefined;
}

/** Tells the problems of an item's form. */
export function sayProblems(reading: Reading, problems: readonly FormProblem[]): void {
  for (const { code, path, what, wayOut, part } of problems) {
    if (reading.isReported(path))
      reading.spoil(`a value is missing or unreadable in ${reading.placeOf(path).file}`);
    else reading.say(code, path, what, wayOut, part);
  }
}

function problemsOf(schema: z.ZodType, issue: z.core.$ZodIssue): FormProblem[] {
  const path = issue.path as Path;
  if (issue.input === undefined && path.length > 0 && NEEDS_VALUE.has(issue.code))
    return [missingField(schema, path)];
  const at = (
    code: FindingCode,
    what: string,
    wayOut: string,
    part: 'key' | 'value' = 'value',
  ): FormProblem[] => [{ code, path, part, what, wayOut }];
  const name = fieldName(path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownField(schema, path, key));
    case 'invalid_type':
      return at(
        'wrong-form',
        `${name} is ${formOf(issue.input)}`,
        `write ${EXPECTED[issue.expected] ?? issue.expected}`,
      );
    case 'invalid_value': {
      const words = issue.values.map(String);
      const word = formOf(issue.input) === 'one text' ? String(issue.input) : formOf(issue.input);
      const near = nearest(word.slice(0, 80), words);
      const known =
        near === undefined
          ? `write ${words.length === 1 ? '' : 'one of '}${words.join(', ')}`
          : `did you mean ${near}?`;
      return at('unknown-word', `${name} can’t be “${word.slice(0, 80)}”`, known);
    }
    case 'too_small':
      return at('no-value', `${name} is empty`, `write it, or leave the field out`);
    case 'too_big':
      return at('too-long', `${name} is longer than ${issue.maximum}`, 'use fewer words or entries');
    case 'invalid_key':
      return at(
        'bad-id',
        `“${String(path.at(-1)).slice(0, 80)}” can’t be an id`,
        `write it as ${asId(String(path.at(-1))) || 'lower-case words joined by hyphens'}`,
        'key',
      );
    default:
      return at('not-understood', `${name} is not in the right form`, issue.message);
  }
}

/** The kinds of problems that a field which is not there has. */
const NEEDS_VALUE: ReadonlySet<string> = new Set(['invalid_type', 'invalid_value', 'invalid_union']);

const EXPECTED: Readonly<Record<string, string>> = {
  string: 'one text',
  object: 'a mapping: one field per line below, indented',
  record: 'a mapping: one name per line below, indented',
  array: 'a list: one entry per line below, after a hyphen',
};

function unknownField(schema: z.ZodType, path: Path, key: string): FormProblem {
  const { fields } = knownField(schema, path);
  const known = fields.filter((field) => field !== 'kind');
  const near = nearest(key.slice(0, 80), known);
  const wayOut = near === undefined ? `the fields here are ${known.join(', ')}` : `did you mean ${near}?`;
  const what = `there is no field “${key.slice(0, 80)}” here`;
  return { code: 'unknown-field', path: [...path, key], part: 'key', what, wayOut };
}

function missingField(schema: z.ZodType, path: Path): FormProblem {
  const { meaning, example } = knownField(schema, path);
  const field = String(path.at(-1));
  const written = example === undefined ? `write “${field}:”` : `write it, such as “${field}: ${example}”`;
  return {
    code: 'missing-field',
    path,
    part: 'value',
    what: `“${field}” is missing`,
    wayOut: meaning === undefined ? written : `${written} (${meaning})`,
  };
}

function fieldName(path: Path): string {
  const name = path.findLast((step) => typeof step === 'string');
  const index = path.at(-1);
  if (name === undefined) return 'the file';
  return typeof index === 'number' ? `entry ${index + 1} of “${name}”` : `“${name}”`;
}

function formOf(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' && value !== null ? 'a mapping' : 'one text';
}
