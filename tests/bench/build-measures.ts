import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { projectDir } from '../../src/build/project-dir.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { digestOf, filesOf } from '../../src/files/digest.ts';
import { controlSite } from './control-site.ts';
import { LARGE_TODAY, makeLargeKitchen } from './large-kitchen.ts';
import { atMost, type BenchScale, type Measure } from './measure.ts';
import { median, type Timed, timedNode } from './timed.ts';

const main = join(projectDir, 'src', 'commands', 'main.ts');
const readOnly = fileURLToPath(new URL('read-only.ts', import.meta.url));
const appFolder = join(projectDir, '.salver', 'app');
const KEPT_SIZE = { recipes: 300, ingredients: 600, suppliers: 5 };

const build = (content: string, out: string): Promise<Timed> =>
  timedNode([
    main,
    'build',
    '--no-pdf',
    '--json',
    '--content',
    content,
    '--out',
    out,
    '--today',
    LARGE_TODAY,
  ]);

/**
 * Where builds from nothing go, a new folder each: a disk takes up to ten times as long to make files where others have
 * just been deleted, which is no part of what is measured.
 */
function newFolders(folder: string): () => string {
  let made = 0;
  return () => {
    made += 1;
    return join(folder, 'outputs', String(made));
  };
}

/** Builds of whole kitchens against a bare Astro of the same pages, and against each other. */
export async function buildMeasures(
  folder: string,
  scale: BenchScale,
  say: (line: string) => void,
): Promise<Measure[]> {
  const { proposals, events, manyProposals, manyEvents, rounds } = scale;
  const content = join(folder, 'thousand');
  const many = join(folder, 'many');
  const outputs = newFolders(folder);
  await rm(join(folder, 'outputs'), { recursive: true, force: true });
  say(`writing kitchens of ${proposals} and ${manyProposals} proposals`);
  await mkdir(folder, { recursive: true });
  await makeLargeKitchen(content, { proposals, events, ...KEPT_SIZE });
  await makeLargeKitchen(many, { proposals: manyProposals, events: manyEvents, ...KEPT_SIZE });
  let out = outputs();
  await build(content, out);
  const control = await controlSite('control', out);

  const times = { control: [], compiled: [], compiling: [], edit: [], reading: [], work: [] } as Record<
    string,
    number[]
  >;
  const peaks: number[] = [];
  let rewritten: string[] = [];
  for (let round = 1; round <= rounds; round += 1) {
    say(`round ${round} of ${rounds}`);
    const bare = [...control.words, '--outDir', outputs()];
    times.control!.push((await timedNode(bare, control.env)).seconds);
    const compiled = await build(content, outputs());
    times.compiled!.push(compiled.seconds);
    peaks.push(compiled.peakMb);
    times.work!.push(compiled.cpuSeconds);
    times.reading!.push(Number((await timedNode([readOnly, content, LARGE_TODAY])).out));
    await rm(appFolder, { recursive: true, force: true });
    out = outputs();
    times.compiling!.push((await build(content, out)).seconds);
    const draft = join(content, 'proposals', `${await firstDraft(content)}.md`);
    await writeFile(
      draft,
      (await readFile(draft, 'utf8')).replace('With warm wishes', 'With  warm wishes, and soon'),
    );
    const edited = await build(content, out);
    await writeFile(
      draft,
      (await readFile(draft, 'utf8')).replace(/With {2}warm wishes, and soon/, 'With warm wishes'),
    );
    times.edit!.push(edited.seconds);
    rewritten = made(edited);
  }

  say('one price changed');
  const priced = await changedPrice(content, out);

  say(`${manyProposals} proposals`);
  const manyTimes: number[] = [];
  const manyPeaks: number[] = [];
  for (let round = 1; round <= Math.min(rounds, 3); round += 1) {
    const ran = await build(many, outputs());
    manyTimes.push(ran.seconds);
    manyPeaks.push(ran.peakMb);
  }

  await rm(join(folder, 'outputs'), { recursive: true, force: true });

  const middle = (name: string) => median(times[name]!);
  const seconds = (name: string) => `${middle(name).toFixed(2)} s`;
  const base = `control ${seconds('control')}`;
  const peak = median(peaks);
  const manyPeak = median(manyPeaks);
  return [
    atMost(
      `${proposals} proposals, compiled, to bare Astro`,
      middle('compiled') / middle('control'),
      1,
      `${seconds('compiled')}, ${base}`,
    ),
    atMost(
      `${proposals} proposals, compiling, to bare Astro`,
      middle('compiling') / middle('control'),
      1.6,
      `${seconds('compiling')}, ${base}`,
    ),
    atMost(
      'rebuild after one edit, to compiling',
      middle('edit') / middle('compiling'),
      0.2,
      seconds('edit'),
    ),
    atMost('pages rewritten after one edit', rewritten.length, 1, rewritten.join(', ')),
    priced,
    atMost(
      `${manyProposals} proposals to ${proposals}, time`,
      median(manyTimes) / middle('compiled'),
      manyProposals / proposals,
      `${median(manyTimes).toFixed(2)} s`,
    ),
    atMost(
      `${manyProposals} proposals to ${proposals}, memory`,
      manyPeak / peak,
      2,
      `${Math.round(manyPeak)} MB to ${Math.round(peak)} MB`,
    ),
    atMost(`peak memory at ${proposals}, MB`, peak, 1000),
    atMost(`peak memory at ${manyProposals}, MB`, manyPeak, 1500),
    atMost(
      'reading, checking and computing, share of the compiled build’s work',
      middle('reading') / middle('work'),
      0.25,
      `${seconds('reading')} of ${seconds('work')} of the processor, in both threads`,
    ),
  ];
}

async function firstDraft(content: string): Promise<string> {
  for (const file of await filesOf(join(content, 'proposals')))
    if ((await readFile(join(content, 'proposals', file), 'utf8')).includes('share: draft'))
      return file.replace(/\.md$/, '');
  throw new Error('the large kitchen has no draft');
}

function made({ out }: Timed): string[] {
  return (JSON.parse(out) as { made: string[] }).made;
}

/**
 * After the price of one food changed that a coming event buys, only plans and drafts may be made again that use it,
 * and whatever is made again must come out otherwise than it was.
 */
async function changedPrice(content: string, out: string): Promise<Measure> {
  await build(content, out);
  const plans = await coming(out);
  const { ingredient, supplier } = plans[0]!.buys[0]!;
  const list = join(content, 'prices', `${supplier}.csv`);
  const text = await readFile(list, 'utf8');
  const dearer = text.replace(
    new RegExp(`^(${ingredient},[^,]+),(\\d+)\\.`, 'gm'),
    (_, row: string, whole: string) => `${row},${Number(whole) + 1}.`,
  );
  const before = await readRecord(out);
  await writeFile(list, dearer);
  const ran = await build(content, out);
  const after = await readRecord(out);
  await writeFile(list, text);
  const files = made(ran);
  const users = plans.filter(({ buys }) => buys.some((each) => each.ingredient === ingredient));
  const strays = files.filter((file) => {
    if (before[file] === after[file]) return true;
    const event = /^private\/kitchen\/events\/([^/]+)\//.exec(file)?.[1];
    return event !== undefined && !users.some(({ id }) => id === event);
  });
  // One that buys it of another supplier is not changed by this one's price.
  const buyers = users.filter(({ buys }) =>
    buys.some((each) => each.ingredient === ingredient && each.supplier === supplier),
  );
  const missed = buyers.filter(({ id }) => !files.some((file) => file.includes(`/events/${id}/`)));
  return atMost(
    'after one price changed: files made for nothing, and plans left as they were',
    strays.length + missed.length,
    0,
    [
      `${files.length} files made, ${users.length} of ${plans.length} plans buy the food`,
      ...strays,
      ...missed.map(({ id }) => `not ${id}`),
    ].join(', '),
  );
}

/** The plans of coming events, with what they buy and where. */
async function coming(
  out: string,
): Promise<{ id: string; buys: { ingredient: string; supplier: string }[] }[]> {
  const plans = [];
  for (const file of await filesOf(out)) {
    if (!file.endsWith('/prep-plan.json')) continue;
    const { event, shopping } = JSON.parse(await readFile(join(out, file), 'utf8')) as PrepPlanDocument;
    const buys = shopping.flatMap(({ ingredient, packs }) =>
      packs.map(({ supplier }) => ({ ingredient, supplier })),
    );
    plans.push({ id: event.id, buys });
  }
  return plans;
}

/** Each file of an output with its text's digest. */
async function readRecord(out: string): Promise<Record<string, string>> {
  const digests: Record<string, string> = {};
  for (const file of await filesOf(out)) digests[file] = digestOf(await readFile(join(out, file)));
  return digests;
}
