import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { digestOf, filesOf, sha256Of } from '../files/digest.ts';
import { printableFractions, withLargestPhotos } from '../print/print-html.ts';
import type { Printer } from '../print/print-pdf.ts';
import type { ProposalPage } from '../views/client/proposal-page.ts';
import {
  type PrintJob,
  type Side,
  type Site,
  type SiteContent,
  type SitePage,
  type SitePart,
  sideOf,
} from '../views/site.ts';
import { brandFiles } from './brand-files.ts';
import {
  type FileRecord,
  knownOf,
  type PartRecord,
  readLastOutput,
  recordText,
  stateOf,
  unchanged,
} from './build-record.ts';
import { keptOwners } from './kept-owners.ts';
import { listed } from './own-files.ts';
import { type PublishStep, publish } from './publish.ts';
import { Refusal } from './refusal.ts';
import type { FinishedPage, Renderer } from './renderer.ts';
import { severalAtOnce } from './several-at-once.ts';

/** Pages asked of the thread and not yet placed: enough that it has work while this one plans an event, few enough to hold. */
const PAGES_AT_ONCE = 64;

/** Opens a printer when the first document needs one; undefined when nothing is to be printed. */
export type OpenPrinter = (() => Promise<Printer>) | undefined;

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

/** How much of the output was made, and how much was taken over from the last. */
export interface BuildReport {
  made: string[];
  kept: string[];
}

/**
 * Makes both sites and puts them in place whole. Pages, documents and files that would come out as they are in
 * the last output are taken over from it. Fails, and leaves the last output, if any page or document does not
 * come out.
 */
export async function buildSite(input: BuildInput): Promise<BuildReport> {
  const { renderer, printVersion, openPrinter, publicDir, out, verify = false, say, onStep } = input;
  const site = { ...input.site, files: [...input.site.files, ...brandFiles(input.site)] };
  const report: BuildReport = { made: [], kept: [] };
  await publish(
    out,
    async (scratch) => {
      const last = await readLastOutput(out, verify);
      const { record } = last;
      const owners = ownersIn(input.site);
      const changed: string[] = [];
      const files = new Map<string, FileRecord>();
      const assets: Record<Side, Set<string>> = { public: new Set(), private: new Set() };
      const names = new Map<string, string>();
      const claimed = new Set<string>();
      let kitchenIsPlanned = site.part === undefined;
      let inThread = 0;

      /** Takes the file over if it was made from the same key, else makes it. */
      async function place(
        file: string,
        key: string,
        make: () => Promise<{ content: string | Uint8Array; assets?: string[] }>,
        from?: string,
      ): Promise<void> {
        if (claimed.has(file)) throw new Error(`two things want to be ${file}`);
        claimed.add(file);
        const known = unchanged(last, file, { key });
        if (known) {
          takeOver(file, { ...known, from, of: ofFile(file) });
          return;
        }
        if (stateOf(last, file) === 'changed') changed.push(file);
        const { content, assets: needed } = await make();
        const bytes = typeof content === 'string' ? Buffer.from(content) : content;
        scratch.write(file, bytes);
        report.made.push(file);
        enter(file, {
          key,
          from,
          size: bytes.byteLength,
          sha256: sha256Of(bytes),
          assets: needed,
          of: ofFile(file),
        });
      }
      function ofFile(file: string): string[] | undefined {
        const of = owners.get(file);
        return of && [...of];
      }
      /** Takes the file over if all that it would be made from is as it was; so nothing of it need be made. */
      function isAsBefore(file: string, from: string | undefined): boolean {
        if (from === undefined || claimed.has(file)) return false;
        const known = unchanged(last, file, { from });
        if (known) takeOver(file, known);
        return known !== undefined;
      }
      function takeOver(file: string, known: FileRecord): void {
        claimed.add(file);
        scratch.keep(file);
        report.kept.push(file);
        // An earlier Salver wrote down no SHA-256: from now on the file is held to what it is today.
        enter(file, known.sha256 ? known : { ...known, sha256: sha256Of(readFileSync(join(out, file))) });
      }
      function enter(file: string, made: FileRecord): void {
        files.set(file, made.assets ? { ...made, assets: made.assets.map(oneOf) } : made);
        for (const name of made.assets ?? []) assets[sideOf(file)].add(oneOf(name));
      }
      /** The same text for the same name: one cut out of a page's text would keep that whole page in memory. */
      function oneOf(name: string): string {
        const known = names.get(name) ?? name;
        names.set(known, known);
        return known;
      }
      /** What is remembered of a file of the last output, if it still lies there as it was written. */
      function stillThere(file: string): FileRecord | undefined {
        const key = knownOf(last, file)?.key;
        return key === undefined ? undefined : unchanged(last, file, { key });
      }
      /** Takes a file of the last output over as it is. One that was changed is lost to nobody: the build is refused. */
      function keep(file: string, of?: string[]): void {
        if (claimed.has(file)) return;
        if (stateOf(last, file) === 'changed')
          throw new Refusal(
            `${join(out, file)} was changed after it was written, and cannot be made again since its day is over`,
            'put the old file back, or delete it if nobody needs it, then build again',
          );
        const known = stillThere(file);
        if (known) takeOver(file, of ? { ...known, of } : known);
      }
      /** Pages need the styles and scripts of the app that made them, so these are kept after them. */
      function keepWhatStays(): void {
        if (!site.stays) return;
        for (const [file, known] of Object.entries(record.files)) {
          const ours = site.stays(file);
          if (!ours) continue;
          const of = known.of ?? keptOwners(out, file);
          if (of ? of.some((digest) => ours.has(digest)) : true) keep(file, of);
        }
      }
      const placeBytes = (file: string, content: string | Uint8Array, from?: string) =>
        place(file, digestOf(content), async () => ({ content }), from);

      // While clients' pages are made in their thread, the kitchen's side is planned in this one.
      const [ofClients, ofKitchen] = await Promise.allSettled([
        placePages(site.pages),
        site.part ? partOf(site.part) : Promise.resolve(undefined),
      ]);
      if (ofClients.status === 'rejected') throw ofClients.reason;
      if (ofKitchen.status === 'rejected') throw ofKitchen.reason;
      const part = ofKitchen.value;
      for (const each of site.files) {
        const from = each.from === undefined ? undefined : digestOf(renderer.digest, each.from);
        if (!isAsBefore(each.file, from)) await placeBytes(each.file, each.content, from);
      }
      for (const name of await filesOf(publicDir)) {
        await placeBytes(`public/${name}`, await readFile(join(publicDir, name)));
      }
      await printAll();
      keepWhatStays();
      for (const side of ['public', 'private'] as const) {
        for (const name of [...assets[side]].sort()) {
          if (name.startsWith('/')) {
            // Made with the other files, unless only a page that stays still shows it.
            keep(`${side}${name}`);
            continue;
          }
          const bytes = await renderer.assets.read(name);
          if (bytes) await placeBytes(`${side}/_astro/${name}`, bytes);
          else keep(`${side}/_astro/${name}`);
        }
      }
      if (changed.length > 0)
        say(`Changed in ${out} since they were written, and made again: ${listed(changed.sort())}.`);
      return recordText(files, part);

      /** The page's view is made by whichever thread has less to do: this one once the kitchen is planned and the other is busy. */
      async function proposalPage(page: SitePage, source: ProposalPage): Promise<FinishedPage> {
        const { file, route } = page;
        const isBusy = inThread > PAGES_AT_ONCE / 2;
        inThread += 1;
        try {
          return kitchenIsPlanned && isBusy
            ? await renderer.page(file, route, JSON.stringify(page.view))
            : await renderer.proposal(file, route, source);
        } finally {
          inThread -= 1;
        }
      }

      /** Places pages, each as soon as the thread has made it. */
      function placePages(pages: readonly SitePage[]): Promise<void> {
        return severalAtOnce(pages, PAGES_AT_ONCE, async (page) => {
          const { file, route, known } = page;
          const from = known && digestOf(renderer.digest, route, known.from);
          if (isAsBefore(file, from)) return;
          if (page.source) {
            const made = await proposalPage(page, page.source);
            await place(file, digestOf(renderer.digest, made.digest), async () => made, from);
            return;
          }
          const view = JSON.stringify(page.view);
          const key = digestOf(renderer.digest, route, view);
          await place(file, key, () => renderer.page(file, route, view), from);
        });
      }

      /** Takes the part over whole if it was made from the same; else what it consists of is made with all else. */
      async function partOf({ from: text, make }: SitePart): Promise<PartRecord> {
        const from = digestOf(renderer.digest, openPrinter ? printVersion : 'not printed', text);
        const before = record.part;
        const kept =
          before?.from === from ? before.files.map((file) => [file, stillThere(file)] as const) : [];
        if (before && kept.length > 0 && kept.every(([, known]) => known !== undefined)) {
          for (const [file, known] of kept) takeOver(file, known!);
          kitchenIsPlanned = true;
          return before;
        }
        const made = await make(() => new Promise((done) => setImmediate(done)));
        kitchenIsPlanned = true;
        for (const [file, of] of ownersIn(made)) owners.set(file, of);
        await placePages(made.pages);
        site.prints = [...site.prints, ...made.prints];
        site.files = [...site.files, ...made.files];
        const placed = [...made.pages, ...made.files, ...(openPrinter ? made.prints : [])];
        return { from, files: placed.map(({ file }) => file) };
      }

      async function printAll(): Promise<void> {
        if (!openPrinter) return;
        let printer: Printer | undefined;
        try {
          for (const [index, job] of site.prints.entries()) {
            const { known, file, route, title, author, language } = job;
            const from =
              known && digestOf(printVersion, renderer.digest, route, known.from, title, author, language);
            if (isAsBefore(file, from)) continue;
            const html = withLargestPhotos(
              printableFractions(await renderer.render(job.route, JSON.stringify(job.view))),
            );
            const key = digestOf(printVersion, html, title, author, ...(await styleOf(job, html)));
            const print = async () => {
              printer ??= await openPrinter!();
              say(`Printing ${index + 1} of ${site.prints.length}: ${file}`);
              const read = (path: string) => readForPrint(job, path);
              return {
                content: await printer.print({ file, route, title, author, html, read }),
              };
            };
            await place(file, key, print, from);
          }
        } finally {
          await printer?.close();
        }
      }
    },
    onStep,
    say,
  );
  report.made.sort();
  report.kept.sort();
  return report;

  /** What a printed page asks for: the app's assets, or a file of its own side. */
  async function readForPrint(job: PrintJob, path: string): Promise<string | Uint8Array | undefined> {
    if (path.startsWith('/_astro/')) return renderer.assets.read(path.slice('/_astro/'.length));
    return site.files.find(({ file }) => file === `${sideOf(job.file)}${path}`)?.content;
  }

  /** Assets carry a digest in their names; the side's own stylesheets do not, so their bytes count. */
  async function styleOf(job: PrintJob, html: string): Promise<(string | Uint8Array)[]> {
    const styles = site.files.filter(
      ({ file }) =>
        file.endsWith('.css') &&
        sideOf(file) === sideOf(job.file) &&
        html.includes(file.slice(sideOf(file).length)),
    );
    return styles.map(({ content }) => content);
  }
}

/** Whose each file is, where that is told. */
function ownersIn({ pages, prints, files }: SiteContent): Map<string, readonly string[]> {
  return new Map(
    [...pages, ...prints, ...files].flatMap(({ file, of }) => (of ? [[file, of] as const] : [])),
  );
}
