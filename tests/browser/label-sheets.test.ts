import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { command as guests } from '../../src/commands/guests.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { wordsIn } from '../../src/words/words-in.ts';
import { runCommand } from './client-kitchen.ts';
import { type Run, sheetsOf, withPdf } from './read-pdf.ts';
import { eventFolder, replaceIn, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

const LABEL_CAUTION = wordsIn('en-US')('cautions.label');

/** A label stock as its package says it, in millimetres: 1 in is 25.4 mm. */
interface Stock {
  readonly sheet: readonly [width: number, height: number];
  readonly label: readonly [width: number, height: number];
  readonly above: number;
  readonly beside: number;
  readonly between: number;
}

const STOCKS = {
  a4: { sheet: [210, 297], label: [99.1, 57], above: 6, beside: 4.65, between: 2.5 },
  letter: {
    sheet: [8.5 * 25.4, 11 * 25.4],
    label: [4 * 25.4, 2 * 25.4],
    above: 0.5 * 25.4,
    beside: (5 / 32) * 25.4,
    between: (3 / 16) * 25.4,
  },
} as const satisfies Record<string, Stock>;

/** What may stand between the type and the edge of a label. */
const PADDING = { side: 3.6, top: 3.4 };
/** Between the top of a line and its baseline, as a share of the type size, by the metrics of the sans. */
const BASELINE = 0.89;
const POINT = 25.4 / 72;
const HALF = 0.5;

/** Labels in capitals, of a food that no size of type holds, for a guest whose portion is made and sealed apart. */
const PARTS = Array.from({ length: 110 }, (_, index) => `MAIZE AND RYE WHOLEMEAL ${index + 1}`);
const MILK_LEFT_OUT = 'swap: { butter: olive-oil for milk }\nsteps:\n';

interface Cell {
  readonly place: string;
  readonly left: number;
  readonly top: number;
  readonly runs: Run[];
}

describe('sheets of labels', () => {
  let kitchen: SecondKitchen;
  let plan: PrepPlanDocument;

  beforeAll(async () => {
    kitchen = await secondKitchen(async (content) => {
      await replaceIn(join(content, 'ingredients/own.yaml'), 'wholemeal wheat flour', PARTS.join(', '));
      await replaceIn(join(content, 'recipes/apple-oat-crumble.mdx'), 'steps:\n', MILK_LEFT_OUT);
      await replaceIn(join(content, 'proposals/lifeboat-evening.md'), 'celery: 1', 'celery: 1\n  milk: 1');
    });
    // 38 guests as accepted: 29 take the chowder, 9 the stew.
    const rows = Array.from({ length: 38 }, (_, index) =>
      index === 0
        ? 'Ada Lund,4,Smoked haddock chowder,milk'
        : `Guest ${index},${1 + (index % 5)},${index < 29 ? 'Smoked haddock chowder' : 'Butter bean and leek stew'},`,
    );
    const list = join(kitchen.content, '..', 'guests.csv');
    await writeFile(list, ['name,table,main,need', ...rows].join('\n'));
    await runCommand(kitchen.content, guests, ['lifeboat-evening'], { from: list });
  });

  afterAll(() => kitchen?.remove());

  async function print(): Promise<void> {
    const { code, said, complained } = await kitchen.build({});
    expect([code, code === 0 ? '' : said + complained]).toEqual([0, '']);
    plan = await kitchen.plan();
  }

  /** Every label of the document as it was last printed, by the place on its sheet that its type stands on. */
  async function cellsOn({ sheet, label, above, beside, between }: Stock): Promise<Cell[]> {
    const sheets = await withPdf(await readFile(join(kitchen.out, eventFolder, 'labels.pdf')), sheetsOf);
    return sheets.flatMap(({ width, height, runs }, number) => {
      expect(Math.abs(width - sheet[0])).toBeLessThan(HALF);
      expect(Math.abs(height - sheet[1])).toBeLessThan(HALF);
      const cells = new Map<string, Cell>();
      for (const run of runs) {
        const column = run.left < sheet[0] / 2 ? 0 : 1;
        const row = Math.floor((run.top - above) / label[1]);
        const place = `${number}.${row}.${column}`;
        const cell = cells.get(place) ?? {
          place,
          left: beside + column * (label[0] + between),
          top: above + row * label[1],
          runs: [],
        };
        cell.runs.push(run);
        cells.set(place, cell);
      }
      return [...cells.values()];
    });
  }

  const textOf = ({ runs }: Cell) =>
    runs
      .map(({ text }) => text)
      .join(' ')
      .replace(/\s+/g, ' ');

  test.each(['a4', 'letter'] as const)(
    'are registered to half a millimetre on the stock for %s, and nothing leaves its label',
    async (paper) => {
      if (paper === 'letter') await kitchen.edit('kitchen.yaml', 'paper: a4', 'paper: letter');
      const stock = STOCKS[paper];
      await print();
      const cells = await cellsOn(stock);
      expect(cells.length).toBeGreaterThan(10);
      expect(new Set(cells.map(({ place }) => place.slice(2))).size).toBe(10);
      for (const cell of cells) {
        const [name] = cell.runs as [Run];
        const baseline = PADDING.top + BASELINE * name.points * POINT;
        expect([cell.place, Math.abs(name.left - cell.left - PADDING.side) < HALF]).toEqual([
          cell.place,
          true,
        ]);
        expect([cell.place, Math.abs(name.top - cell.top - baseline) < HALF]).toEqual([cell.place, true]);
        for (const run of cell.runs) {
          expect(run.left - cell.left).toBeGreaterThan(PADDING.side - HALF);
          expect(cell.left + stock.label[0] - run.right).toBeGreaterThan(PADDING.side - HALF);
          expect(cell.top + stock.label[1] - run.top).toBeGreaterThan(PADDING.top - HALF);
        }
        // What stands on each label stands there once: nothing came over from the label above.
        for (const once of ['Crew evening, ', 'Use by', LABEL_CAUTION.slice(0, 30)])
          expect([cell.place, once, textOf(cell).split(once).length]).toEqual([cell.place, once, 2]);
        expect(Number(cell.place.split('.')[1])).toBeLessThan(5);
      }
    },
  );

  test('carry every ingredient of a list that goes on over several, in its order, with all else on each', async () => {
    const cells = await cellsOn(STOCKS.letter);
    const label = plan.labels.find(({ ingredients }) => ingredients.includes(PARTS.at(-1)!))!;
    const pieces = cells
      .map(textOf)
      .filter((text) => text.startsWith(label.dish) && text.includes(label.of) && text.includes(' (part '));
    const [first = ''] = pieces;
    const count = Number(/\(part 1 of (\d)\)/.exec(first)?.[1]);
    expect(count).toBeGreaterThan(1);
    const own = pieces.slice(0, count);
    const listed = own.map(
      (text) => /Ingredients \(part \d of \d\): (.*?) (?:Parsley, and|Made )/.exec(text)?.[1],
    );
    const plain = (text: string) => text.replace(/\s+/g, '');
    expect(plain(listed.join(''))).toBe(plain(label.ingredients));
    for (const text of own)
      for (const allergen of label.contains) expect(plain(text).toUpperCase()).toContain(plain(allergen));
  });

  test('have each label of what is made ahead once, first, with what is read from a step away at 12 points', async () => {
    const cells = await cellsOn(STOCKS.letter);
    const prep = plan.prepLabels ?? [];
    expect(prep.length).toBeGreaterThan(0);
    expect(prep.map(({ dish }) => dish)).toContain('Strand broth');
    expect(plan.labels.map(({ dish }) => dish)).not.toContain('Strand broth');
    const printed = cells.filter((cell) => textOf(cell).includes('KITCHEN PREP'));
    expect(printed).toEqual(cells.slice(0, prep.length));
    const plain = (text: string) => text.replace(/\s+/g, '').toLowerCase();
    for (const [index, { dish, of, amount, goesInto, contains }] of prep.entries()) {
      const text = plain(textOf(printed[index]!));
      for (const word of [`${dish}${of}`, amount, goesInto!, ...contains])
        expect(text).toContain(plain(word));
    }
    const broth = printed.find((cell) => textOf(cell).startsWith('Strand broth'))!;
    for (const words of ['Strand broth', 'KITCHEN PREP', 'CELERY', 'Crew evening, ']) {
      const run = broth.runs.find(({ text }) => text.toUpperCase().includes(words.trim().toUpperCase()))!;
      expect([words, run.points >= 11.9]).toEqual([words, true]);
    }
  });

  test('have a portion for an allergic guest alone, sealed, with name and table', async () => {
    const sealed = (await cellsOn(STOCKS.letter)).map(textOf).filter((text) => text.includes('Sealed for'));
    expect(sealed.length).toBeGreaterThan(0);
    for (const text of sealed) {
      expect(text).toContain('Sealed for Ada Lund, Table 4: milk');
      expect(text).toContain('Sealed container');
      expect(text).toMatch(/\b1 of 1\b/);
      expect(/contains ([^:]*?) (?:may contain|ingredients)/i.exec(text)?.[1]).not.toMatch(/milk/i);
    }
  });

  // Last: it changes the kitchen.
  test('are moved by the kitchen’s nudge, all alike, and nothing else changes', async () => {
    const before = await cellsOn(STOCKS.letter);
    await kitchen.edit(
      'kitchen.yaml',
      'paper: letter',
      'paper: letter\nlabels: { nudge right: 1.5 mm, nudge down: -1 mm }',
    );
    const { above, beside, ...rest } = STOCKS.letter;
    await print();
    const after = await cellsOn({ ...rest, above: above - 1, beside: beside + 1.5 });
    expect(after.map(textOf)).toEqual(before.map(textOf));
    for (const [index, cell] of after.entries())
      for (const [place, run] of cell.runs.entries()) {
        const was = before[index]!.runs[place]!;
        expect(Math.abs(run.left - was.left - 1.5)).toBeLessThan(0.2);
        expect(Math.abs(run.top - was.top + 1)).toBeLessThan(0.3);
      }
  });
});
