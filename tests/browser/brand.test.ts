import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Browser } from 'playwright';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filesOf } from '../../src/files/digest.ts';
import { launch, openPage } from './open-page.ts';
import { clubFolder, replaceIn, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

const mark = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 80 40"><path d="M0 0h80v40z"/></svg>\n';

/** A photo with a camera's words in it. */
const photo = (colour: string) =>
  sharp({ create: { width: 1200, height: 800, channels: 3, background: colour } })
    .withExif({
      IFD0: { Artist: 'Plantedphotographer' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' },
    })
    .jpeg()
    .toBuffer();

describe('a kitchen with a mark, typefaces and photos of its own', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;
  let first: { files: string[]; html: string };
  const story = () => join(kitchen.content, 'packages/photos/hall.jpg');

  beforeAll(async () => {
    browser = await launch();
    kitchen = await secondKitchen(async (content) => {
      await replaceIn(
        join(content, 'kitchen.yaml'),
        'accent:',
        'mark: brand/mark.svg\nfonts: garamond\naccent:',
      );
      await mkdir(join(content, 'brand'));
      await writeFile(join(content, 'brand/mark.svg'), mark);
      await mkdir(join(content, 'packages/photos'));
      await writeFile(join(content, 'packages/photos/hall.jpg'), await photo('#446688'));
      const file = join(content, 'packages/storm-supper.mdx');
      await writeFile(file, `${await readFile(file, 'utf8')}\n![The hall, blue](photos/hall.jpg)\n`);
    });
    const { code, complained } = await kitchen.build({});
    expect(complained.replace(/^(?:Compiling|Printing).*\n/gm, '')).toBe('');
    expect(code).toBe(0);
    first = {
      files: await filesOf(join(kitchen.out, 'public')),
      html: await kitchen.text(`${clubFolder}/index.html`),
    };
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
  });

  test('publishes the fonts of its pair alone', () => {
    const fonts = first.files
      .filter((file) => file.endsWith('.woff2'))
      .map((file) => file.replace('_astro/', ''));
    expect(fonts.length).toBeGreaterThan(4);
    for (const font of fonts) expect(font).toMatch(/^(?:eb-garamond|fira-sans)-latin/);
  });

  test('publishes no photo but its small ones, which say nothing of the camera', async () => {
    const pictures = first.files.filter((file) => /\.(?:jpe?g|png|webp|avif)$/.test(file));
    expect(pictures.map((file) => file.replace(/^.*\.(\d+w\.webp)$/, '$1')).sort()).toEqual([
      '1200w.webp',
      '480w.webp',
      '960w.webp',
    ]);
    for (const file of first.files) {
      const bytes = await readFile(join(kitchen.out, 'public', file), 'latin1');
      expect(bytes.includes('Plantedphotographer'), file).toBe(false);
    }
  });

  test('shows mark and photo on a page opened as a file, in its typefaces and under the policy', async () => {
    const { page, complaints } = await openPage(browser, kitchen.out, `${clubFolder}/index.html`);
    await page.locator('.story img').first().scrollIntoViewIfNeeded();
    await page.waitForFunction(() => [...document.images].every((image) => image.complete));
    const seen = await page.evaluate(() => ({
      widths: [...document.images].map((image) => image.naturalWidth > 0),
      ratio: document.querySelector<HTMLImageElement>('.story img')!.getBoundingClientRect(),
      fonts: [...document.fonts].filter(({ status }) => status === 'loaded').map(({ family }) => family),
    }));
    await page.close();
    expect(complaints).toEqual([]);
    expect(seen.widths).toEqual([true, true]);
    expect(seen.ratio.width / seen.ratio.height).toBeCloseTo(1.5, 1);
    expect([...new Set(seen.fonts.map((font) => font.replaceAll('"', '')))].sort()).toEqual([
      'EB Garamond',
      'Fira Sans',
    ]);
    expect(first.html).toMatch(
      /<img class="house-mark" src="[^"]*mark-[0-9a-f]{12}\.svg" width="144" height="72" alt="">/,
    );
    expect(first.html).toMatch(
      /<img [^>]*alt="The hall, blue"[^>]* loading="lazy"[^>]* width="1200" height="800">/,
    );
  });

  test('prints them, with its fonts alone embedded', async () => {
    const loading = getDocument({
      data: new Uint8Array(await readFile(join(kitchen.out, clubFolder, 'proposal.pdf'))),
      verbosity: 0,
      fontExtraProperties: true,
    });
    const pdf = await loading.promise;
    const fonts = new Set<string>();
    const pictures: string[] = [];
    for (let number = 1; number <= pdf.numPages; number += 1) {
      const page = await pdf.getPage(number);
      const { fnArray, argsArray } = await page.getOperatorList();
      fnArray.forEach((_, index) => {
        const [id, width, height] = (argsArray[index] ?? []) as [unknown, unknown, unknown];
        if (/^img_/.test(String(id))) pictures.push(`${width} × ${height}`);
      });
      for (const item of (await page.getTextContent()).items) {
        if (!('fontName' in item)) continue;
        fonts.add((page.commonObjs.get(item.fontName) as { name: string }).name.replace(/^[A-Z]{6}\+/, ''));
      }
    }
    await loading.destroy();
    // A strip of the largest.
    expect(pictures).toContainEqual(expect.stringMatching(/^1200 × \d+$/));
    expect(fonts.size).toBeGreaterThan(2);
    for (const font of fonts) expect(font).toMatch(/^(?:EBGaramond|FiraSans)-/);
  });

  test('another picture is another page, and one that is gone leaves the offered story standing', async () => {
    await writeFile(story(), await photo('#884422'));
    expect((await kitchen.build()).code).toBe(0);
    const second = await kitchen.text(`${clubFolder}/index.html`);
    const names = [first.html, second].map((html) => html.match(/_astro\/([\w.-]+)\.480w\.webp/)?.[1]);
    expect(names[0]).not.toBe(names[1]);

    await rm(story());
    const { said } = await kitchen.build();
    expect(said).toContain(
      'warning photo-gone the story of “storm-supper” was offered with packages/photos/hall.jpg, which is gone or can’t be shown',
    );
    const third = await kitchen.text(`${clubFolder}/index.html`);
    expect(third).not.toContain('The hall, blue');
    expect((await filesOf(join(kitchen.out, 'public'))).filter((file) => file.endsWith('.webp'))).toEqual([]);
  });
});
