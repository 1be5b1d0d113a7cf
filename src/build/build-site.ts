import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { digestOf, filesOf } from '../files/digest.ts';
import type { Site } from '../views/site.ts';
import { brandFiles } from './brand-files.ts';
import { type LastOutput, readLastOutput } from './build-record.ts';
import { keepPast } from './keep-past.ts';
import { type BuildReport, Output } from './output.ts';
import { listed } from './own-files.ts';
import { PagePlacer } from './page-placer.ts';
import { placeAssets } from './place-assets.ts';
import { type OpenPrinter, placePapers } from './place-papers.ts';
import { type PlacedPart, placePart } from './place-part.ts';
import { type PublishStep, publish } from './publish.ts';
import type { Renderer } from './renderer.ts';

/** What a build is given. */
export interface BuildInput {
  site: Site;
  renderer: Renderer;
  /** What printing depends on besides the page: the browser's and the printing code's version. */
  printVersion: string;
  openPrinter: OpenPrinter;
  /** Files served as they are, on the public side. */
  publicDir: string;
  out: string;
  /** Compares every file that is taken over with its SHA-256, also where nothing seems to have touched it. */
  verify?: boolean;
  say: (line: string) => void;
  onStep?: (step: PublishStep) => void;
}

/**
 * Makes both sites and puts them in place whole. Pages, documents and files that would come out as they are in
 * the last output are taken over from it. Fails, and leaves the last output, if any page or document does not
 * come out.
 */
export async function buildSite(input: BuildInput): Promise<BuildReport> {
  const { out, verify = false, say, onStep } = input;
  let report: BuildReport = { made: [], kept: [] };
  await publish(
    out,
    async (scratch) => {
      const last = await readLastOutput(out, verify);
      const output = new Output(last, scratch);
      const part = await placeAll(input, last, output);
      if (output.changed.length > 0)
        say(`Changed in ${out} since they were written, and made again: ${listed(output.changed.sort())}.`);
      report = output.report;
      return output.record(part?.record);
    },
    onStep,
    say,
  );
  report.made.sort();
  report.kept.sort();
  return report;
}

/** Places everything, in the order in which one thing needs another: assets are known when every page is placed. */
async function placeAll(
  { site, renderer, printVersion, openPrinter, publicDir, say }: BuildInput,
  last: LastOutput,
  output: Output,
): Promise<PlacedPart | undefined> {
  output.noteOwners(site);
  const part = await placePages(site);
  const files = [...site.files, ...brandFiles(site), ...(part?.files ?? [])];
  for (const each of files) {
    const { cacheKey } = each;
    const from = cacheKey === undefined ? undefined : digestOf(renderer.digest, cacheKey);
    if (!output.tookOver(each.file, from)) await output.placeBytes(each.file, each.content, from);
  }
  for (const name of await filesOf(publicDir))
    await output.placeBytes(`public/${name}`, await readFile(join(publicDir, name)));
  const jobs = [...site.prints, ...(part?.prints ?? [])];
  if (openPrinter) await placePapers(jobs, files, { output, renderer, printVersion, openPrinter, say });
  keepPast(site.stays, last, output);
  await placeAssets(output, renderer.assets);
  return part;

  /** While clients' pages are made in their thread, the kitchen's side is planned in this one. */
  async function placePages({ pages, part }: Site): Promise<PlacedPart | undefined> {
    const placer = new PagePlacer(output, renderer, part === undefined);
    const madeBy = [renderer.digest, openPrinter ? printVersion : 'not printed'];
    const means = {
      output,
      pages: placer,
      last: last.record.part,
      madeBy,
      prints: openPrinter !== undefined,
    };
    const [ofClients, ofKitchen] = await Promise.allSettled([
      placer.place(pages),
      part ? placePart(part, means) : undefined,
    ]);
    if (ofClients.status === 'rejected') throw ofClients.reason;
    if (ofKitchen.status === 'rejected') throw ofKitchen.reason;
    return ofKitchen.value;
  }
}
