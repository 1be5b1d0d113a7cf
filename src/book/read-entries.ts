import type { ContentText } from './content-texts.ts';
import { entriesAt, errorsByEntry, idsInUnreadable } from './entries.ts';
import { finding } from './finding.ts';
import { isId } from './is-id.ts';
import type { ItemKind } from './item.ts';
import { hold, type Ledger } from './ledger.ts';
import { type Reading, readItem } from './reading.ts';

/**
 * Reads a YAML file that is a mapping from ids to items of one kind, item by item: one that is broken holds back
 * itself alone. Of a file that cannot be read at all, whatever ids it seems to have are held back.
 */
export function readEntries(
  ledger: Ledger,
  kind: ItemKind,
  { file, text }: ContentText,
  work: (reading: Reading, id: string, raw: unknown) => void,
): void {
  const read = text === undefined ? undefined : ledger.yaml(file, text);
  ledger.findings.push(...(read?.findings ?? []));
  const source = read?.source;
  if (!source) {
    ledger.unreadable.add(kind);
    for (const id of idsInUnreadable(text ?? '')) hold(ledger, `${kind}/${id}`, `${file} cannot be read`);
    return;
  }
  if (typeof source.data !== 'object' || Array.isArray(source.data)) {
    const what = `the file is not a mapping from ids to ${kind === 'supplier' ? 'suppliers' : 'ingredients'}`;
    ledger.findings.push(
      finding('wrong-form', source.placeOf([]), what, 'begin each with its id and a colon'),
    );
    ledger.unreadable.add(kind);
    return;
  }
  const spoiled = errorsByEntry(read.findings, source);
  if (spoiled.has('')) ledger.unreadable.add(kind);
  for (const [id, raw] of entriesAt(source.data)) {
    readItem(ledger, `${kind}/${id}`, { source, base: [id] }, (reading) => {
      const error = spoiled.get(id);
      if (error) reading.spoil(`${error.what} (${file}:${error.place.line})`);
      if (isId(id)) work(reading, id, raw);
      else
        reading.say(
          'bad-id',
          [],
          `“${id.slice(0, 80)}” cannot be an id`,
          'write lower-case words joined by hyphens',
          'key',
        );
      return undefined;
    });
  }
}
