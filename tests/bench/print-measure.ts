import { chromium } from 'playwright';
import { brandFiles } from '../../src/build/brand-files.ts';
import type { Renderer } from '../../src/build/renderer.ts';
import { findBrowser } from '../../src/print/find-browser.ts';
import { printableFractions } from '../../src/print/print-html.ts';
import { openPrinter } from '../../src/print/print-pdf.ts';
import type { SiteContent } from '../../src/views/site.ts';
import { atLeast, type Measure } from './measure.ts';
import { median } from './timed.ts';

/**
 * Documents printed by the product, against Chromium's own `page.pdf()` of the same pages from one reused page, with
 * everything given to it from memory; turn and turn about.
 */
export async function printMeasure(
  site: SiteContent,
  renderer: Renderer,
  documents: number,
  rounds: number,
): Promise<Measure> {
  const browser = findBrowser();
  if (!browser) throw new Error('there is no Chromium to print with: npm run setup');
  const jobs = [];
  for (const job of site.prints.slice(0, documents))
    jobs.push({
      ...job,
      html: printableFractions(await renderer.render(job.route, JSON.stringify(job.view))),
    });
  const files = [...site.files, ...brandFiles(site)];
  const read = async (path: string) =>
    path.startsWith('/_astro/')
      ? renderer.assets.read(path.slice('/_astro/'.length))
      : files.find(({ file }) => file.replace(/^(?:public|private)/, '') === path)?.content;

  const printer = await openPrinter(browser);
  const bare = await chromium.launch({ executablePath: browser.path });
  const page = await bare.newPage({ bypassCSP: true, javaScriptEnabled: false });
  await page.emulateMedia({ media: 'print' });
  const origin = 'http://bench.invalid';
  let html = '';
  await page.route('**/*', async (route) => {
    const path = new URL(route.request().url()).pathname;
    if (path === '/') return route.fulfill({ contentType: 'text/html; charset=utf-8', body: html });
    const content = await read(path);
    return content === undefined
      ? route.abort()
      : route.fulfill({ contentType: typeOf(path), body: Buffer.from(content) });
  });
  const times = { ours: [] as number[], bare: [] as number[] };
  try {
    for (let round = 0; round <= rounds; round += 1) {
      for (const job of jobs) {
        const ours = await seconds(() => printer.print({ ...job, read }));
        html = job.html;
        const plain = await seconds(async () => {
          await page.goto(`${origin}/`, { waitUntil: 'load' });
          await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true });
        });
        // The first round warms both.
        if (round === 0) continue;
        times.ours.push(ours);
        times.bare.push(plain);
      }
    }
  } finally {
    await printer.close();
    await bare.close();
  }
  const [ours, plain] = [median(times.ours), median(times.bare)];
  return atLeast(
    'documents printed, to Chromium’s own throughput',
    plain / ours,
    0.9,
    `${ours.toFixed(2)} s to ${plain.toFixed(2)} s each`,
  );
}

function typeOf(path: string): string {
  if (path.endsWith('.css')) return 'text/css';
  if (path.endsWith('.woff2')) return 'font/woff2';
  return path.endsWith('.svg') ? 'image/svg+xml' : 'application/octet-stream';
}

async function seconds(work: () => Promise<unknown>): Promise<number> {
  const began = performance.now();
  await work();
  return (performance.now() - began) / 1000;
}
