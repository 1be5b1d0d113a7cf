import { type ConsoleMessage, chromium, type Page, type Route } from 'playwright';
import { mediaType } from '../files/media-type.ts';
import type { Browser } from './find-browser.ts';
import { stablePdf } from './stable-pdf.ts';

/** One document to print: a whole page, and where its styles, fonts and pictures come from. */
export interface PrintOrder {
  /** The file that it becomes; only to name it in a message. */
  file: string;
  /** The page's own path, from which its addresses count. */
  route: string;
  html: string;
  title: string;
  author: string;
  /** The bytes at a path such as `/_astro/print.css`; undefined where the site has none. */
  read(path: string): Promise<string | Uint8Array | undefined>;
}

/** A browser that prints one document after the other. */
export interface Printer {
  /** The document as a tagged PDF with outline, in the page size that its styles name. */
  print(order: PrintOrder): Promise<Uint8Array>;
  close(): Promise<void>;
}

/** A name that no network can answer (RFC 2606): whatever the page asks for, the build answers. */
const origin = 'http://salver.invalid';

/** Starts the browser once; every document is printed from the same page, which is quicker than a page each. */
export async function openPrinter({ path }: Browser): Promise<Printer> {
  // Whoever stops a build is answered by the command; the browser is ended with the process in any case.
  const browser = await chromium.launch({
    executablePath: path,
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
  });
  // A sheet's running words are given in its root's style, which the policy of pages forbids. In its place stand
  // stricter rules: no script runs, and nothing is answered but what the site has.
  const page = await browser.newPage({ bypassCSP: true, javaScriptEnabled: false });
  page.setDefaultTimeout(60_000);
  await page.emulateMedia({ media: 'print' });
  return {
    print: (order) => printFrom(page, order),
    close: () => browser.close(),
  };
}

async function printFrom(page: Page, order: PrintOrder): Promise<Uint8Array> {
  const refused: string[] = [];
  const complaints: string[] = [];
  // Where the page's own policy stops a request, it is never made: only the browser's complaint tells of it.
  const listen = (message: ConsoleMessage) => {
    if (message.type() === 'error') complaints.push(message.text());
  };
  page.on('console', listen);
  await page.route('**/*', (route) => answer(route, order, refused));
  try {
    await page.goto(origin + order.route, { waitUntil: 'load' });
    await page.evaluate(async () => {
      await document.fonts.ready;
      // A picture that is not decoded yet can be missing on paper; a broken one is reported as refused.
      await Promise.allSettled(
        [...document.images].map((image) => {
          image.loading = 'eager';
          return image.decode();
        }),
      );
    });
    if (refused.length > 0) {
      throw new Error(`${order.file} asks for ${refused.join(', ')}, which is not part of the site`);
    }
    if (complaints.length > 0) throw new Error(`${order.file} cannot be printed: ${complaints.join(' ')}`);
    const pdf = await page.pdf({
      preferCSSPageSize: true,
      printBackground: true,
      tagged: true,
      outline: true,
    });
    return stablePdf(pdf, order);
  } finally {
    page.off('console', listen);
    await page.unroute('**/*');
  }
}

async function answer(route: Route, order: PrintOrder, refused: string[]): Promise<void> {
  const url = new URL(route.request().url());
  if (url.origin === origin && url.pathname === order.route) {
    return route.fulfill({ contentType: 'text/html; charset=utf-8', body: order.html });
  }
  const content = url.origin === origin ? await order.read(url.pathname) : undefined;
  if (content === undefined) {
    refused.push(url.origin === origin ? url.pathname : url.href);
    return route.abort();
  }
  return route.fulfill({ contentType: mediaType(url.pathname), body: Buffer.from(content) });
}
