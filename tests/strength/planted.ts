import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright';
import sharp from 'sharp';
import { findBrowser } from '../../src/print/find-browser.ts';

/** A file that holds words in one of the ways in which a file can hold them. */
type Plant = (words: string) => string | Buffer | Promise<Buffer>;

const entities = (words: string) => [...words].map((each) => `&#${each.codePointAt(0)};`).join('');
const escapes = (words: string) =>
  [...words].map((each) => `\\u${each.charCodeAt(0).toString(16).padStart(4, '0')}`).join('');
const base64 = (words: string) => Buffer.from(words).toString('base64');
const dot = () => sharp({ create: { width: 8, height: 8, channels: 3, background: '#888' } });
const beside = (words: string) => dot().withExif({ IFD0: { ImageDescription: words } });

/** Every kind of file that a site is made of, by its name, with the words in it. */
export const PLANTS: Readonly<Record<string, Plant>> = {
  'page.html': (words) => `<!doctype html><title>x</title><p>Dear reader, ${words}</p>`,
  'comment.html': (words) => `<!doctype html><!-- ${words} --><p>Nothing`,
  'attribute.html': (words) => `<!doctype html><p title='${words}'>Nothing`,
  'entities.html': (words) => `<!doctype html><p>${entities(words)}</p>`,
  'broken.html': (words) =>
    `<!doctype html><p>${words.replace(/ /g, '\n   ').replace(/^(..)/, '$1<b></b>')}</p>`,
  'script.js': (words) => `const x=1;/* ${words} */`,
  'escaped.js': (words) => `const x='${escapes(words)}'`,
  'script.js.map': (words) =>
    JSON.stringify({ version: 3, sources: ['a.ts'], sourcesContent: [`// ${words}`] }),
  'inline-map.js': (words) => `x//# sourceMappingURL=data:application/json;base64,${base64(`["${words}"]`)}`,
  'data.json': (words) => JSON.stringify({ version: 1, note: words }),
  'style.css': (words) => `a::after { content: '${words}' }`,
  'address.html': (words) => `<a href="https://x.example/?q=${encodeURIComponent(words)}">x</a>`,
  'drawing.svg': (words) => `<svg xmlns="http://www.w3.org/2000/svg"><desc>${words}</desc></svg>`,
  'list.csv': (words) => `a,b\n"${words}",1\n`,
  'feed.xml': (words) => `<a><b>${words}</b></a>`,
  'plain.txt': (words) => words,
  'photo.jpg': (words) => beside(words).jpeg().toBuffer(),
  'photo.webp': (words) => beside(words).webp().toBuffer(),
  'photo.png': (words) => beside(words).png().toBuffer(),
};

/** Plants words in a folder of its own for every kind of file, a PDF's text and title included; the files written. */
export async function plant(folder: string, words: readonly string[]): Promise<string[]> {
  const files: string[] = [];
  const write = async (file: string, content: string | Buffer) => {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), content);
    files.push(file);
  };
  const found = findBrowser();
  if (!found) throw new Error('no Chromium is to be found; run setup');
  const browser = await chromium.launch({ executablePath: found.path });
  try {
    const page = await browser.newPage();
    for (const [number, each] of words.entries()) {
      for (const [name, make] of Object.entries(PLANTS))
        await write(`planted/${number}/${name}`, await make(each));
      await page.setContent(`<title>Offer</title><p>Dear reader, ${each}</p>`);
      await write(`planted/${number}/text.pdf`, await page.pdf());
      await page.setContent(`<title>${each}</title><p>Nothing`);
      await write(`planted/${number}/title.pdf`, await page.pdf());
      await page.setContent(`<p><a href="https://x.example/#${encodeURIComponent(each)}">Nothing</a>`);
      await write(`planted/${number}/link.pdf`, await page.pdf());
    }
  } finally {
    await browser.close();
  }
  return files;
}
