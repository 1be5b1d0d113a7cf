import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { command as accept } from '../../src/commands/accept.ts';
import { command as confirm } from '../../src/commands/confirm.ts';
import { command as guarantee } from '../../src/commands/guarantee.ts';
import { command as issue } from '../../src/commands/issue.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import type { Acceptance } from '../../src/schema/acceptance.ts';
import { clientKitchen, copyProposal, LINKS, openClient, runCommand } from './client-kitchen.ts';
import { launch, openPage } from './open-page.ts';
import type { SecondKitchen } from './second-kitchen.ts';

/** What a client answers, in the words that the page's form shows. */
interface Answered {
  /** Whose page it is: one of the test's kitchen, or that of a further proposal. */
  readonly page: keyof typeof LINKS | { readonly link: string };
  readonly menu: string;
  /** Counts by the label of their field: guests, needs, mains. */
  readonly counts: Readonly<Record<string, number>>;
  /** Boxes by their label: dishes chosen and add-ons. */
  readonly boxes: Readonly<Record<string, boolean>>;
  /** A need that the page does not name, in the client's words. */
  readonly other: readonly [need: string, guests: number];
  readonly name: string;
}

const PIER = 'p7ierharbourwall4t5x6y7z2m';

/** A plated supper of which each guest takes one main, and a buffet for which the client picks the bowl. */
const ANSWERS: Readonly<Record<'regatta-lunch' | 'pier-tea', Answered>> = {
  'regatta-lunch': {
    page: 'offered',
    menu: 'Storm supper',
    counts: {
      Adults: 40,
      Children: 4,
      'Vendor meals': 2,
      vegan: 5,
      'allergy: celery': 0,
      'Smoked haddock chowder': 33,
      'Butter bean and leek stew': 13,
    },
    boxes: { 'Tea table': true, 'Bunting and lamps': true },
    other: ['milk', 2],
    name: 'Marit Skarn',
  },
  'pier-tea': {
    page: { link: PIER },
    menu: 'Chowder lunch',
    counts: { Adults: 21, Children: 6, 'Vendor meals': 0, vegan: 3, 'allergy: celery': 2 },
    boxes: {
      'Smoked haddock chowder': false,
      'Butter bean and leek stew': true,
      'Tea table': false,
    },
    other: ['milk', 1],
    name: 'Una Brack',
  },
};

describe('what a client chooses on the page', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;
  let downloads: string;

  beforeAll(async () => {
    downloads = await mkdtemp(join(tmpdir(), 'salver-'));
    kitchen = await clientKitchen(async (content) => {
      await copyProposal(content, 'pier-tea', PIER, [['Regatta lunch', 'Pier tea']]);
      await runCommand(content, issue, ['pier-tea']);
    });
    browser = await launch();
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
    await rm(downloads, { recursive: true, force: true });
  });

  /** Answers an offer by the words that stand on its page, and gives the file that the browser saves. */
  async function answer({ page: whose, menu, counts, boxes, other, name }: Answered): Promise<string> {
    const link = typeof whose === 'string' ? LINKS[whose] : whose.link;
    const url = pathToFileURL(join(kitchen.out, 'public', 'proposals', link, 'index.html')).href;
    const { page, complaints } = await openClient(browser, url);
    const form = page.locator('form[data-client=answer]');
    const field = (label: string) =>
      form.getByLabel(new RegExp(`^\\s*${label}\\b`, 'i')).filter({ visible: true });
    await field(menu).check();
    for (const [label, count] of Object.entries(counts)) await field(label).fill(String(count));
    for (const [label, ticked] of Object.entries(boxes)) await field(label).setChecked(ticked);
    await form.locator('[data-part=more-needs]').click();
    const [need, guests] = other;
    await field('Another need or allergy').fill(need);
    await field('Guests who have it').fill(String(guests));
    await field('Name').fill(name);
    await field('Email').fill('oars@skerrivane.example');
    await field('I accept this offer').check();
    if (counts['allergy: celery'] === 0) {
      // A need that was proposed is taken off by a word of its own, and not before.
      await form.locator('[type=submit]').click();
      const off = 'celery (1 guest) would be removed.';
      expect(await form.locator('[data-part=problems]').textContent()).toContain(off);
      await field('Remove celery \\(1 guest\\): nobody has this need any ?more').check();
    }
    const total = await form.locator('.total .figure').first().textContent();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      form.locator('[type=submit]').click(),
    ]);
    const file = join(downloads, download.suggestedFilename());
    await download.saveAs(file);
    expect(complaints).toEqual([]);
    const { total: accepted } = JSON.parse(await readFile(file, 'utf8')) as Acceptance;
    expect(total?.replace(',', '')).toBe(`€${accepted}`);
    await page.close();
    return file;
  }

  const planOf = async (event: string) =>
    JSON.parse(await kitchen.text(`private/kitchen/events/${event}/prep-plan.json`)) as PrepPlanDocument;

  /** Menu, counts, needs and add-ons of a plan in the form's words, for what `ANSWERS` says of the event. */
  function chosenIn(plan: PrepPlanDocument) {
    const { adults, children, vendors } = plan.event.guests;
    return {
      menu: plan.event.package,
      guests: [adults, children, vendors],
      needs: Object.fromEntries(plan.event.needs.map(({ need, guests }) => [need, guests])),
      dishes: plan.dishes.map(({ name, counted, need }) => [name, counted, need.exact]),
      addOns: plan.packOut.filter(({ group }) => group === 'add-ons').map(({ item }) => item),
    };
  }

  test('goes by the saved file through `accept` into the plan, counts, mains, needs and add-ons whole', async () => {
    for (const [event, answered] of Object.entries(ANSWERS)) {
      const said = await runCommand(kitchen.content, accept, [await answer(answered)], {
        'drop-needs': true,
      });
      expect(said).toContain(`Accepted: ${event}, `);
      expect(said).toContain('Differs from the proposal:\n');
      expect(said.includes('  Guests with celery: 0 (proposed 1)\n')).toBe(event === 'regatta-lunch');
    }
    expect(await kitchen.build()).toMatchObject({ code: 0 });
    // Plated, 2 % over, up to whole ones: 33 × 1.02 = 33.66; 13 × 1.02 = 13.26; 46 × 3 ÷ 2 × 1.02 = 70.38.
    expect(chosenIn(await planOf('regatta-lunch'))).toEqual({
      menu: 'Storm supper',
      guests: [40, 4, 2],
      needs: { vegan: 5, milk: 2 },
      dishes: [
        ['Smoked haddock chowder', '33', '34 serving'],
        ['Butter bean and leek stew', '13', '14 serving'],
        ['Apple and oat crumble', '46', '71 piece'],
      ],
      addOns: ['Tea table', 'Bunting and lamps'],
    });
    // Buffet, 6 % over: 27 × 330 ml × 1.06 = 9444.6 ml; 27 × 1.06 = 28.62 pieces, up to whole ones.
    expect(chosenIn(await planOf('pier-tea'))).toEqual({
      menu: 'Chowder lunch',
      guests: [21, 6, 0],
      needs: { vegan: 3, celery: 2, milk: 1 },
      dishes: [
        ['Butter bean and leek stew', '27', '47223/5 ml'],
        ['Apple and oat crumble', '27', '29 piece'],
      ],
      addOns: [],
    });
  });

  test.each(Object.entries(ANSWERS))(
    'stands on the kitchen’s page as it was chosen: %s',
    async (event, answered) => {
      const plan = await planOf(event);
      const { page, words, complaints } = await openPage(
        browser,
        kitchen.out,
        `private/kitchen/events/${event}/index.html`,
      );
      const [shown = ''] = await words('main');
      const { Adults, Children, 'Vendor meals': vendors } = answered.counts as Record<string, number>;
      expect(shown).toContain(answered.menu);
      for (const [count, whom] of [
        [Adults, 'adults'],
        [Children, 'children'],
        [vendors, 'vendor meals'],
      ] as const)
        expect([whom, shown.includes(`${count} ${whom}`)]).toEqual([whom, count !== 0]);

      const lines = await words('.dish-lines > li');
      expect(lines).toHaveLength(plan.dishes.length);
      for (const [index, { name, counted, need }] of plan.dishes.entries())
        for (const figure of [name, `${counted} guests`, need.printed])
          expect(lines[index]).toContain(figure);
      const dishes = ['Smoked haddock chowder', 'Butter bean and leek stew'];
      for (const dish of dishes)
        expect([dish, lines.some((line) => line.startsWith(dish))]).toEqual([
          dish,
          answered.counts[dish] !== undefined || answered.boxes[dish] === true,
        ]);

      // Every need stands on top of the page with how many have it and what is not for them.
      const alerts = await words('.alert-list > li');
      const needs: [string, number][] = [
        ['vegan', answered.counts.vegan ?? 0],
        ['allergy: celery', answered.counts['allergy: celery'] ?? 0],
        [`allergy: ${answered.other[0]}`, answered.other[1]],
      ];
      for (const [need, guests] of needs.filter(([, guests]) => guests > 0)) {
        const alert = alerts.find((each) => each.startsWith(`${guests} × ${need}`));
        expect([need, alert]).toEqual([need, expect.stringContaining('Not for them')]);
        // Butter is in the crumble; celery is in the broth of both bowls.
        expect(alert).toContain(
          need.includes('celery') ? 'Butter bean and leek stew' : 'Apple and oat crumble',
        );
      }
      expect(alerts.filter((each) => /^\d+ × /.test(each))).toHaveLength(
        needs.filter(([, guests]) => guests > 0).length,
      );

      const packed = await words('.pack-lines > li:not(.head)');
      for (const extra of ['Tea table', 'Bunting and lamps'])
        expect([extra, packed.some((line) => line.includes(extra))]).toEqual([
          extra,
          answered.boxes[extra] === true,
        ]);
      expect(complaints).toEqual([]);
      await page.close();
    },
  );

  test('of both events is on the page of the day they share, each dish with its own share', async () => {
    const { page, words } = await openPage(
      browser,
      kitchen.out,
      'private/kitchen/days/2027-06-12/index.html',
    );
    const [shown = ''] = await words('main');
    for (const occasion of ['Regatta lunch', 'Pier tea']) expect(shown).toContain(occasion);
    for (const need of [
      '5 × vegan',
      '2 × allergy: milk',
      '3 × vegan',
      '2 × allergy: celery',
      '1 × allergy: milk',
    ])
      expect(shown).toContain(need);
    // 71 and 29 pieces of crumble: 100 in whole trays of 24, so 5 together, where each alone would take 3 and 2.
    const cards = await words('.recipe');
    const crumble = cards.find((card) => card.includes('Apple and oat crumble'));
    for (const share of ['71 pieces', '29 pieces', '120 pieces']) expect(crumble).toContain(share);
    await page.close();
  });

  test('and a count changed there comes back as the page’s own total, with what is paid and still open', async () => {
    await runCommand(kitchen.content, confirm, ['regatta-lunch']);
    expect(await kitchen.build()).toMatchObject({ code: 0 });
    const file = join(kitchen.out, 'public', 'proposals', LINKS.offered, 'index.html');
    const { page: form, complaints } = await openClient(browser, pathToFileURL(file).href);
    const money = async (part: string) =>
      (await form.locator(part).allTextContents()).map((text) => text.trim());
    const [before = ''] = await money('.quote .total .figure');
    const [deposit = ''] = await money('.payments tbody tr:first-child .figure');
    const change = form.locator('form[data-client=change]');
    const field = (label: string) =>
      change.getByLabel(new RegExp(`^\\s*${label}\\b`, 'i')).filter({ visible: true });
    for (const [label, count] of [
      ['Adults', 44],
      ['Smoked haddock chowder', 37],
    ] as const)
      await field(label).fill(String(count));
    await field('Name').fill('Marit Skarn');
    const [promised = ''] = await money('form[data-client=change] .total .figure');
    const [download] = await Promise.all([
      form.waitForEvent('download'),
      change.locator('[type=submit]').click(),
    ]);
    const answered = join(downloads, download.suggestedFilename());
    await download.saveAs(answered);
    await runCommand(kitchen.content, guarantee, [], { from: answered });
    expect(await kitchen.build()).toMatchObject({ code: 0 });

    await form.reload();
    expect(await money('.quote h2')).toEqual(['Your current total']);
    expect(await money('.quote .total .figure')).toEqual([promised]);
    expect(promised).not.toBe(before);
    expect(await money('.quote .agreed th, .quote .agreed td')).toEqual([
      'As agreed: 40 adults, 4 children, 2 vendor meals',
      before,
    ]);
    const cents = (text: string) => Number(text.replace(/[^\d]/g, ''));
    const rows = await money('.payments .sum .figure');
    expect(rows.slice(0, 2)).toEqual([promised, deposit]);
    expect(cents(rows[2] ?? '')).toBe(cents(promised) - cents(deposit));
    expect(complaints).toEqual([]);
    await form.close();
  });
});
