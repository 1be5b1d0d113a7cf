import { execFile } from 'node:child_process';
import { mkdir, readdir, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { projectDir } from '../../src/build/project-dir.ts';
import { clubFolder, crewFolder, eventFolder, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

describe('building again after the content changed', () => {
  let kitchen: SecondKitchen;

  beforeAll(async () => {
    kitchen = await secondKitchen();
    expect((await kitchen.build()).code).toBe(0);
  });

  afterAll(() => kitchen?.remove());

  const inode = async (file: string) => (await stat(join(kitchen.out, file))).ino;
  const total = (html: string) => /<tr class="total">[\s\S]*?class="figure">([^<]+)</.exec(html)?.[1];

  test('nothing changed: every file is the same file as before', async () => {
    const before = await inode(`${eventFolder}/index.html`);
    const { said } = await kitchen.build();
    expect(said).toMatch(/\b0 files made/);
    expect(await inode(`${eventFolder}/index.html`)).toBe(before);
  });

  test('a new price in a CSV shows in the event’s shopping, and the proposals are not made again', async () => {
    const before = await inode(`${clubFolder}/index.html`);
    const old = (await kitchen.plan()).shopping.find(({ ingredient }) => ingredient === 'smoked-haddock')!;
    await kitchen.edit('prices/strand-stores.csv', '17.80 per kg', '21.35 per kg');
    expect((await kitchen.build()).code).toBe(0);
    const now = (await kitchen.plan()).shopping.find(({ ingredient }) => ingredient === 'smoked-haddock')!;
    expect(now.cost).not.toBe(old.cost);
    expect(await kitchen.text(`${eventFolder}/index.html`)).toContain(`${now.cost}`);
    expect(await inode(`${clubFolder}/index.html`)).toBe(before);
  });

  test('a changed note of a cook shows, though nothing but the body changed', async () => {
    expect(await kitchen.text(`${eventFolder}/index.html`)).toContain('Taste before you salt');
    await kitchen.edit(
      'recipes/haddock-chowder.mdx',
      'Taste before you salt',
      'Salt *nothing* before you taste',
    );
    expect((await kitchen.build()).code).toBe(0);
    const html = await kitchen.text(`${eventFolder}/index.html`);
    expect(html).toContain('Salt <em>nothing</em> before you taste');
    expect(html).not.toContain('Taste before you salt');
  });

  test('a broken draft is told of and held back alone: event, offers and banner are published, exit code 1', async () => {
    await writeFile(
      join(kitchen.content, 'proposals', 'broken.md'),
      '---\nlink: c3r8harbourwall4t5x6y7z2m3\nshare: draft\nclient: { name: Nobody Yet }\noccasion: Half a thought\ndate: 2027-02-30\nserve at: 18:00\nvalid until: 2027-05-01\nplace: dunmarrow\nguests: { adults: 10 }\npackages: no-such-menu\n---\nDear you,\n',
    );
    const club = await inode(`${clubFolder}/index.html`);
    const { code, said } = await kitchen.build();
    expect(code).toBe(1);
    expect(said).toContain('proposals/broken.md:6:7 error');
    const event = await kitchen.text(`${eventFolder}/index.html`);
    expect(event).toContain('held back');
    expect(event).toMatch(/proposals\/broken\.md:6: /);
    expect(event).toContain('Smoked haddock chowder');
    expect(await inode(`${clubFolder}/index.html`)).toBe(club);
    await expect(kitchen.text('public/proposals/c3r8harbourwall4t5x6y7z2m3/index.html')).rejects.toThrow(
      'ENOENT',
    );
  });

  test('an allergen corrected after issue is published at once, dated; price and menu stay as offered', async () => {
    const before = await kitchen.text(`${clubFolder}/index.html`);
    const offer = await kitchen.offer('regatta-lunch');
    expect(before).not.toContain('Corrected since');
    await kitchen.edit(
      'ingredients/own.yaml',
      'contains: none\n  may contain: none\n  parts: butter beans, water, salt',
      'contains: milk\n  may contain: none\n  parts: butter beans, water, salt, whey',
    );
    await kitchen.edit('packages/chowder-lunch.mdx', '10-39: 12.50', '10-39: 19.99');
    await kitchen.edit('packages/storm-supper.mdx', 'name: ', 'name: New ');
    await kitchen.edit('recipes/bean-and-leek-stew.mdx', 'name: Butter bean', 'name: Renamed bean');
    expect((await kitchen.build()).code).toBe(1);
    for (const folder of [clubFolder, crewFolder]) {
      const html = await kitchen.text(`${folder}/index.html`);
      expect(html).toContain('Corrected since this was issued');
      expect(html).toMatch(/Correction, [^<]*26[^<]*2027: Butter bean and leek stew contains milk/);
    }
    const after = await kitchen.text(`${clubFolder}/index.html`);
    expect(total(after)).toBe(total(before));
    expect(total(after)).toContain(offer.samples[0]!.total.replace(/(\d)(?=(\d{3})+\.)/g, '$1,'));
    for (const gone of ['19.99', 'Renamed bean', 'New Storm']) expect(after).not.toContain(gone);
    const stew = /Butter bean and leek stew<\/p>[\s\S]*?<p class="dish-more">([^<]*)</.exec(after)?.[1];
    expect(stew).toContain('milk');
    const crew = await kitchen.plan();
    const served = crew.dishes.find(({ recipe }) => recipe === 'bean-and-leek-stew')!;
    expect(served.contains).toContain('milk');
  });

  test.skipIf(process.platform !== 'linux')(
    'without a browser it says so in one sentence, installs nothing and leaves the last output',
    async () => {
      const folder = join(kitchen.content, '..', 'no-browsers');
      await mkdir(folder);
      const main = join(projectDir, 'src', 'commands', 'main.ts');
      const words = [main, 'build', '--content', kitchen.content, '--out', kitchen.out];
      const before = await inode('.salver-build.json');
      const failed = await promisify(execFile)(process.execPath, words, {
        env: { PATH: folder, PLAYWRIGHT_BROWSERS_PATH: folder },
      }).then(
        () => undefined,
        (error: { code: number; stdout: string; stderr: string }) => error,
      );
      expect(failed).toMatchObject({
        code: 1,
        stdout: '',
        stderr: 'No Chromium found to print with: run `npm run setup` once, or build with `--no-pdf`.\n',
      });
      expect(await readdir(folder)).toEqual([]);
      expect(await inode('.salver-build.json')).toBe(before);
    },
  );

  test('the plan of an event whose day has passed stays as it was cooked from, whatever changes', async () => {
    const flags = { 'no-pdf': true };
    expect((await kitchen.build(flags, '2027-05-21')).code).toBeLessThan(2);
    const files = ['prep-plan.json', 'shopping.csv'].map((name) => `${eventFolder}/${name}`);
    const before = await Promise.all(files.map(inode));
    // All but the banner, which says what is wrong with the content on the day of a build.
    const plan = async () => (await kitchen.text(`${eventFolder}/index.html`)).replace(/^.*(?=<h1>)/s, '');
    const cooked = await plan();
    await kitchen.edit('recipes/haddock-chowder.mdx', 'name: ', 'name: New ');
    for (const day of ['2027-05-22', '2027-07-01']) {
      expect((await kitchen.build(flags, day)).code).toBeLessThan(2);
      expect(await Promise.all(files.map(inode))).toEqual(before);
      expect(await plan()).toBe(cooked);
    }
    expect(await kitchen.text(`${eventFolder}/prep-plan.json`)).not.toContain('New ');
    // What the page needs is still beside it.
    const styles = /href="[./]*(_astro\/[^"]+\.css)"/.exec(
      await kitchen.text(`${eventFolder}/index.html`),
    )?.[1];
    expect(await kitchen.text(`private/${styles}`)).toContain('{');
  });
});
