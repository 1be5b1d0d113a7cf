import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { compileApp } from '../../src/build/compile-app.ts';
import { mirrorBodies } from '../../src/build/mirror-bodies.ts';
import { projectDir } from '../../src/build/project-dir.ts';
import { readSite } from '../../src/build/read-site.ts';
import { openRenderer } from '../../src/build/renderer.ts';
import { readBook } from '../../src/check/read-book.ts';
import { whole } from '../unit/views/whole-site.ts';
import { buildMeasures } from './build-measures.ts';
import { clockMeasures } from './clock-measures.ts';
import { devMeasure } from './dev-measure.ts';
import { engineMeasures } from './engine-measures.ts';
import { LARGE_TODAY, makeLargeKitchen } from './large-kitchen.ts';
import { FULL, type Measure, SMALL } from './measure.ts';
import { printMeasure } from './print-measure.ts';
import { solverMeasure } from './solver-measure.ts';

// Measures speed as ratios within one run, prints them as a table and writes bench.json. `--small` runs everything
// once on a small kitchen, to see that it runs.
const scale = process.argv.includes('--small') ? SMALL : FULL;
const only = process.argv.find((word) => word.startsWith('--only='))?.slice('--only='.length);
const folder = join(projectDir, '.salver', 'bench');
const say = (line: string) => process.stderr.write(`${line}\n`);
const wanted = (name: string) => only === undefined || only === name;

await mkdir(folder, { recursive: true });
const measures: Measure[] = [];
const columns = (cells: readonly string[]) => `| ${cells.join(' | ')} |\n`;
process.stdout.write(columns(['measure', 'value', 'target', 'holds', 'from']));
process.stdout.write(columns(['---', '---', '---', '---', '---']));

/** Each is told and kept as soon as it is known, since the last ones take a quarter of an hour. */
async function tell(...found: readonly Measure[]): Promise<void> {
  measures.push(...found);
  for (const { name, value, target, holds, note = '' } of found)
    process.stdout.write(columns([name, String(value), target, holds ? 'yes' : 'no', note]));
  await writeFile(join(projectDir, 'bench.json'), `${JSON.stringify({ measures }, null, 2)}\n`);
}

const content = join(folder, 'small');
await makeLargeKitchen(content, { proposals: 40, events: 20, recipes: 120, ingredients: 150, suppliers: 3 });
const { book } = await readBook(content);
if (!book) throw new Error('the kitchen of the bench cannot be read');
if (wanted('engine')) await tell(...engineMeasures(book));
if (wanted('clock')) await tell(...clockMeasures(book));
if (wanted('solver')) {
  say('one order for twenty events');
  await tell(await solverMeasure(book));
}
if (wanted('print')) {
  say('printing');
  const { shown } = await readSite(content, () => LARGE_TODAY);
  const bodies = await mirrorBodies(projectDir, shown!.bodies);
  const renderer = await openRenderer(await compileApp(projectDir, bodies, say), { pdfs: true });
  await tell(await printMeasure(await whole(shown!.site), renderer, 12, scale.rounds));
}
if (wanted('dev')) {
  say('developing');
  const draft = [...book.proposals.values()].find(({ shareDraft }) => shareDraft)!;
  await tell(await devMeasure(content, draft.id, draft.link, scale.rounds));
}

if (wanted('build')) await tell(...(await buildMeasures(folder, scale, say)));
