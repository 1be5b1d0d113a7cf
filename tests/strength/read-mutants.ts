import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { printFindings } from '../../src/book/findings/print-findings.ts';
import { keepBetween, readSite } from '../../src/build/read-site.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { filesOf } from '../../src/files/digest.ts';
import { seeded } from '../bench/seeded.ts';
import { whole } from '../unit/views/whole-site.ts';
import { LONG } from './long.ts';
import { largeMutants, type Mutant, mutant } from './spoil.ts';

// Spoils the files of a content folder one at a time and reads the folder each time, as a build does. Prints a line
// before each and one for each that did not end in findings with a place or in a Book. What a reading finds in files
// that nobody spoilt is kept for the next, as under `dev`, since most of the time would go there; the long run reads
// everything anew, as a build does.
const [, , content = '', from = '0', to = '0', sizes = ''] = process.argv;
const kept = LONG ? undefined : await keepBetween();
const files: Record<string, Buffer> = {};
for (const file of await filesOf(content)) files[file] = readFileSync(join(content, file));

if (sizes !== '') {
  for (const file of kindsOf(Object.keys(files), sizes === 'sizes of all'))
    for (const each of largeMutants(file, files[file]!, seeded(7))) await tried(each, `${file}, ${each.way}`);
}
for (let number = Number(from); number < Number(to); number += 1) {
  const each = mutant(files, seeded(number));
  await tried(each, `mutant ${number}: ${each.file}, ${each.way}`);
}
process.stdout.write(`peak ${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);

async function tried({ file, bytes }: Mutant, name: string): Promise<void> {
  process.stdout.write(`try ${name}\n`);
  writeFileSync(join(content, file), bytes);
  try {
    const { findings, shown } = await readSite(content, () => '2027-05-04' as Day, kept);
    for (const page of shown ? (await whole(shown.site)).pages : []) void page.view;
    const wrong = wrongIn(findings, shown !== undefined) ?? beyondIn(findings, file, bytes);
    if (wrong) process.stdout.write(`wrong ${name}: ${wrong}\n`);
  } catch (error) {
    process.stdout.write(`wrong ${name}: ${String((error as Error).stack).replaceAll('\n', ' ')}\n`);
  } finally {
    writeFileSync(join(content, file), files[file]!);
  }
}

function wrongIn(
  findings: Awaited<ReturnType<typeof readSite>>['findings'],
  shown: boolean,
): string | undefined {
  if (!shown && !findings.some(({ severity }) => severity === 'error')) return 'no Book and no error';
  const lost = findings.find(({ place }) => place.file === '' || !(place.line >= 1) || !(place.column >= 1));
  if (lost) return `a finding without a place: ${lost.what}`;
  const printed = printFindings(findings, 'content');
  const slip = /undefined|\[object|\bat \S+ \(.*:\d+:\d+\)/.exec(printed);
  return slip
    ? `a finding that says “${printed.slice(Math.max(0, slip.index - 60), slip.index + 60)}”`
    : undefined;
}

/** A place beyond the end of the file that was spoilt. */
function beyondIn(
  findings: Awaited<ReturnType<typeof readSite>>['findings'],
  file: string,
  bytes: Buffer,
): string | undefined {
  const lines = bytes.toString('latin1').split(/\r\n?|\n/).length;
  const beyond = findings.find(({ place }) => place.file === file && place.line > lines);
  return beyond && `line ${beyond.place.line} of ${lines}: ${beyond.what}`;
}

/** One file of each folder; of `all`, one of each kind of fact and every answer that waits. */
function kindsOf(names: readonly string[], all: boolean): string[] {
  const kindOf = (name: string) => {
    const [folder = name] = name.split('/');
    if (!all) return folder;
    return folder === 'inbox' ? name : `${folder} ${/^events\/.*\d-(.*)$/.exec(name)?.[1]}`;
  };
  return [...new Map(names.map((name) => [kindOf(name), name])).values()];
}
