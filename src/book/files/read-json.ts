import type { z } from 'zod';
import { type FormFault, formFault } from '../../schema/form-fault.ts';
import { newerVersion, USE_NEWER } from '../../schema/newer-version.ts';
import { type Finding, finding, type Place } from '../findings/finding.ts';
import { readYaml } from './yaml-source.ts';

/** What a file that Salver wrote holds, or why it cannot be used. */
export type ReadJson<T> = { readonly value: T } | { readonly problem: Finding };

const WAY_OUT = 'restore the file from your history or backup; Salver wrote it and it is not edited by hand';

/** Reads a JSON file in its form. The first thing wrong is told, at its place. */
export function readJson<T>(file: string, text: string, schema: z.ZodType<T>): ReadJson<T> {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    const place = placeOfSyntax(file, text, String(error));
    return { problem: finding('record-form', place, 'the file is not JSON', WAY_OUT) };
  }
  const result = schema.safeParse(data);
  if (result.success) return { value: result.data };
  const newer = newerVersion(data);
  if (newer)
    return { problem: finding('record-form', placeOfPath(file, text, ['version']), newer, USE_NEWER) };
  const [issue] = result.error.issues;
  const path = (issue?.path ?? []) as (string | number)[];
  const what = faultWords(formFault(result.error));
  return { problem: finding('record-form', placeOfPath(file, text, path), what, WAY_OUT) };
}

function faultWords(fault: FormFault): string {
  const where = fault.where || 'the file';
  switch (fault.kind) {
    case 'missing':
      return `${where} is missing`;
    case 'long':
      return `${where} is longer than ${fault.most} characters`;
    case 'many':
      return `${where} has more than ${fault.most} entries`;
    case 'more':
      return `${where} is more than ${fault.most}`;
    case 'other':
      return `${where} is not as it was written: ${fault.message}`;
  }
}

/** JSON is YAML as far as places go; a file too odd for that is pointed to as a whole. */
function placeOfPath(file: string, text: string, path: readonly (string | number)[]): Place {
  return readYaml(file, text).source?.placeOf(path) ?? { file, line: 1, column: 1 };
}

function placeOfSyntax(file: string, text: string, message: string): Place {
  const [, line, column] = /line (\d+) column (\d+)/.exec(message) ?? [];
  if (line !== undefined && column !== undefined) return { file, line: Number(line), column: Number(column) };
  // Only an end that came too early is told without a place.
  const lines = text.trimEnd().split('\n');
  return { file, line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}
