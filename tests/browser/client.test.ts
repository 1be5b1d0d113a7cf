import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Browser, Download, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { choiceFragment } from '../../src/client/choice-link.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { type Choice, checkChoice, choosers } from '../../src/engine/quote/choice.ts';
import { quote } from '../../src/engine/quote/quote.ts';
import { choiceAtCount, shareOut } from '../../src/engine/quote/scaled-choice.ts';
import { takeAcceptance } from '../../src/offers/answers/accept.ts';
import { digestOfRecord } from '../../src/offers/digest.ts';
import { countChangeSchema } from '../../src/schema/count-change.ts';
import type { Offer } from '../../src/schema/offer.ts';
import { serveSites } from '../../src/serve/serve-sites.ts';
import type { CurrentFile } from '../../src/views/client/current-file.ts';
import { run } from '../commands/run.ts';
import { LONG } from '../strength/long.ts';
import { must } from '../unit/plan/builders.ts';
import { clientKitchen, LINKS, NOW, openClient, pageUrl } from './client-kitchen.ts';
import { launch } from './open-page.ts';
import type { SecondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

const TODAY = '2027-04-26' as Day;

/** The sums in a text as plain decimals: `−€1,204.50` is `-1204.50`. */
function sums(texts: readonly string[]): string[] {
  return texts.flatMap((text) =>
    [...text.matchAll(/(−)?€([\d,]+\.\d\d)/g)].map(
      ([, minus, sum]) => (minus ? '-' : '') + sum!.replaceAll(',', ''),
    ),
  );
}

/** A choice and the texts that a client would have typed for it. */
function typed(offer: Offer, choice: Choice): Map<string, string> {
  const { terms } = offer;
  const menu = terms.packages.findIndex(({ id }) => id === choice.package);
  const texts = new Map([
    ['package', choice.package],
    ['guests.adults', String(choice.guests.adults)],
    ['guests.children', String(choice.guests.children)],
    ['guests.vendors', String(choice.guests.vendors)],
  ]);
  for (const [index, { name, dishes }] of terms.packages[menu]!.courses.entries()) {
    for (const [place, { recipe }] of dishes.entries()) {
      if (choice.courses[name]?.includes(recipe)) texts.set(`course.${menu}.${index}.${place}`, 'on');
      if (choice.mains[name])
        texts.set(`main.${menu}.${index}.${place}`, String(choice.mains[name][recipe] ?? 0));
    }
  }
  for (const [index, { id }] of terms.addOns.entries())
    if (choice.addOns[id]) texts.set(`add-on.${index}`, String(choice.addOns[id]));
  return texts;
}

/** Any choice that the terms allow. */
function anyChoice({ terms, proposed }: Offer): fc.Arbitrary<Choice> {
  const count = (most: number) => fc.oneof(fc.nat(most), fc.constant(0));
  return fc
    .record({
      chosen: fc.constantFrom(...terms.packages),
      adults: fc.integer({ min: 1, max: 700 }),
      children: count(90),
      vendors: count(12),
      picks: fc.array(fc.nat(1000), { minLength: 40, maxLength: 40 }),
    })
    .map(({ chosen, adults, children, vendors, picks }) => {
      const guests = { adults, children, vendors, staff: proposed.guests.staff };
      const courses: Record<string, string[]> = {};
      const mains: Record<string, Record<string, number>> = {};
      for (const [index, course] of chosen.courses.entries()) {
        const rolled = course.dishes.map(({ recipe }, dish) => ({
          recipe,
          weight: picks[index * 5 + dish] ?? 0,
        }));
        if (course.choose !== null) {
          const best = [...rolled].sort((a, b) => b.weight - a.weight).slice(0, course.choose);
          courses[course.name] = course.dishes
            .filter((dish) => best.some(({ recipe }) => recipe === dish.recipe))
            .map(({ recipe }) => recipe);
        }
        if (course.eachGuest) {
          const shares = shareOut(
            choosers(course, guests),
            rolled.map(({ weight }) => weight),
          );
          mains[course.name] = Object.fromEntries(
            rolled.map(({ recipe }, dish) => [recipe, shares[dish] ?? 0]),
          );
        }
      }
      const addOns = Object.fromEntries(
        terms.addOns.flatMap(({ id, per }, index): [string, number][] => {
          const pick = picks[30 + index] ?? 0;
          if (pick % 2 === 0 || (chosen.addOns && !chosen.addOns.includes(id))) return [];
          return [[id, per === 'hour' ? ((pick % 40) + 1) / 4 : 1]];
        }),
      );
      return { package: chosen.id, guests, courses, mains, addOns, needs: {} };
    });
}

/** The words of the command line that ask for a choice; add-ons that are proposed cannot be left out there. */
function words({ package: id, guests, courses, mains, addOns }: Choice): string[] {
  return [
    ...['--package', id],
    ...(['adults', 'children', 'vendors'] as const).flatMap((group) => [`--${group}`, `${guests[group]}`]),
    ...Object.entries(courses).flatMap(([course, dishes]) => ['--take', `${course}=${dishes.join(',')}`]),
    ...Object.entries(mains).flatMap(([course, counts]) => [
      '--take',
      `${course}=${Object.entries(counts)
        .map(([recipe, count]) => `${recipe}:${count}`)
        .join(',')}`,
    ]),
    ...Object.entries(addOns).flatMap(([addOn, quantity]) => ['--add', `${addOn}=${quantity}`]),
  ];
}

/** Opens each fragment in the page, and reads what a form or table then shows. */
function shownFor(page: Page, fragments: readonly string[], selector: string): Promise<string[][]> {
  return page.evaluate(
    async ([links, where]) => {
      const shown: string[][] = [];
      for (const link of links) {
        const opened = new Promise((done) => window.addEventListener('hashchange', done, { once: true }));
        location.hash = link;
        await opened;
        shown.push([...document.querySelectorAll(where)].map((element) => element.textContent ?? ''));
      }
      return shown;
    },
    [fragments, selector] as const,
  );
}

async function textOf(download: Download): Promise<string> {
  return readFile(await download.path(), 'utf8');
}

describe('what a client chooses on the page', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;
  let offer: Offer;

  beforeAll(async () => {
    kitchen = await sharedKitchen('client');
    browser = await launch();
    offer = await kitchen.offer('regatta-lunch');
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
  });

  test('costs what `quote` says, line by line to the cent, for many random choices', async () => {
    const { page, complaints } = await openClient(browser, pageUrl(kitchen, 'offered'));
    const choices = fc.sample(anyChoice(offer), { numRuns: LONG ? 400 : 120, seed: 20_270_426 });
    for (const choice of choices) expect(checkChoice(offer.terms, choice)).toEqual([]);
    // Every menu with every add-on is among them, so that each kind of line is.
    const asked = choices.flatMap(({ package: id, addOns }) =>
      Object.keys(addOns).map((each) => `${id} ${each}`),
    );
    const possible = offer.terms.packages.map((each) => (each.addOns ?? offer.terms.addOns).length);
    expect(new Set(asked).size).toBe(possible.reduce((sum, count) => sum + count, 0));
    const links = choices.map((choice) => choiceFragment(typed(offer, choice), offer.digest));
    const shown = await shownFor(page, links, '[data-client=answer] .money .figure');
    for (const [index, choice] of choices.entries()) {
      const priced = quote(offer.terms, choice);
      expect(sums(shown[index]!)).toEqual([
        ...priced.lines.map(({ amount }) => amount),
        ...priced.taxes.map(({ amount }) => amount),
        priced.total,
        priced.perGuest,
        ...priced.payments.map(({ amount }) => amount),
      ]);
    }
    expect(complaints).toEqual([]);
    await page.close();
  });

  // The command line asks the same `quote`, and reads the kitchen anew each time: it is to put each figure in its place.
  test('costs what the command line prints, for random choices', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    const choices = fc.sample(anyChoice(offer), { numRuns: LONG ? 200 : 12, seed: 1_815 }).map((choice) => ({
      ...choice,
      addOns: { ...offer.proposed.addOns, ...choice.addOns },
    }));
    const links = choices.map((choice) => choiceFragment(typed(offer, choice), offer.digest));
    const shown = await shownFor(page, links, '[data-client=answer] .money .figure');
    for (const [index, choice] of choices.entries()) {
      const ran = await run(
        kitchen.content,
        'quote',
        offer.proposal,
        ...words(choice),
        '--json',
        '--today',
        TODAY,
      );
      expect(ran).toMatchObject({ code: 0, err: '' });
      const { quote: priced } = JSON.parse(ran.out) as { quote: ReturnType<typeof quote> };
      expect(sums(shown[index]!)).toEqual([
        ...priced.lines.map(({ amount }) => amount),
        ...priced.taxes.map(({ amount }) => amount),
        priced.total,
        priced.perGuest,
        ...priced.payments.map(({ amount }) => amount),
      ]);
    }
    await page.close();
  });

  test('compares two menus at any two counts with the totals that `quote` gives', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    const pairs = fc.sample(fc.tuple(anyChoice(offer), anyChoice(offer)), {
      numRuns: LONG ? 200 : 60,
      seed: 42,
    });
    const links = pairs.map((pair) => {
      const texts = new Map<string, string>();
      for (const [index, choice] of pair.entries()) {
        const side = index === 0 ? 'a' : 'b';
        texts.set(`${side}.package`, choice.package).set(`${side}.guests`, String(choice.guests.adults + 3));
        for (const [place, { id }] of offer.terms.addOns.entries())
          if (choice.addOns[id]) texts.set(`${side}.add-on.${place}`, String(choice.addOns[id]));
      }
      return choiceFragment(texts, offer.digest);
    });
    const shown = await shownFor(page, links, '[data-key=total] [data-cell]');
    for (const [index, pair] of pairs.entries()) {
      const totals = pair.map(({ package: id, guests, addOns }) => {
        const chosen = offer.terms.packages.find((each) => each.id === id)!;
        const base = offer.samples.find(({ choice }) => choice.package === id)!.choice;
        return quote(offer.terms, choiceAtCount(chosen, { ...base, addOns }, guests.adults + 3)).total;
      });
      const cents = Number(totals[1]!.replace('.', '')) - Number(totals[0]!.replace('.', ''));
      const difference = `${cents < 0 ? '-' : ''}${(Math.abs(cents) / 100).toFixed(2)}`;
      expect(sums(shown[index]!)).toEqual(cents === 0 ? totals : [...totals, difference]);
    }
    await page.close();
  });

  test('shows where one menu becomes cheaper, in the picture and in words', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    await page.waitForSelector('[data-part=picture][data-drawn]', { state: 'attached' });
    const [a, b] = offer.terms.packages.map((chosen) => {
      const base = offer.samples.find(({ choice }) => choice.package === chosen.id)!.choice;
      return (count: number) => Number(quote(offer.terms, choiceAtCount(chosen, base, count)).total);
    });
    const words = await page.locator('[data-part=picture-words]').textContent();
    const lines = await page
      .locator('[data-line]')
      .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')!.length));
    expect(Math.min(...lines)).toBeGreaterThan(200);
    const range = await page
      .locator('.slider')
      .first()
      .evaluate((slider: HTMLInputElement) => [Number(slider.min), Number(slider.max)]);
    const counts = Array.from({ length: range[1]! - range[0]! + 1 }, (_, index) => range[0]! + index);
    const changes = counts.filter(
      (count) =>
        count > range[0]! && Math.sign(a!(count) - b!(count)) !== Math.sign(a!(count - 1) - b!(count - 1)),
    );
    if (changes.length === 0) expect(words).toContain('at every count from');
    else expect(words).toContain(String(changes[0]));
    await page.close();
  });

  test('survives a reload, unreadable counts included, and a link opens it elsewhere without who answers', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    await page.fill('#answer-guests\\.adults', '41x');
    await page.check('input[name=package][value=storm-supper]');
    await page.fill('#answer-name', 'Marit "Oar" Skarn');
    await page.fill('#answer-note', 'two\nlines');
    await page.selectOption('[name="a.package"]', 'storm-supper');
    await page.reload();
    await page.waitForSelector('html[data-ready]', { state: 'attached' });
    expect(await page.inputValue('#answer-guests\\.adults')).toBe('41x');
    expect(await page.isChecked('input[name=package][value=storm-supper]')).toBe(true);
    expect(await page.inputValue('#answer-name')).toBe('Marit "Oar" Skarn');
    expect(await page.inputValue('#answer-note')).toBe('two\nlines');
    expect(await page.inputValue('[name="a.package"]')).toBe('storm-supper');
    await page.locator('.answer-now [data-share]').click();
    const address = await page.locator('.answer-now [data-part=share-address]').inputValue();
    expect(address).not.toMatch(/Skarn|lines/);
    const other = await openClient(browser, address, { newDevice: true });
    expect(await other.page.inputValue('#answer-guests\\.adults')).toBe('41x');
    expect(await other.page.isChecked('input[name=package][value=storm-supper]')).toBe(true);
    expect(await other.page.inputValue('#answer-name')).toBe('');
    expect(other.page.url()).not.toContain('#');
    await other.page.close();
    await page.close();
  });

  test('becomes a file that the kitchen takes, and then nothing typed is kept', async () => {
    const { page, complaints } = await openClient(browser, pageUrl(kitchen, 'offered'));
    await page.locator('[data-choose=b]').click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('accept-now');
    await page.fill('#answer-guests\\.adults', '40');
    await page.locator('fieldset[data-menu]:not([hidden]) [data-fit]').click();
    await page.fill('#answer-need\\.0', '2');
    await page.locator('[data-part=more-needs]').click();
    await page.fill('#answer-other-need\\.0\\.name', 'sesame');
    await page.fill('#answer-other-need\\.0\\.count', '1');
    await page.fill('#answer-name', 'Marit Skarn');
    await page.fill('#answer-email', 'marit@skerrivane.example');
    await page.fill('#answer-note', 'Two of us come late.');
    await page.check('#answer-agreed');
    const shown = await page.locator('[data-client=answer] .total .figure').textContent();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.click('[data-client=answer] [type=submit]'),
    ]);
    expect(download.suggestedFilename()).toBe('acceptance-regatta-lunch-r1.json');
    const text = await textOf(download);
    const { book } = await readBook(kitchen.content);
    const taken = takeAcceptance(book!, text, TODAY);
    const { acceptance } = must(taken);
    expect(acceptance).toMatchObject({
      name: 'Marit Skarn',
      email: 'marit@skerrivane.example',
      note: 'Two of us come late.',
      accepted: TODAY,
      choice: { package: 'storm-supper', guests: { adults: 40 }, needs: { sesame: 1 } },
    });
    expect(sums([shown ?? ''])).toEqual([acceptance.total]);
    expect(await page.locator('[data-part=sent-words]').textContent()).toContain(
      'nothing has reached us yet',
    );
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    await page.reload();
    expect(await page.inputValue('#answer-name')).toBe('');
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('is posted to the site that serves the page, and waits in the inbox for `accept`', async () => {
    const posting = await clientKitchen(async (content) => {
      const file = `${content}/kitchen.yaml`;
      const { writeFile } = await import('node:fs/promises');
      await writeFile(
        file,
        `${await readFile(file, 'utf8')}site: https://tidewrack.example\nacceptances: post\n`,
      );
    });
    const heard: string[] = [];
    const sites = await serveSites({
      outDir: posting.out,
      contentDir: posting.content,
      site: undefined,
      locale: 'en-US',
      host: '127.0.0.1',
      port: 0,
      privatePort: 0,
      today: () => TODAY,
      say: (sentence) => heard.push(sentence),
    });
    try {
      const { page, complaints } = await openClient(browser, `${sites.publicUrl}proposals/${LINKS.offered}/`);
      await page.fill('#answer-name', 'Marit Skarn');
      await page.fill('#answer-email', 'marit@skerrivane.example');
      await page.check('#answer-agreed');
      await page.click('[data-client=answer] [type=submit]');
      await page.waitForSelector('[data-part=sent]:not([hidden])');
      expect(await page.locator('[data-part=sent-words]').textContent()).toContain(
        'Tidewrack Kitchen has received it',
      );
      const { readdir } = await import('node:fs/promises');
      const waiting = (await readdir(`${posting.content}/inbox`)).filter((name) => name.endsWith('.json'));
      expect(waiting).toHaveLength(1);
      const { book } = await readBook(posting.content);
      const text = await readFile(`${posting.content}/inbox/${waiting[0]}`, 'utf8');
      expect(takeAcceptance(book!, text, TODAY).ok).toBe(true);
      expect(complaints).toEqual([]);
      await page.close();
    } finally {
      await sites.close();
      await posting.remove();
    }
  });

  test('is refused at its fields, with a list that leads to each', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    await page.fill('#answer-guests\\.adults', 'forty');
    await page.click('[data-client=answer] [type=submit]');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-part'))).toBe('problems');
    const links = page.locator('[data-part=problems] a');
    expect(await links.allInnerTexts()).toEqual([
      'Enter a whole number, such as 12.',
      'Enter your name.',
      'Enter your email address, so that we can answer you.',
      'Please tick the box to agree to the terms; we can’t accept the form without it.',
    ]);
    await links.nth(1).click();
    const field = await page.evaluate(() => {
      const { activeElement: focused } = document;
      const places = focused?.getAttribute('aria-describedby')?.split(' ') ?? [];
      const said = places
        .map((id) => document.getElementById(id)?.textContent)
        .join(' ')
        .trim();
      return { id: focused?.id, invalid: focused?.getAttribute('aria-invalid'), said };
    });
    expect(field).toEqual({ id: 'answer-name', invalid: 'true', said: 'Enter your name.' });
    await page.close();
  });

  test('can no longer be accepted once the offer has run out by the kitchen’s clock', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    // The last day is May 30 in Dublin, which is an hour ahead of UTC then: 22:59 UTC is in it, 23:01 is not.
    await page.clock.setFixedTime(new Date('2027-05-30T22:59:00Z'));
    await page.reload();
    expect(await page.locator('[data-client=answer]').isVisible()).toBe(true);
    await page.clock.setFixedTime(new Date('2027-05-30T23:01:00Z'));
    await page.reload();
    expect(await page.locator('[data-client=answer]').isVisible()).toBe(false);
    expect(await page.locator('[data-part=expired]').textContent()).toContain('can no longer be accepted');
    await page.close();
  });

  test('can no longer be accepted from a page left open until the offer has run out, was replaced, withdrawn or accepted', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    const comesBack = () => page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    const form = page.locator('[data-client=answer]');
    await comesBack();
    expect(await form.isVisible()).toBe(true);
    await page.clock.setFixedTime(new Date('2027-05-30T23:01:00Z'));
    await comesBack();
    await form.waitFor({ state: 'hidden' });
    await page.clock.setFixedTime(NOW);

    let standing: Partial<CurrentFile> | undefined;
    await page.route('http://kitchen.example/**', async (route) => {
      const { pathname } = new URL(route.request().url());
      const path = join(kitchen.out, 'public', pathname.endsWith('/') ? `${pathname}index.html` : pathname);
      if (!standing || !pathname.endsWith('/standing.json')) return route.fulfill({ path });
      return route.fulfill({ json: { ...JSON.parse(await readFile(path, 'utf8')), ...standing } });
    });
    const closes: [Partial<CurrentFile>, RegExp][] = [
      [{ offer: '0'.repeat(64) }, /^A newer revision has replaced this offer/],
      [{ state: 'withdrawn' }, /^This offer was withdrawn and can no longer be accepted/],
      [{ state: 'accepted' }, /^This offer has been accepted/],
    ];
    for (const [change, words] of closes) {
      standing = undefined;
      await page.goto(`http://kitchen.example/proposals/${LINKS.offered}/`);
      await page.waitForSelector('html[data-ready]');
      const asked = page.waitForResponse('**/standing.json');
      await comesBack();
      await asked;
      expect(await form.isVisible()).toBe(true);
      standing = change;
      await comesBack();
      await form.waitFor({ state: 'hidden' });
      expect(await page.locator('.state').textContent()).toMatch(words);
      expect(await page.locator('[data-part=expired]').textContent()).toMatch(words);
    }
    await page.close();
  });

  test.each(['draft', 'expired', 'withdrawn'] as const)(
    'cannot be accepted from a page that is %s',
    async (state) => {
      const { page } = await openClient(browser, pageUrl(kitchen, state));
      expect(await page.locator('[data-client=answer]').count()).toBe(0);
      expect(await page.locator('[data-client=compare]').count()).toBe(state === 'draft' ? 1 : 0);
      await page.close();
    },
  );

  test('once confirmed, takes new counts as a file of their own, and a guest list as CSV', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'confirmed'));
    await page.fill('#change-guests\\.adults', '36');
    await page.fill('#change-name', 'Ebba Skarn');
    await page.click('[data-client=change] [type=submit]');
    expect(await page.locator('[data-part=problems] a').first().textContent()).toContain('2 too few');
    await page.locator('[data-client=change] [data-fit]').click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.click('[data-client=change] [type=submit]'),
    ]);
    const record = countChangeSchema.parse(JSON.parse(await textOf(download)));
    expect(record).toMatchObject({
      event: 'lifeboat-evening',
      made: TODAY,
      guests: { adults: 36, children: 3, vendors: 1, staff: 3 },
    });
    expect(Object.values(record.mains.Main!).reduce((sum, count) => sum + count, 0)).toBe(40);
    expect(digestOfRecord(record)).toBe(record.digest);
    await page.fill('#guest-list-text', 'Ebba; 1; Smoked; no gluten\nOle; 2; butter');
    const [list] = await Promise.all([
      page.waitForEvent('download'),
      page.click('[data-client=guest-list] [type=submit]'),
    ]);
    expect(await textOf(list)).toBe(
      'name,table,main,need\r\nEbba,1,Smoked haddock chowder,no gluten\r\nOle,2,Butter bean and leek stew,\r\n',
    );
    await page.close();
  });

  test('is no longer changed from the page after the guarantee’s deadline', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'confirmed'));
    // Five days before May 21.
    await page.clock.setFixedTime(new Date('2027-05-17T09:00:00Z'));
    await page.fill('#change-name', 'Ebba Skarn');
    await page.click('[data-client=change] [type=submit]');
    expect(await page.locator('[data-part=problems] a').textContent()).toContain('until Sunday, 16 May 2027');
    await page.close();
  });

  test('without a script leaves letter, menus, quote, table and signature whole, and no empty form', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'), { javaScriptEnabled: false });
    for (const part of ['.letter', '.menus', '.quote', '.comparison', '#accept'])
      expect(await page.locator(part).first().isVisible()).toBe(true);
    for (const part of await page.locator('.with-script').all()) expect(await part.isVisible()).toBe(false);
    await page.close();
  });

  test('can be accepted by keyboard alone', async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    const focus = async (id: string) => {
      for (let presses = 0; presses < 200; presses += 1) {
        await page.keyboard.press('Tab');
        const seen = await page.evaluate(() => {
          const element = document.activeElement as HTMLElement;
          const { outlineStyle, outlineWidth } = getComputedStyle(element);
          return { id: element.id, outlined: outlineStyle !== 'none' && outlineWidth !== '0px' };
        });
        expect(seen.outlined).toBe(true);
        if (seen.id === id) return;
      }
      throw new Error(`no way to #${id} by keyboard`);
    };
    await focus('compare-a.guests');
    await page.keyboard.press('ArrowUp');
    expect(await page.inputValue('[name="a.guests"]')).toBe('38');
    await focus('answer-guests.adults');
    await page.keyboard.press('ArrowDown');
    await focus('answer-name');
    await page.keyboard.type('Marit Skarn');
    await focus('answer-email');
    await page.keyboard.type('marit@skerrivane.example');
    await focus('answer-agreed');
    await page.keyboard.press('Space');
    await page.keyboard.press('Tab');
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    const { choice } = JSON.parse(await textOf(download)) as { choice: Choice };
    expect(choice.guests.adults).toBe(offer.proposed.guests.adults - 1);
    await page.close();
  });
});
