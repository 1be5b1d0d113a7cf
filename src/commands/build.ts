import { join, relative } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import type { Book } from '../book/book.ts';
import { findingsJson } from '../book/findings/print-findings.ts';
import { buildSite } from '../build/build-site.ts';
import { compileApp } from '../build/compile-app.ts';
import { keepPlans } from '../build/kept-plans.ts';
import { mirrorBodies } from '../build/mirror-bodies.ts';
import { projectDir } from '../build/project-dir.ts';
import { refuseOutput } from '../build/publish.ts';
import { type ReadSite, readSite } from '../build/read-site.ts';
import { refuseOverlap } from '../build/separate-folders.ts';
import { openThreadedRenderer } from '../build/threaded-renderer.ts';
import { counted } from '../engine/text/counted.ts';
import { recordCorrections } from '../offers/corrections/record-corrections.ts';
import { printVersion } from '../print/print-version.ts';
import type { Site } from '../views/site.ts';
import type { Call, Command } from './call/command.ts';
import { sayFindings } from './call/say-findings.ts';
import { todayFor, todayIn } from './call/today.ts';

type Shown = NonNullable<ReadSite['shown']>;

/** Files served as they are, with the proposals. */
const publicDir = join(projectDir, 'public');

export const command: Command = {
  summary: 'build the proposals’ and the kitchen’s pages, with their PDFs',
  usage: '[--no-pdf] [--verify]',
  options: {
    'no-pdf': { type: 'boolean', summary: 'pages only; needs no browser' },
    verify: {
      type: 'boolean',
      summary: 'check every file of the last build against its SHA-256, even if it looks unchanged',
    },
  },
  async run(call) {
    const pdfs = call.flags['no-pdf'] !== true;
    await refuseOverlap(call.contentDir, call.outDir, publicDir);
    await refuseOutput(call.outDir);
    // Without papers nothing of the browser's library is read, which takes as long as reading the content.
    const browser = pdfs ? (await import('../print/find-browser.ts')).findBrowser() : undefined;
    if (pdfs && !browser) {
      call.complain('No Chromium found to print with: run `npm run setup` once, or build with `--no-pdf`.');
      return 1;
    }
    // A view and a page are garbage as soon as the next is made; left to itself the heap grows to several times what
    // is held before any of it is taken back.
    setFlagsFromString('--heap-growing-percent=30');
    const { findings, shown } = await readSite(call.contentDir, (zone) => todayFor(call, zone));
    const exitCode = findings.some(({ severity }) => severity === 'error') ? 1 : 0;
    const told = findings.filter(({ severity }) => severity !== 'note');
    if (!shown || (!call.json && told.length > 0))
      sayFindings(call, call.json ? findings : told, shown?.book.kitchen.locale);
    if (!shown) {
      call.complain(
        'Nothing was published because kitchen.yaml could not be read; the last build is still in place.',
      );
      return exitCode;
    }
    const unrecorded = await recordPublished(call, shown.book);
    const bodies = await mirrorBodies(projectDir, shown.bodies);
    const app = await compileApp(projectDir, bodies, call.complain);
    const version = browser ? await printVersion(browser) : '';
    const renderer = await openThreadedRenderer(app, { pdfs });
    const { made, kept } = await buildSite({
      site: shown.site,
      renderer,
      printVersion: version,
      openPrinter: browser && (async () => (await import('../print/print-pdf.ts')).openPrinter(browser)),
      publicDir,
      out: call.outDir,
      verify: call.flags.verify === true,
      say: call.complain,
    }).finally(() => renderer.close());
    const unkept = await keepPlanned(call, shown);
    if (call.json) {
      const { findings: list } = JSON.parse(findingsJson(findings)) as { findings: unknown };
      call.write(
        JSON.stringify({ findings: list, made, kept, proposals: proposalsOf(shown.site, call, pdfs) }),
      );
    } else {
      call.write(inWords(shown.site, call, pdfs, made.length, kept.length));
    }
    return unrecorded || unkept ? 1 : exitCode;
  },
};

/**
 * Records what pages are corrected by before they are published, so that no later slip takes it off them. True where it
 * cannot be recorded: the correction is published all the same, since a guest may be harmed by waiting.
 */
async function recordPublished(call: Call, book: Book): Promise<boolean> {
  try {
    await recordCorrections(call.contentDir, book, todayFor(call, book.kitchen.timeZone));
    return false;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    call.complain(
      `The corrections on clients’ pages could not be recorded under corrections/ (${why}). They are published now; make the folder writable and build again so that they stay.`,
    );
    return true;
  }
}

/**
 * Keeps the plans that were made, and records what is cooked from today. With `--today` on another day somebody only
 * looks ahead or back, and nothing is recorded. True where they cannot be kept.
 */
async function keepPlanned(call: Call, { book, site }: Pick<Shown, 'book' | 'site'>): Promise<boolean> {
  const { timeZone } = book.kitchen;
  const today = todayFor(call, timeZone);
  try {
    const made = (site.part?.plans?.() ?? []).map((make) => make());
    await keepPlans(call.contentDir, book, made, today, today === todayIn(timeZone));
    return false;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    call.complain(
      `The plans could not be kept under events/ (${why}). The pages are published; make the folder writable and build again so that the plan you cook from stays on record.`,
    );
    return true;
  }
}

interface BuiltProposal {
  title: string;
  client: string;
  page: string;
  pdf?: string;
}

/** Each proposal's page and PDF, as paths from where the caller stands. */
function proposalsOf(site: Site, call: Call, pdfs: boolean): BuiltProposal[] {
  return site.pages.flatMap(({ file, known }) => {
    if (!known) return [];
    const page = fromHere(join(call.outDir, file));
    const { title, client } = known;
    return [{ title, client, page, ...(pdfs && { pdf: page.replace(/index\.html$/, 'proposal.pdf') }) }];
  });
}

function inWords(site: Site, call: Call, pdfs: boolean, made: number, kept: number): string {
  const lines = proposalsOf(site, call, pdfs).flatMap(({ title, client, page, pdf }) => [
    `${title}, for ${client}`,
    `  ${page}`,
    ...(pdf ? [`  ${pdf}`] : []),
  ]);
  return [
    ...lines,
    'The kitchen',
    `  ${fromHere(join(call.outDir, 'private/kitchen/index.html'))}`,
    `${counted(made, 'file')} made, ${kept} unchanged.`,
  ].join('\n');
}

function fromHere(path: string): string {
  const { INIT_CWD: here = process.cwd() } = process.env;
  const short = relative(here, path) || '.';
  return short.startsWith('..') ? path : short.replaceAll('\\', '/');
}
