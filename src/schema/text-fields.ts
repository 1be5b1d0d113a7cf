import { z } from 'zod';

/*
 * Fields of the caterer's own files. Every scalar there is text, which one grammar reads later; a schema says which
 * fields there are, which are needed, and what each means. Shorthand is written out before validating, never by a
 * union of schemas: a slip then has one message instead of one for each branch.
 */

/** One line of text. `example` is shown to whoever left the field out. */
export function line(meaning: string, example: string) {
  return z
    .string()
    .min(1)
    .max(300)
    .meta({ description: meaning, examples: [example] });
}

/** Running text, up to 20,000 characters. */
export function prose(meaning: string) {
  return z.string().min(1).max(20_000).meta({ description: meaning });
}

/** `yes` or `no`. */
export function yesNo(meaning: string) {
  return z.enum(['yes', 'no']).meta({ description: meaning, examples: ['yes'] });
}

/** One of a few words. */
export function oneOf<const W extends readonly [string, ...string[]]>(words: W, meaning: string) {
  return z.enum(words).meta({ description: meaning, examples: [words[0]] });
}

/** A list of words; one text with commas stands for it. */
export function list(meaning: string, example: string) {
  const entries = z.array(z.string().min(1).max(300)).min(1).max(200);
  return z.preprocess(splitAtCommas, entries).meta({ description: meaning, examples: [example] });
}

/** The opposite: a text that a grammar reads with its commas; a list of words stands for it. */
export function commaLine(meaning: string, example: string) {
  return z.preprocess(joinWithCommas, line(meaning, example));
}

/** A mapping from names of the author's own to values of one kind. */
export function mappingOf<V extends z.ZodType>(value: V, meaning: string) {
  return z.record(z.string().min(1).max(120), value).meta({ description: meaning });
}

/** A mapping from ids to values of one kind. */
export function byId<V extends z.ZodType>(value: V, meaning: string) {
  return z.record(id, value).meta({ description: meaning });
}

/** A mapping with known fields, all others refused, for which its main field's plain text may stand. */
export function orPlain<V extends z.ZodType>(mainField: string, mapping: V) {
  return z.preprocess((raw) => (typeof raw === 'string' ? { [mainField]: raw } : raw), mapping);
}

/** An id: lower-case words joined by hyphens. */
const id = z
  .string()
  .max(60)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'write ids in lower-case words joined by hyphens');

function splitAtCommas(raw: unknown): unknown {
  return typeof raw === 'string' ? raw.split(',').map((word) => word.trim()) : raw;
}

function joinWithCommas(raw: unknown): unknown {
  return Array.isArray(raw) && raw.every((word) => typeof word === 'string') ? raw.join(', ') : raw;
}

/** A value for each service style that has one. */
export function byStyle(meaning: string, example: string) {
  const value = line(meaning, example).optional();
  return z.strictObject({ plated: value, buffet: value, 'family style': value, stations: value });
}
