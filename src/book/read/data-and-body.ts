import type { z } from 'zod';
import { type Body, readFrontMatter } from '../bodies/front-matter.ts';
import type { ContentText } from '../files/content-texts.ts';
import type { ItemKey } from '../item.ts';
import { hold, type Ledger, type Spot } from '../ledger.ts';
import { readForm } from '../link/grammar/form.ts';
import { readItem } from '../link/grammar/reading.ts';

/** A file with data on top, its data in their checked form. */
export interface DataAndBody<T> {
  readonly id: string;
  readonly file: string;
  readonly spot: Spot;
  readonly text: T;
  readonly body: Body;
}

/** Reads a file with data on top and text below. With an error in the data the item is held back. */
export function readDataAndBody<T>(
  ledger: Ledger,
  item: ItemKey,
  { id, file, text }: ContentText,
  schema: z.ZodType<T>,
): DataAndBody<T> | undefined {
  const read = text === undefined ? undefined : readFrontMatter(file, text, ledger.yaml);
  ledger.findings.push(...(read?.findings ?? []));
  const source = read?.source;
  if (!source) {
    hold(ledger, item, `${file} can’t be read`);
    return undefined;
  }
  const spot: Spot = { source, base: [] };
  return readItem(ledger, item, spot, (reading) => {
    const error = read.findings.find((each) => each.severity === 'error');
    if (error) reading.spoil(`${error.what} (${file}:${error.place.line})`);
    const form = readForm(reading, schema, source.data);
    return form === undefined
      ? undefined
      : { id, file, spot, text: form, body: read.body ?? { text: '', line: 1 } };
  });
}
