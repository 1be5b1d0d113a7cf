import { readdirSync, readFileSync } from 'node:fs';
import { parseDocument } from 'yaml';

/** A food as its file writes it: every scalar still text. */
export interface WrittenFood {
  readonly id: string;
  readonly file: string;
  readonly fields: Readonly<Record<string, unknown>>;
}

const FOLDER = new URL('../../../src/store-room/', import.meta.url);

/** The store-room's files, by name. */
export function storeRoomFiles(): string[] {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith('.yaml'))
    .sort();
}

/** The foods of one file, in its order. Throws on anything that is not a mapping in the failsafe schema. */
export function foodsIn(file: string): WrittenFood[] {
  const document = parseDocument(readFileSync(new URL(file, FOLDER), 'utf8'), { schema: 'failsafe' });
  const problems = [...document.errors, ...document.warnings];
  if (problems.length > 0)
    throw new Error(`${file}: ${problems.map((problem) => problem.message).join('; ')}`);
  const foods = document.toJS() as Record<string, Record<string, unknown>>;
  return Object.entries(foods).map(([id, fields]) => ({ id, file, fields }));
}

/** Every food of the store-room. */
export function allFoods(): WrittenFood[] {
  return storeRoomFiles().flatMap(foodsIn);
}

/** A field that is a list of words written as one text with commas; `none` is the empty list. */
export function words(field: unknown): string[] {
  if (typeof field !== 'string') throw new Error(`expected text, found ${JSON.stringify(field)}`);
  return field === 'none' ? [] : field.split(',').map((word) => word.trim());
}

/** The percentage of a yield as a number of hundredths of a percent: `81.30 %` is 8130n. */
export function hundredths(share: unknown): bigint {
  const found = /^(\d{1,3})(?:\.(\d{1,2}))? %$/.exec(String(share));
  if (!found) throw new Error(`${JSON.stringify(share)} is no percentage`);
  return BigInt(found[1] ?? '') * 100n + BigInt((found[2] ?? '').padEnd(2, '0'));
}
