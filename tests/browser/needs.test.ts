import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import type { Offer } from '../../src/schema/offer.ts';
import { launch, openPage } from './open-page.ts';
import { HEAVIEST, pageWeight } from './page-weight.ts';
import { crewFolder, replaceIn, type SecondKitchen, secondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

/** How the page's ticks name what a proposal names otherwise. */
const TICKS: Record<string, string> = { sulphites: 'no sulphur dioxide and sulphites' };

/** Ticks all parts of a need, and reads what every dish of the menu then says, by its name. */
async function filtered(page: Page, need: string, menu: string): Promise<Map<string, string>> {
  const panel = page.locator('[data-part="needs"]');
  if (!(await panel.locator('fieldset').isVisible())) await panel.locator('summary').click();
  const ticked = panel.locator('input:checked');
  while ((await ticked.count()) > 0) await ticked.first().uncheck();
  for (const part of need.split('+').map((each) => each.trim())) {
    const label = TICKS[part] ?? part;
    const exact = panel.getByLabel(label, { exact: true });
    await ((await exact.count()) > 0 ? exact : panel.getByLabel(`no ${label}`, { exact: true })).check();
  }
  const dishes = page.locator('.menu', { has: page.locator('h3', { hasText: menu }) }).locator('.dish');
  const words = await dishes.evaluateAll((all) =>
    all.map((dish) =>
      ['.dish-name', '.need-answer'].map((part) => dish.querySelector(part)?.textContent ?? ''),
    ),
  );
  return new Map(words as [string, string][]);
}

/** What the plan says of the same need: a name of a dish and how it is for them. */
function planned(plan: PrepPlanDocument, need: string): Map<string, string> {
  const courses = plan.coverage.find((each) => each.need === need)!.courses;
  const base = plan.dishes.filter(({ apartFrom }) => apartFrom === '').map(({ name }) => name);
  const apart = courses.flatMap((course) => course.apart);
  return new Map(
    base.map((name) => {
      if (courses.some(({ suits }) => suits.includes(name))) return [name, 'Suits you as it is'];
      return [
        name,
        apart.some((each) => each.startsWith(`${name} (`)) ? 'On request, made separately' : 'Not for you',
      ];
    }),
  );
}

describe('a guest asks the page what suits', () => {
  let browser: Browser;
  let demo: SecondKitchen;
  let crew: SecondKitchen;

  beforeAll(async () => {
    demo = await sharedKitchen('demo');
    crew = await secondKitchen(async (content) => {
      await replaceIn(
        join(content, 'proposals', 'lifeboat-evening.md'),
        '  celery: 1',
        '  celery + no gluten: 1\n  vegan + sulphites: 1',
      );
    });
    expect((await crew.build()).code).toBe(0);
    browser = await launch();
  });

  afterAll(async () => {
    await browser?.close();
    await crew?.remove();
  });

  async function sameAnswers(folder: string, page: Page, plan: PrepPlanDocument): Promise<string[]> {
    const seen: string[] = [];
    for (const { need } of plan.coverage) {
      const shown = await filtered(page, need, plan.event.package);
      for (const [dish, answer] of planned(plan, need)) {
        if (!shown.has(dish)) continue;
        expect([folder, need, dish, shown.get(dish)]).toEqual([folder, need, dish, answer]);
        seen.push(answer);
      }
    }
    return seen;
  }

  test('and every dish served says what prep-plan.json says, for every need of every coming event', async () => {
    const seen: string[] = [];
    for (const event of ['farrowick-wedding', 'brindlemoor-naming-day']) {
      const offer = JSON.parse(
        await readFile(join(demo.content, 'offers', `${event}-r1.json`), 'utf8'),
      ) as Offer;
      const folder = `public/proposals/${offer.link}`;
      const { page, complaints } = await openPage(browser, demo.out, `${folder}/index.html`);
      const file = join(demo.out, 'private/kitchen/events', event, 'prep-plan.json');
      seen.push(...(await sameAnswers(folder, page, JSON.parse(await readFile(file, 'utf8')))));
      expect(complaints).toEqual([]);
      await page.close();
    }
    expect(new Set(seen)).toEqual(
      new Set(['Suits you as it is', 'On request, made separately', 'Not for you']),
    );
  });

  test('and of several needs together what is planned for a guest who has them all', async () => {
    const { page } = await openPage(browser, crew.out, `${crewFolder}/index.html`);
    const plan = await crew.plan();
    expect(plan.coverage.filter(({ need }) => need.includes('+'))).toHaveLength(2);
    expect((await sameAnswers(crewFolder, page, plan)).length).toBeGreaterThan(5);
    await page.close();
  });

  test('and hears the sums, finds nothing cut off, and gets the page back as it was', async () => {
    const { page, words } = await openPage(browser, crew.out, `${crewFolder}/index.html`);
    const before = await words('.dish');
    await filtered(page, 'vegan', 'Storm supper');
    const [said] = await words('[data-part="needs"] [role="status"]');
    expect(said).toMatch(/Storm supper: .+; \d of \d dishes suits?/);
    expect(await page.locator('.need-answer').count()).toBe(before.length);
    // Narrow as a phone: the ticks stand below each other and nothing runs out of the page.
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await page.getByLabel('vegan', { exact: true }).first().uncheck();
    expect(await words('.dish')).toEqual(before);
    expect(await words('[data-part="needs"] [role="status"]')).toEqual(['']);
    await page.close();
  });

  test('and the cook sees on the event’s page which way each allergen comes in, in capitals', async () => {
    const { page, words } = await openPage(
      browser,
      crew.out,
      'private/kitchen/events/lifeboat-evening/index.html',
    );
    const plan = await crew.plan();
    const shown = await words('.ways-in > li');
    expect(shown).toHaveLength(plan.dishes.length);
    for (const [index, dish] of plan.dishes.entries()) {
      for (const { allergen, paths } of dish.allergenPaths) {
        expect(shown[index]).toContain(allergen.toUpperCase());
        for (const path of paths)
          expect(shown[index]).toContain(path.replace(`${dish.name} → `, '').replaceAll('→', '›'));
      }
      for (const { allergen } of dish.mayContainPaths)
        expect(shown[index]).toMatch(new RegExp(`May contain .*${allergen}`));
    }
    expect(shown.join()).toMatch(/broth › Celery/i);
    await page.close();
  });

  test('without a script reads the table of dishes by allergen, and is offered no ticks that do nothing', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(pathToFileURL(join(crew.out, crewFolder, 'index.html')).href);
    expect(await page.locator('.allergens').first().isVisible()).toBe(true);
    expect(await page.locator('[data-part="needs"]').isVisible()).toBe(false);
    await context.close();
  });

  test('and no page of the demo weighs more than 60 KB, compressed, without its fonts and photos', async () => {
    const links = await readdir(join(demo.out, 'public/proposals'));
    expect(links.length).toBeGreaterThan(10);
    for (const link of links)
      expect([link, await pageWeight(demo.out, `public/proposals/${link}`)]).toEqual([
        link,
        expect.toSatisfy((weight: number) => weight <= HEAVIEST),
      ]);
  });
});
