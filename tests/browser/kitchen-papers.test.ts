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

  test('whoever leads has all of it on one sheet', () => {
    const own = sheets.findIndex(({ text }) => text.includes('For whoever leads'));
    expect(own).toBeGreaterThan(0);
    const sheet = sheets[own]!.text;
    for (const { what } of plan.leader?.clock ?? []) expect(sheet).toContain(what);
    for (const { who } of plan.leader?.phones ?? []) expect(sheet).toContain(who);
    expect(sheet).toContain('Ask the kitchen, never guess.');
    expect(sheets[own + 1]!.text).toContain('Totals');
  });

  test('every sheet says which job it belongs to, and which of how many it is', () => {
    expect(sheets.length).toBeGreaterThan(4);
    for (const [index, { text }] of sheets.entries()) {
      expect(text).toContain(`${plan.event.occasion}, ${plan.event.client}`);
      expect(text).toContain(`${index + 1} / ${sheets.length}`);
    }
  });

  test('each recipe is whole on one sheet, in type that is read from where it lies', () => {
    const shown = plan.recipes.filter(({ id }) => !id.includes('--'));
    expect(shown.length).toBeGreaterThan(0);
    for (const recipe of shown) {
      const own = sheets.filter(({ words }) =>
        words.some(({ text, size }) => size >= 14.5 && text === recipe.name),
      );
      expect([recipe.name, own.length]).toEqual([recipe.name, 1]);
      const [sheet] = own;
      for (const { amount, name } of recipe.lines) {
        expect(sheet!.text).toContain(amount.printed.replace(/\s+/g, ' '));
        expect(sheet!.text).toContain(name);
      }
      for (const { text } of recipe.steps) expect(sheet!.text).toContain(text);
      const amounts = new Set(recipe.lines.map(({ amount }) => amount.printed));
      const set = sheet!.words.filter(({ text }) => amounts.has(text));
      if (set.length > 0) expect(Math.max(...set.map(({ size }) => size))).toBeGreaterThan(11.9);
    }
  });

  test('a day’s station lists are set at 14 points and more, with pan, oven and heat in columns of their own', async () => {
    let tasks = 0;
    for (const { date, tasks: own } of plan.days) {
      const data = await readFile(join(kitchen.out, 'private/kitchen/days', date, 'day.pdf'));
      const loading = getDocument({ data: new Uint8Array(data), verbosity: 0 });
      const day = await sheetsOf(await loading.promise);
      await loading.destroy();
      const words = day.flatMap((sheet) => sheet.words);
      for (const { recipeName, heat, cookTo, text } of own) {
        const names = words.filter((word) => word.text === recipeName && word.size >= 13.9);
        // What is done at the place is on the event's own sheets.
        if (names.length === 0) continue;
        tasks += 1;
        expect(day.some((sheet) => sheet.text.includes(text))).toBe(true);
        if (heat) expect(words.some((word) => word.text === heat && word.size >= 17)).toBe(true);
        if (cookTo) expect(day.some((sheet) => sheet.text.includes(`Cook to ${cookTo}`))).toBe(true);
      }
      expect(day[0]!.text).toContain(plan.event.occasion);
      // The sheet for the wall is read from three meters.
      expect(words.some(({ text, size }) => size >= 39 && text.includes(plan.event.occasion))).toBe(true);
    }
    expect(tasks).toBeGreaterThan(3);
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
