import { cp, readFile, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import jsQR from 'jsqr';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { command as issue } from '../../src/commands/issue.ts';
import { displayMoney } from '../../src/engine/money/display-money.ts';
import { money } from '../../src/engine/money/money.ts';
import { quote } from '../../src/engine/quote/quote.ts';
import type { Offer } from '../../src/schema/offer.ts';
import { runCommand } from './client-kitchen.ts';
import { pictureOf, type Sheet, sheetsOf, withPdf } from './read-pdf.ts';
import { clubFolder, crewFolder, replaceIn, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

const draftLink = 'c3r2ibsixmenus5u6y7z2n4abc';
const draftFolder = `public/proposals/${draftLink}`;
/** Dishes of the longest menu: more than one sheet holds. */
const DISHES = 44;
const ENDLESS = 'Q'.repeat(110);
const HOSTILE = '<b>"Tide" & \\ co.</b>';
const MENUS = ['chowder-lunch', 'storm-supper', 'endless', 'hostile', 'many-words', 'feast'];

/** Six menus, one of them of 44 dishes, with names that are too long, without a space, or look like code. */
async function sixMenus(content: string): Promise<void> {
  const kitchen = join(content, 'kitchen.yaml');
  await replaceIn(kitchen, 'town:', 'site: https://tidewrack.example\ntown:');
  await replaceIn(kitchen, '[25 % when accepted', '[150.00 when accepted');
  const recipe = await readFile(join(content, 'recipes', 'bean-and-leek-stew.mdx'), 'utf8');
  const dishes: string[] = [];
  for (let number = 1; number <= DISHES; number += 1) {
    const name = `begin${number} stew of beans, leeks and whatever the tide has left us that morning end${number}`;
    await writeFile(
      join(content, 'recipes', `stew-${number}.mdx`),
      recipe.replace('Butter bean and leek stew', name),
    );
    dishes.push(`      stew-${number}: 330 ml per guest`);
  }
  const supper = await readFile(join(content, 'packages', 'storm-supper.mdx'), 'utf8');
  const menu = (id: string, name: string, change = (text: string) => text) =>
    writeFile(
      join(content, 'packages', `${id}.mdx`),
      change(supper.replace('name: Storm supper', `name: ${JSON.stringify(name)}`)),
    );
  await menu('endless', ENDLESS);
  await menu('hostile', HOSTILE);
  await menu('many-words', 'A supper for the night on which nobody at all has any wish to go home again');
  await menu('feast', 'Feast', (text) =>
    text.replace('  - name: After', `  - name: Stews\n    dishes:\n${dishes.join('\n')}\n  - name: After`),
  );
  const proposal = join(content, 'proposals', 'regatta-lunch.md');
  await replaceIn(proposal, 'chowder-lunch, storm-supper', MENUS.join(', '));
  const draft = join(content, 'proposals', 'six-menus.md');
  await cp(proposal, draft);
  await replaceIn(draft, 'b2q7harbourwall4t5x6y7z2m3', draftLink);
  await replaceIn(draft, 'valid until:', 'share: draft\nvalid until:');
}

describe('a proposal on paper', () => {
  let kitchen: SecondKitchen;
  let offer: Offer;
  let sheets: Sheet[];
  let builtSaid: string;

  beforeAll(async () => {
    kitchen = await secondKitchen(sixMenus);
    const { code, said, complained } = await kitchen.build({});
    expect(code, said + complained).toBe(0);
    builtSaid = said;
    offer = await kitchen.offer('regatta-lunch');
    sheets = await read(clubFolder);
  });

  afterAll(() => kitchen?.remove());

  const bytes = (folder: string) => readFile(join(kitchen.out, folder, 'proposal.pdf'));
  const read = async (folder: string) => withPdf(await bytes(folder), sheetsOf);

  test('stands beside its page, and the build says where both are, whose and for what', () => {
    const lines = builtSaid.split('\n');
    const at = lines.indexOf('Regatta lunch, for Skerrivane Rowing Club');
    const places = lines.slice(at + 1, at + 3).map((line) => resolve(line.trim()));
    expect(places).toEqual(['index.html', 'proposal.pdf'].map((name) => join(kitchen.out, clubFolder, name)));
  });

  test('says on every sheet whose it is, for what, which offer, and which of how many', () => {
    for (const [index, { text }] of sheets.entries()) {
      expect(text).toContain('Tidewrack Kitchen');
      expect(text).toContain('Regatta lunch, Skerrivane Rowing Club');
      expect(text.replaceAll(' ', '')).toContain(`Offer,revision1,reference${offer.digest.slice(0, 12)}`);
      expect(text).toMatch(new RegExp(`${index + 1} ?/ ?${sheets.length}(?!\\d)`));
    }
  });

  test('keeps six menus, 44 dishes and names without end within its margins, nothing over another line', () => {
    expect(misplaced(sheets)).toEqual([]);
    expect(
      sheets
        .map(({ text }) => text)
        .join(' ')
        .replace(/[^Q]/g, '').length,
    ).toBeGreaterThan(5 * ENDLESS.length);
    expect(sheets.some(({ text }) => text.includes(HOSTILE))).toBe(true);
  });

  test('is set at its own size: a sheet on which anything is too wide comes out smaller', () => {
    const sizes = sheets.flatMap(({ runs }) =>
      runs.filter(({ text }) => text === 'Your quote' || text === 'Feast'),
    );
    expect(
      sizes
        .map(({ points }) => Math.round(points))
        .sort((a, b) => b - a)
        .slice(0, 2),
    ).toEqual([23, 18]);
  });

  test('tears no dish, no row and no heading from its own', () => {
    for (let number = 1; number <= DISHES; number += 1) {
      const begun = sheets.filter(({ text }) => new RegExp(`begin${number}\\b`).test(text));
      for (const { text } of begun)
        expect(text.split(new RegExp(`begin${number}\\b`)).length).toBe(
          text.split(new RegExp(`end${number}\\b`)).length,
        );
      // On the menu, and in the table of dishes.
      expect(begun.length).toBeGreaterThanOrEqual(2);
    }
    const headings = ['Your quote', 'Payments', 'Price per guest', 'The menus side by side', 'Terms'];
    for (const heading of [
      ...headings,
      'Totals by guest count',
      'Dishes by allergen',
      'How to accept',
      'Stews',
      'After',
    ])
      for (const { runs } of sheets) {
        const at = runs.findIndex(({ text }) => text.trim() === heading);
        if (at === -1) continue;
        const body = runs.filter(({ top }) => top > (runs[at]?.top ?? 0) + 1 && top < 280);
        expect(body, heading).not.toEqual([]);
      }
  });

  test('compares all menus at five counts and line by line at the proposed one, to the cent', () => {
    const text = sheets.map((sheet) => sheet.text).join(' ');
    for (const { id } of offer.terms.packages) {
      const samples = offer.samples.filter(({ choice }) => choice.package === id);
      expect(samples.length).toBe(6);
      for (const { total } of samples) expect(text).toContain(euro(total));
      const priced = quote(offer.terms, samples[0]!.choice);
      const sheet = sheets.find((each) => each.text.includes('The menus side by side'))!.text;
      for (const { amount } of [...priced.lines, { amount: priced.total }, { amount: priced.perGuest }])
        expect(sheet).toContain(euro(amount));
    }
  });

  test('names a fixed deposit with its currency, and says every payment', () => {
    const text = sheets.map((sheet) => sheet.text).join(' ');
    expect(text).toContain('€150.00 on acceptance');
    for (const { amount } of quote(offer.terms, offer.proposed).payments)
      expect(text).toContain(euro(amount));
  });

  test('says in the table of dishes that one has an allergen, in the word that its note explains, never yes', () => {
    const { runs } = sheets.find(({ text }) => text.includes('Dishes by allergen'))!;
    const words = runs.map(({ text }) => text.trim());
    expect(words.filter((word) => word === 'has').length).toBeGreaterThan(3);
    expect(words).not.toContain('yes');
    expect(words.join(' ')).toContain('“has”: it is an ingredient.');
  });

  test('has a line for all that an acceptance needs, filled in as proposed', () => {
    const form = sheets.slice(sheets.findIndex(({ text }) => text.includes('I accept the offer of')));
    const text = form.map((sheet) => sheet.text).join(' ');
    expect(text.replaceAll(' ', '')).toContain(offer.digest.slice(0, 12));
    for (const words of [
      'Adults 34',
      'Children 3',
      'Vendor meals 1',
      'vegan 3',
      'allergy: celery 1',
      'Tea table',
    ])
      expect(text).toContain(words);
    expect(text).toMatch(/Smoked haddock chowder 29/);
    for (const field of ['Name', 'Email', 'Signature', 'Date', 'Note']) expect(text).toContain(` ${field}`);
    expect(text).toContain(euro(quote(offer.terms, offer.proposed).total));
    for (const { name } of offer.terms.packages)
      expect(text.replaceAll(' ', '')).toContain(name.replaceAll(' ', ''));
  });

  test('has a code that another reader takes to the page, and says the address in words', async () => {
    const address = `https://tidewrack.example/proposals/${offer.link}/`;
    const at = sheets.findIndex(({ text }) => text.includes('This proposal on the web'));
    expect(sheets[at]!.text.replaceAll(' ', '')).toContain(address);
    const { data, width, height } = await withPdf(await bytes(clubFolder), (pdf) =>
      pictureOf(pdf, at + 1, 150),
    );
    expect(jsQR(new Uint8ClampedArray(data), width, height)?.data).toBe(address);
  });

  test('has an outline of its menus and parts, each once', async () => {
    const [whole] = (await withPdf(await bytes(clubFolder), (pdf) => pdf.getOutline())) ?? [];
    const plain = (title: string) => title.replace(/\s/g, '');
    const parts = [
      'Your quote',
      'Payments',
      'Price per guest',
      'The menus side by side',
      'Totals by guest count',
    ];
    const closing = [
      'Dishes by allergen',
      'Terms',
      'Allergies and food safety',
      'How to accept',
      'Acceptance',
    ];
    const menus = offer.terms.packages.map(({ name }) => name);
    expect(whole?.items.map(({ title }) => plain(title))).toEqual(
      [...menus, ...parts, ...closing].map(plain),
    );
    expect(whole?.items[5]?.items.map(({ title }: { title: string }) => title)).toEqual([
      'Main',
      'Stews',
      'After',
    ]);
  });

  test('keeps the name of a course in one column with a dish of it', () => {
    const feast = sheets.filter(({ runs }) => runs.some(({ text }) => /^begin\d/.test(text)));
    const menu = feast.slice(
      0,
      feast.findIndex(({ text }) => text.includes('Dishes by allergen')),
    );
    expect(menu.length).toBeGreaterThan(1);
    for (const { runs, width } of menu)
      for (const isMine of [(left: number) => left < width / 2, (left: number) => left >= width / 2]) {
        const column = runs.filter(({ left, top }) => isMine(left) && top > 20 && top < 275);
        const heads = column.filter(({ text }) => /^(?:Main|Stews|After)$/.test(text.trim()));
        for (const { top } of heads) {
          const below = column.filter((each) => each.top > top + 1 && each.points > 9.5);
          expect(below.length).toBeGreaterThan(0);
        }
      }
  });

  test('of a revision says on its first sheet what has changed, above the whole letter', async () => {
    const file = join(kitchen.content, 'proposals', 'regatta-lunch.md');
    await replaceIn(file, 'serve at: 19:30', 'serve at: 20:00');
    await replaceIn(file, 'valid until: 2027-05-30', 'valid until: 2027-05-31');
    await replaceIn(file, 'adults: 34', 'adults: 36');
    await replaceIn(file, 'haddock-chowder: 29', 'haddock-chowder: 31');
    await runCommand(kitchen.content, issue, ['regatta-lunch']);
    expect((await kitchen.build({})).code).toBe(0);
    const [first, second] = await read(clubFolder);
    const { text, runs } = first!;
    const at = [
      'What has changed since revision 1',
      'Served at: 20:00',
      'Dear crew',
      'See you at the Slip House',
    ].map((words) => text.indexOf(words));
    expect(at.every((place) => place >= 0)).toBe(true);
    expect(at).toEqual(at.toSorted((a, b) => a - b));
    expect(misplaced([first!])).toEqual([]);
    expect(runs.filter(({ text: words }) => words.includes('Offer, revision 2')).length).toBeGreaterThan(0);
    expect(second!.text).toContain('Chowder lunch');
  });

  test('is marked on every sheet where it is no open offer, and then has nothing to sign', async () => {
    const file = join(kitchen.content, 'proposals', 'regatta-lunch.md');
    await replaceIn(file, 'valid until:', 'withdrawn: yes\nvalid until:');
    await replaceIn(join(kitchen.content, 'kitchen.yaml'), 'paper: a4', 'paper: letter');
    expect((await kitchen.build({})).code).toBe(0);
    const [withdrawn, draft, accepted] = await Promise.all([clubFolder, draftFolder, crewFolder].map(read));
    await replaceIn(file, 'withdrawn: yes\n', '');
    expect((await kitchen.build({}, '2027-06-02')).code).toBe(0);
    const expired = await read(clubFolder);
    const marked: [Sheet[], string][] = [
      [withdrawn!, 'Withdrawn'],
      [draft!, 'Draft, not an offer'],
      [accepted!, 'Accepted'],
      [expired, 'Expired'],
    ];
    for (const [paper, mark] of marked) {
      expect(
        paper.map(({ runs }) => runs.filter(({ text, top }) => text === mark && top < 15).length),
      ).toEqual(paper.map(() => 1));
      expect(paper.some(({ text }) => text.includes('Signature'))).toBe(false);
    }
    // What was issued keeps its sheets; the draft takes the kitchen's: Letter is 8.5 × 11 inches.
    expect(withdrawn![0]!.width).toBeCloseTo(210, 0);
    expect(draft![0]!.width).toBeCloseTo(215.9, 0);
    expect(draft![0]!.height).toBeCloseTo(279.4, 0);
    expect(misplaced(draft!)).toEqual([]);
  });

  function euro(amount: string): string {
    return displayMoney(money(amount, 'EUR'), offer.terms.locale);
  }
});

/** Runs that stand off the sheet, in its margins without belonging there, or on top of another. */
function misplaced(sheets: readonly Sheet[]): string[] {
  return sheets.flatMap(({ runs, width, height }, index) =>
    runs.flatMap((run, place) => {
      const { text, left, right, top } = run;
      const margin = top < 15 || top > height - 13;
      const wide = left < 17.5 || right > width - 17.5;
      const over = runs
        .slice(place + 1)
        .some(
          (other) =>
            Math.abs(other.top - top) < 1 &&
            other.left < right - 0.5 &&
            left < other.right - 0.5 &&
            other.right > other.left,
        );
      const header = margin && /Tidewrack|Regatta|Offer, rev|\d \/ \d|Draft|^\d+$|^\/$/.test(text);
      return wide || over || (margin && !header)
        ? [`sheet ${index + 1}: ${text} (${left.toFixed(0)}, ${top.toFixed(0)})`]
        : [];
    }),
  );
}
