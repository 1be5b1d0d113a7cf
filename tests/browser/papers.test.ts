import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { quote } from '../../src/engine/quote/quote.ts';
import { wordsIn } from '../../src/words/words-in.ts';
import {
  clubFolder,
  crewFolder,
  eventFolder,
  replaceIn,
  type SecondKitchen,
  secondKitchen,
} from './second-kitchen.ts';

const LABEL_CAUTION = wordsIn('en-US')('cautions.label');

const papers = [
  `${clubFolder}/proposal.pdf`,
  `${crewFolder}/proposal.pdf`,
  `${eventFolder}/prep-plan.pdf`,
  `${eventFolder}/labels.pdf`,
];

describe('papers', () => {
  let kitchen: SecondKitchen;
  const bytes = new Map<string, Buffer>();

  beforeAll(async () => {
    kitchen = await secondKitchen(async (content) => {
      // A label that no size of type holds whole.
      const parts = Array.from({ length: 60 }, (_, index) => `grain of sort ${index + 1}`).join(', ');
      await replaceIn(join(content, 'ingredients/own.yaml'), 'wholemeal wheat flour', `flour, ${parts}`);
    });
    expect((await kitchen.build({})).code).toBe(0);
    for (const paper of papers) bytes.set(paper, await readFile(join(kitchen.out, paper)));
  });

  afterAll(() => kitchen?.remove());

  async function read<T>(paper: string, work: (pdf: PDFDocumentProxy) => Promise<T>): Promise<T> {
    const loading = getDocument({
      data: new Uint8Array(bytes.get(paper)!),
      verbosity: 0,
      fontExtraProperties: true,
    });
    try {
      return await work(await loading.promise);
    } finally {
      await loading.destroy();
    }
  }

  async function textOf(pdf: PDFDocumentProxy): Promise<string> {
    const pages = Array.from({ length: pdf.numPages }, async (_, index) => {
      const content = await (await pdf.getPage(index + 1)).getTextContent();
      return content.items.map((item) => ('str' in item ? item.str : '')).join(' ');
    });
    return (await Promise.all(pages)).join(' ').replace(/\s+/g, ' ');
  }

  /** Names of all fonts that a document embeds or names, from its font descriptors. */
  async function fontsOf(pdf: PDFDocumentProxy): Promise<string[]> {
    const names = new Set<string>();
    for (let number = 1; number <= pdf.numPages; number += 1) {
      const page = await pdf.getPage(number);
      await page.getOperatorList();
      const { items } = await page.getTextContent();
      for (const item of items) {
        if (!('fontName' in item)) continue;
        const font = page.commonObjs.get(item.fontName) as { name: string; missingFile?: boolean };
        names.add(font.missingFile ? `${font.name} (not embedded)` : font.name);
      }
    }
    return [...names].map((name) => name.replace(/^[A-Z]{6}\+/, '')).sort();
  }

  test.each(papers)(
    '%s is tagged, in its language and titled, with our fonts alone embedded',
    async (paper) => {
      await read(paper, async (pdf) => {
        const { info } = (await pdf.getMetadata()) as { info: Record<string, unknown> };
        expect(info).toMatchObject({ Author: 'Tidewrack Kitchen', Language: 'en-GB' });
        expect(String(info.Title)).toMatch(/Crew evening|Regatta lunch/);
        // Typed as an object, answered as a map.
        const marks = (await pdf.getMarkInfo()) as unknown as ReadonlyMap<string, boolean>;
        expect(marks.get('Marked')).toBe(true);
        for (const font of await fontsOf(pdf))
          expect(font).toMatch(/^Source(Sans3|Serif4|Sans|Serif)[A-Za-z0-9-]*$/);
        // A weight or slope that no font has would be drawn as glyphs of a font without a name.
        expect(Buffer.from(bytes.get(paper)!).includes('/Type3')).toBe(false);
        const { view } = await pdf.getPage(1);
        // A4 in points, to the quarter: 210 × 297 mm.
        expect(Math.abs(view[2]! - 595.28)).toBeLessThan(0.75);
        expect(Math.abs(view[3]! - 841.89)).toBeLessThan(0.75);
      });
    },
  );

  test('a proposal’s sheets say the offer’s total, every payment and its reference, and where to sign', async () => {
    const offer = await kitchen.offer('regatta-lunch');
    const priced = quote(offer.terms, offer.proposed);
    const text = (await read(papers[0]!, textOf)).replaceAll(',', '');
    for (const { amount } of [{ amount: priced.total }, ...priced.payments])
      expect(text).toContain(`€${amount}`);
    expect(text.replaceAll(' ', '')).toContain(`reference${offer.digest.slice(0, 12)}`);
    expect(text).toContain('Signature');
    // This kitchen has not said where its site is, so nothing leads there.
    expect(text).not.toContain('on the web');
    expect((await read(papers[1]!, textOf)).includes('Signature')).toBe(false);
  });

  test('each menu keeps to a sheet of its own', async () => {
    await read(papers[0]!, async (pdf) => {
      const offer = await kitchen.offer('regatta-lunch');
      for (const [index, { courses }] of offer.terms.packages.entries()) {
        const content = await (await pdf.getPage(index + 2)).getTextContent();
        const text = content.items
          .map((item) => ('str' in item ? item.str : ''))
          .join(' ')
          .replace(/\s+/g, ' ');
        for (const { dishes } of courses) for (const { name } of dishes) expect(text).toContain(name);
        // A menu is passed on without its price.
        expect(text).not.toContain('€');
      }
    });
  });

  test('each recipe of the plan is on a sheet, with the amounts of prep-plan.json', async () => {
    const plan = await kitchen.plan();
    const text = await read(papers[2]!, textOf);
    for (const recipe of plan.recipes) {
      expect(text).toContain(recipe.name);
      for (const { amount } of recipe.lines) expect(text).toContain(amount.printed.replace(/\s+/g, ' '));
    }
  });

  test('the plan has each allergen and warning with the way it comes in, and every diet with what stands against it', async () => {
    const plan = await kitchen.plan();
    const plain = (words: string) => words.replace(/\s+/g, '');
    const text = plain(await read(papers[2]!, textOf));
    const ways = plan.dishes.flatMap((dish) =>
      [...dish.allergenPaths, ...dish.mayContainPaths].flatMap(({ paths }) =>
        paths.map((path) => ({ path, dish: dish.name })),
      ),
    );
    expect(ways.some(({ path }) => path.split('→').length === 3)).toBe(true);
    // The dish heads all its ways and is not said again in each.
    for (const { path, dish } of ways)
      expect(text).toContain(plain(path.replace(`${dish} → `, '').replaceAll('→', '›')));
    for (const { diets } of plan.dishes)
      for (const { diet, suits, because } of diets)
        expect(text).toContain(
          plain(
            `${diet}: ${suits === 'unknown' ? 'not known' : suits}${because.length > 0 ? `(${because.join(', ')})` : ''}`,
          ),
        );
  });

  test('there is a label for each container, with allergens and every ingredient', async () => {
    const plan = await kitchen.plan();
    const text = await read(papers[3]!, textOf);
    const plain = (words: string) => words.replace(/\s+/g, '').toLowerCase();
    expect(text.split(LABEL_CAUTION).length).toBeGreaterThan(plan.labels.length);
    for (const label of plan.labels) {
      expect(plain(text)).toContain(plain(`${label.dish}${label.of}`));
      for (const allergen of label.contains) expect(plain(text)).toContain(plain(allergen));
      for (const warning of label.mayContain) expect(text).toContain(warning);
      for (const word of label.ingredients.split(', ')) expect(plain(text)).toContain(plain(word));
    }
  });

  test('every label lies on its own place of the stock, none runs into the next, and a long one goes on', async () => {
    await read(papers[3]!, async (pdf) => {
      const millimetre = 72 / 25.4;
      let labels = 0;
      for (let number = 1; number <= pdf.numPages; number += 1) {
        const { items } = await (await pdf.getPage(number)).getTextContent();
        const cells = new Map<string, string>();
        for (const item of items) {
          if (!('str' in item) || item.str.trim() === '') continue;
          const [x, y] = [item.transform[4] / millimetre, 297 - item.transform[5] / millimetre];
          // 99.1 × 57 mm, 6 mm from the top, 4.65 mm from the side, 2.5 mm between.
          const column = x < 105 ? 0 : 1;
          const row = Math.floor((y - 6) / 57);
          const inside = x - (4.65 + column * 101.6);
          expect(inside).toBeGreaterThan(3);
          expect(inside + item.width / millimetre).toBeLessThan(99.1 - 3);
          const cell = `${column}.${row}`;
          cells.set(cell, `${cells.get(cell) ?? ''}${item.str} `);
        }
        for (const [cell, text] of cells) {
          expect(Number(cell.split('.')[1])).toBeLessThan(5);
          for (const once of ['Ingredients', 'Made ', 'Use by', 'Crew evening, ']) {
            expect(text.split(once)).toHaveLength(2);
          }
          expect(text).toMatch(/Contains|CONTAINS|NO LISTED ALLERGEN/);
          labels += 1;
        }
      }
      expect(labels).toBeGreaterThan((await kitchen.plan()).labels.length);
      expect(await textOf(pdf)).toMatch(/\(part 2 of \d\)/);
    });
  });

  test('the same offer and plan print the same bytes again', async () => {
    await rm(kitchen.out, { recursive: true });
    await kitchen.build({});
    for (const paper of papers)
      expect((await readFile(join(kitchen.out, paper))).equals(bytes.get(paper)!)).toBe(true);
  });
});
