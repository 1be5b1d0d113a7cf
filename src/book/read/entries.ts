import { asId } from '../files/as-id.ts';
import type { ContentText } from '../files/content-texts.ts';
import { isId } from '../files/is-id.ts';
import { type Finding, finding } from '../findings/finding.ts';
import type { ItemKind } from '../item.ts';
import { hold, type Ledger } from '../ledger.ts';
import { entriesAt, errorsByEntry, idsInUnreadable } from '../link/grammar/entries.ts';
import { type Reading, readItem } from '../link/grammar/reading.ts';

/**
 * Reads a YAML file that is a mapping from ids to items of one kind, item by item: one that is broken holds back
 * itself alone. Of a file that cannot be read at all, whatever ids it seems to have are held back.
 */
export function readEntries(
  ledger: Ledger,
  kind: ItemKind,
  { file, text, seen = '' }: ContentText,
  work: (reading: Reading, id: string, raw: unknown) => void,
): void {
  const read = text === undefined ? undefined : ledger.yaml(file, text);
  ledger.findings.push(...(read?.findings ?? []));
  const source = read?.source;
  if (!source) {
    ledger.unreadable.add(kind);
    for (const id of idsInUnreadable(text ?? seen)) hold(ledger, `${kind}/${id}`, `${file} can’t be read`);
    return;
  }
  if (typeof source.data !== 'object' || Array.isArray(source.data)) {
    const what = `the file is not a mapping from ids to ${kind === 'supplier' ? 'suppliers' : 'ingredients'}`;
    ledger.findings.push(
      finding('wrong-form', source.placeOf([]), what, 'start each with its id and a colon'),
    );
    ledger.unreadable.add(kind);
    return;
  }
  const spoiled = new Map([...errorsByEntry(read.findings, source), ...twice(read.findings, text)]);
  if (spoiled.has('')) ledger.unreadable.add(kind);
  for (const [id, raw] of entriesAt(source.data)) {
    readItem(ledger, `${kind}/${id}`, { source, base: [id] }, (reading) => {
      const error = spoiled.get(id);
      if (error) reading.spoil(`${error.what} (${file}:${error.place.line})`);
      if (isId(id)) work(reading, id, raw);
      else {
        const what = `“${id.slice(0, 80)}” can’t be an id`;
        reading.say(
          'bad-id',
          [],
          what,
          `write it as ${asId(id) || 'lower-case words joined by hyphens'}`,
          'key',
        );
        // What it says is most likely meant of the item that it is nearly called.
        hold(ledger, `${kind}/${asId(id)}`, `${what} (${file})`);
      }
      return undefined;
    });
  }
}

/** The entries that stand twice in a file: either may be the one that counts, so neither is used. */
function twice(findings: readonly Finding[], text = ''): [string, Finding][] {
  const lines = text.split('\n');
  return findings.flatMap((each) =>
    each.code === 'duplicate-key' && each.place.column === 1
      ? idsInUnreadable(lines[each.place.line - 1] ?? '').map((id): [string, Finding] => [id, each])
      : [],
  );
}
