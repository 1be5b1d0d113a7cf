import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { command as accept } from '../../src/commands/accept.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { runCommand } from './client-kitchen.ts';
import { replaceIn, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

const folder = 'private/kitchen/events/regatta-lunch';
const LONG = 'Apple, oat and bramble crumble with the windfalls of every orchard along the strand';
/** With all that is in it, no face holds it: its card is not folded. */
const ENDLESS =
  'Butter bean stew with leeks, celery leaves, potatoes, rosemary, garlic, a broth of everything that the cellar has at the end of a long winter, and what the boats brought in on the day before yesterday';
const EVERYTHING =
  'milk, egg, peanut, soy, sesame, celery, mustard, lupin, sulphites, wheat, spelt, rye, barley, oats, fish (haddock), crustacean (shrimp), mollusc (squid)';
const WARNED = 'almond, hazelnut, walnut, cashew, pecan, brazil nut, pistachio, macadamia';
/** Sheets in millimetres. */
const SHEETS = { a4: [210, 297], letter: [215.9, 279.4] } as const;

interface Word {
  text: string;
  /** Millimetres from the sheet's left and top. */
  left: number;
  right: number;
  line: number;
  upsideDown: boolean;
}

describe('the cards beside the dishes', () => {
  let kitchen: SecondKitchen;
  let plan: PrepPlanDocument;

  beforeAll(async () => {
    kitchen = await secondKitchen(async (content) => {
      await replaceIn(
        join(content, 'ingredients/own.yaml'),
        'contains: none\n  may contain: none\n  parts: butter beans',
        `contains: ${EVERYTHING}\n  may contain: ${WARNED}\n  parts: butter beans`,
      );
      await replaceIn(
        join(content, 'recipes/bean-and-leek-stew.mdx'),
        'name: Butter bean and leek stew',
        `name: "${ENDLESS}"`,
      );
      await replaceIn(
        join(content, 'recipes/apple-oat-crumble.mdx'),
        'name: Apple and oat crumble',
        `name: "${LONG}"`,
      );
      await replaceIn(
        join(content, 'proposals/regatta-lunch.md'),
        'Bowls: [haddock-chowder]',
        'Bowls: [bean-and-leek-stew]',
      );
      await replaceIn(join(content, 'proposals/regatta-lunch.md'), 'lines: 1', 'lines: 3');
    });
    const signature = { signed: 'regatta-lunch', name: 'Marit Skarn', email: 'marit@skerrivane.example' };
    await runCommand(kitchen.content, accept, [], { ...signature, package: 'chowder-lunch' });
  });

  afterAll(() => kitchen?.remove());

  test.each(['a4', 'letter'] as const)(
    'on %s every word of a card stands on its face, upright or upside down, and all are there',
    async (paper) => {
      if (paper === 'letter') await kitchen.edit('kitchen.yaml', 'paper: a4', 'paper: letter');
      const { code, said, complained } = await kitchen.build({});
      expect([code, code === 0 ? '' : said + complained]).toEqual([0, '']);
      plan = JSON.parse(await kitchen.text(`${folder}/prep-plan.json`)) as PrepPlanDocument;
      const pages = await wordsOf(join(kitchen.out, folder, 'buffet-cards.pdf'));
      const [width, height] = SHEETS[paper];
      // Two columns of 94 mm in the middle of the sheet, rows of 127 mm from 11 mm on; a face is half a card.
      const side = (width - 2 * 94) / 2;
      const faces = new Map<string, string>();
      for (const [page, words] of pages.entries()) {
        const { margin, cards } = Object.groupBy(words, ({ line }) =>
          line < 11 || line > height - 11 ? 'margin' : 'cards',
        );
        const running = margin?.map(({ text }) => text).join(' ') ?? '';
        expect(running).toContain('Regatta lunch');
        expect(running).toContain(`${page + 1} / ${pages.length}`);
        const placed = (cards ?? []).map((word) => ({
          ...word,
          column: word.left < width / 2 ? 0 : 1,
          row: Math.floor((word.line - 11) / 127),
        }));
        const folded = new Set(
          placed.filter((word) => word.upsideDown).map(({ row, column }) => `${page}.${row}.${column}`),
        );
        for (const { text, left, right, line, upsideDown, column, row } of placed) {
          const inside = (line - 11) % 127;
          expect([0, 1]).toContain(row);
          expect(left - side - column * 94).toBeGreaterThan(4);
          expect(side + (column + 1) * 94 - right).toBeGreaterThan(4);
          // Whole letters keep 3 mm from where the card is folded and cut.
          const at = `${page}.${row}.${column}`;
          const [top, bottom] = upsideDown ? [0, 63.5] : [folded.has(at) ? 63.5 : 0, 127];
          expect(inside).toBeGreaterThan(top + 3);
          expect(inside).toBeLessThan(bottom - 3);
          const face = `${at}.${upsideDown}`;
          faces.set(face, `${faces.get(face) ?? ''}${text}`);
        }
      }
      const plain = (text: string) => text.replace(/\s+/g, '').toLowerCase();
      const texts = [...faces.values()].map(plain);
      // A card on each of three lines, said on both faces where it is folded.
      const shown = plan.dishes.map(({ name }) => (name === ENDLESS ? 3 : 6));
      expect(shown.toSorted()).toEqual([3, 6]);
      expect(texts).toHaveLength(9);
      for (const { name, contains, mayContain } of plan.dishes) {
        const own = texts.filter((text) => text.includes(plain(name)));
        expect(own).toHaveLength(name === ENDLESS ? 3 : 6);
        for (const text of own) {
          for (const allergen of contains) expect(text).toContain(plain(allergen));
          expect(text.includes('maycontain')).toBe(mayContain.length > 0);
          for (const allergen of mayContain) expect(text).toContain(plain(allergen));
          expect(text).toContain(plain('Allergy? Ask us before you eat.'));
        }
      }
      expect(plan.dishes.some(({ name, contains }) => name === ENDLESS && contains.length > 10)).toBe(true);
    },
  );

  test('they are listed on the event’s page, and a plated event has none', async () => {
    expect(await kitchen.text(`${folder}/index.html`)).toContain('href="buffet-cards.pdf"');
    expect(await kitchen.text('private/kitchen/events/lifeboat-evening/index.html')).not.toContain(
      'buffet-cards',
    );
    await expect(
      readFile(join(kitchen.out, 'private/kitchen/events/lifeboat-evening/buffet-cards.pdf')),
    ).rejects.toThrow('ENOENT');
  });
});

/** Words of each page of a PDF, with where they stand. */
async function wordsOf(file: string): Promise<Word[][]> {
  const loading = getDocument({ data: new Uint8Array(await readFile(file)), verbosity: 0 });
  try {
    const pdf = await loading.promise;
    const pages = Array.from({ length: pdf.numPages }, async (_, index) => {
      const page = await pdf.getPage(index + 1);
      const height = page.view[3]!;
      const { items } = await page.getTextContent();
      return items.flatMap((item): Word[] => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [across = 0, , , , x, y] = item.transform as number[];
        const millimetre = 25.4 / 72;
        const upsideDown = across < 0;
        const ends = x! + (upsideDown ? -item.width : item.width);
        return [
          {
            text: item.str,
            left: Math.min(x!, ends) * millimetre,
            right: Math.max(x!, ends) * millimetre,
            line: (height - y!) * millimetre,
            upsideDown,
          },
        ];
      });
    });
    return await Promise.all(pages);
  } finally {
    await loading.destroy();
  }
}
