import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { projectDir } from '../../../src/build/project-dir.ts';
import { rememberedOffers } from '../../../src/build/sound-offers.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import type { Offer } from '../../../src/schema/offer.ts';

const demo = join(projectDir, 'content');
const offerFiles = readdirSync(join(demo, 'offers')).sort();

let project: string;
let content: string;
beforeEach(() => {
  const dir = mkdtempSync(join(tmpdir(), 'salver-sound-'));
  project = join(dir, 'project');
  content = join(dir, 'content');
  mkdirSync(join(project, 'src', 'engine'), { recursive: true });
  writeFileSync(join(project, 'src', 'engine', 'quote.ts'), 'export const one = 1;\n');
  cpSync(demo, content, { recursive: true });
});
afterEach(() => rmSync(join(project, '..'), { recursive: true, force: true }));

const record = () => join(project, '.salver', 'sound-offers.json');

/** Reads the content as a build does; says which offers were checked, which stand, and what was found. */
async function read() {
  const checked: string[] = [];
  const check = (offer: Offer) => {
    checked.push(`${offer.proposal}-r${offer.revision}.json`);
    return offerProblem(offer);
  };
  const sound = await rememberedOffers(project);
  const { book, findings } = await readBook(content, check, sound);
  await sound.save();
  return { checked: checked.sort(), offers: book?.offers, findings };
}

describe('offers found sound before', () => {
  test('are not checked again, and are the same offers', async () => {
    const first = await read();
    expect(first.checked).toEqual(offerFiles);
    const second = await read();
    expect(second.checked).toEqual([]);
    // Entry by entry in the same order, since they are published as they are.
    expect(JSON.stringify([...(second.offers ?? [])])).toBe(JSON.stringify([...(first.offers ?? [])]));
    expect(second.findings).toEqual(first.findings);
  });

  test('one that was changed by a single sign is checked and held back, however often it is read', async () => {
    await read();
    const [name = ''] = offerFiles;
    const file = join(content, 'offers', name);
    writeFileSync(file, readFileSync(file, 'utf8').replace(/"occasion": "./, '"occasion": "X'));
    for (const _ of [1, 2]) {
      const again = await read();
      expect(again.checked).toEqual([name]);
      expect(again.findings.map(({ code }) => code)).toContain('offer-altered');
      expect([...(again.offers?.values() ?? [])].flat()).toHaveLength(offerFiles.length - 1);
    }
  });

  test('a sound file under another offer’s name is still told', async () => {
    await read();
    const [name = '', other = ''] = offerFiles;
    cpSync(join(content, 'offers', name), join(content, 'offers', other));
    expect((await read()).findings.map(({ code }) => code)).toContain('record-name');
  });

  test('all are checked again by other code, and where the record is damaged', async () => {
    await read();
    writeFileSync(join(project, 'src', 'engine', 'quote.ts'), 'export const one = 2;\n');
    expect((await read()).checked).toEqual(offerFiles);
    expect((await read()).checked).toEqual([]);
    writeFileSync(record(), readFileSync(record(), 'utf8').slice(0, -40));
    expect((await read()).checked).toEqual(offerFiles);
  });

  test('a place that cannot be written costs time alone', async () => {
    writeFileSync(join(project, '.salver'), 'a file where the folder should be');
    expect((await read()).checked).toEqual(offerFiles);
    expect((await read()).checked).toEqual(offerFiles);
  });
});
