import { digestOf } from '../files/digest.ts';
import { printableFractions, withLargestPhotos } from '../print/print-html.ts';
import type { Printer } from '../print/print-pdf.ts';
import { type PrintJob, type SiteFile, sideOf } from '../views/site.ts';
import type { Output } from './output.ts';
import type { Renderer } from './renderer.ts';

/** Opens a printer when the first document needs one; undefined when nothing is to be printed. */
export type OpenPrinter = (() => Promise<Printer>) | undefined;

/** What papers are printed with. */
interface Means {
  output: Output;
  renderer: Renderer;
  /** What printing depends on besides the page: the browser's and the printing code's version. */
  printVersion: string;
  openPrinter: NonNullable<OpenPrinter>;
  say: (line: string) => void;
}

/** Prints every document that is not as it was in the last output. `files`: what pages may ask for on their own side. */
export async function placePapers(
  jobs: readonly PrintJob[],
  files: readonly SiteFile[],
  { output, renderer, printVersion, openPrinter, say }: Means,
): Promise<void> {
  let printer: Printer | undefined;
  try {
    for (const [index, job] of jobs.entries()) {
      const { known, file, route, title, author, language } = job;
      const from =
        known && digestOf(printVersion, renderer.digest, route, known.cacheKey, title, author, language);
      if (output.tookOver(file, from)) continue;
      const page = await renderer.render(route, JSON.stringify(job.view));
      const html = withLargestPhotos(printableFractions(page));
      const key = digestOf(printVersion, html, title, author, ...stylesOf(job, html, files));
      const read = (path: string) => readForPrint(job, path, files, renderer);
      const print = async () => {
        printer ??= await openPrinter();
        say(`Printing ${index + 1} of ${jobs.length}: ${file}`);
        return { content: await printer.print({ file, route, title, author, html, read }) };
      };
      await output.place(file, key, print, from);
    }
  } finally {
    await printer?.close();
  }
}

/** What a printed page asks for: the app's assets, or a file of its own side. */
async function readForPrint(
  job: PrintJob,
  path: string,
  files: readonly SiteFile[],
  { assets }: Renderer,
): Promise<string | Uint8Array | undefined> {
  if (path.startsWith('/_astro/')) return assets.read(path.slice('/_astro/'.length));
  return files.find(({ file }) => file === `${sideOf(job.file)}${path}`)?.content;
}

/** Assets carry a digest in their names; the side's own stylesheets do not, so their bytes count. */
function stylesOf(job: PrintJob, html: string, files: readonly SiteFile[]): (string | Uint8Array)[] {
  const side = sideOf(job.file);
  return files
    .filter(
      ({ file }) => file.endsWith('.css') && sideOf(file) === side && html.includes(file.slice(side.length)),
    )
    .map(({ content }) => content);
}
