import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { getDocument, OPS, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { eventFolder, type SecondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

/** Words of one sheet, with the size of their type in points. */
interface Sheet {
  text: string;
  words: { text: string; size: number }[];
}

describe('the sheets that a kitchen works from', () => {
  let kitchen: SecondKitchen;
  let plan: PrepPlanDocument;
  let sheets: Sheet[];
  /** Every colour that the plan, its labels and the invoice are set in. */
  const colours = new Map<string, Set<string>>();

  beforeAll(async () => {
    kitchen = await sharedKitchen('plain');
    plan = await kitchen.plan();
    sheets = await read('prep-plan.pdf', sheetsOf);
    for (const paper of ['prep-plan.pdf', 'labels.pdf', 'invoice/invoice.pdf'])
      colours.set(paper, await read(paper, coloursOf));
  });

  afterAll(() => kitchen?.remove());

  async function read<T>(paper: string, work: (pdf: PDFDocumentProxy) => Promise<T>): Promise<T> {
    const data = new Uint8Array(await readFile(join(kitchen.out, eventFolder, paper)));
    const loading = getDocument({ data, verbosity: 0 });
    try {
      return await work(await loading.promise);
    } finally {
      await loading.destroy();
    }
  }

  test('every sheet says which job it belongs to, and which of how many it is', () => {
    expect(sheets.length).toBeGreaterThan(plan.recipes.length + 4);
    for (const [index, { text }] of sheets.entries()) {
      expect(text).toContain(`${plan.event.occasion}, ${plan.event.client}`);
      expect(text).toContain(`${index + 1} / ${sheets.length}`);
    }
  });

  test('each recipe has a sheet of its own, with all it takes, in type that is read from where it lies', () => {
    for (const recipe of plan.recipes) {
      const own = sheets.filter(({ words }) =>
        words.some(({ text, size }) => size >= 22 && text === recipe.name),
      );
      expect([recipe.name, own.length]).toEqual([recipe.name, 1]);
      const [sheet] = own;
      const large = sheet!.words.filter(({ size }) => size >= 22).map(({ text }) => text);
      expect(large).toEqual([recipe.name]);
      for (const { amount, name } of recipe.lines) {
        expect(sheet!.text).toContain(amount.printed.replace(/\s+/g, ' '));
        expect(sheet!.text).toContain(name);
      }
      for (const { text } of recipe.steps) expect(sheet!.text).toContain(text);
      const amounts = new Set(recipe.lines.map(({ amount }) => amount.printed));
      const set = sheet!.words.filter(({ text }) => amounts.has(text));
      for (const { size } of set) expect(size).toBeGreaterThanOrEqual(14);
    }
  });

  test.each(['prep-plan.pdf', 'labels.pdf', 'invoice/invoice.pdf'])('%s is black and grey alone', (paper) => {
    const used = [...(colours.get(paper) ?? [])];
    expect(used.length).toBeGreaterThan(0);
    for (const colour of used) {
      const [red = 0, green = 0, blue = 0] = colour
        .match(/[0-9a-f]{2}/g)!
        .map((hex) => Number.parseInt(hex, 16));
      // The running words of a sheet are a warm grey, a few steps from a plain one.
      expect([colour, Math.max(red, green, blue) - Math.min(red, green, blue) <= 12]).toEqual([colour, true]);
    }
  });
});

async function sheetsOf(pdf: PDFDocumentProxy): Promise<Sheet[]> {
  const pages = Array.from({ length: pdf.numPages }, async (_, index): Promise<Sheet> => {
    const { items } = await (await pdf.getPage(index + 1)).getTextContent();
    const words = items.flatMap((item) =>
      'str' in item && item.str.trim() !== ''
        ? [{ text: item.str.trim(), size: Math.abs(item.transform[3] as number) }]
        : [],
    );
    const text = items.map((item) => ('str' in item ? item.str : '')).join(' ');
    return { words, text: text.replace(/\s+/g, ' ') };
  });
  return Promise.all(pages);
}

/** Colours that are filled or drawn with, `#rrggbb`. */
async function coloursOf(pdf: PDFDocumentProxy): Promise<Set<string>> {
  const found = new Set<string>();
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const { fnArray, argsArray } = await (await pdf.getPage(number)).getOperatorList();
    for (const [index, operator] of fnArray.entries())
      if (operator === OPS.setFillRGBColor || operator === OPS.setStrokeRGBColor)
        found.add(String((argsArray[index] as unknown[])[0]));
  }
  return found;
}
