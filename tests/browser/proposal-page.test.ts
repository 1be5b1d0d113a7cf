import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { quote } from '../../src/engine/quote/quote.ts';
import { choiceAtCount } from '../../src/engine/quote/scaled-choice.ts';
import { launch, type OpenPage, openPage } from './open-page.ts';
import { clubFolder, crewFolder, type SecondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

/** The sums in a text as plain decimals: `€1,204.50 each` has `1204.50`. */
function sums(text: string): string[] {
  return [...text.matchAll(/(-|−)?€([\d,]+\.\d\d)/g)].map(
    ([, minus, sum]) => (minus ? '-' : '') + sum!.replaceAll(',', ''),
  );
}

describe('the page a client opens', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;
  let club: OpenPage;

  beforeAll(async () => {
    kitchen = await sharedKitchen('plain');
    browser = await launch();
    club = await openPage(browser, kitchen.out, `${clubFolder}/index.html`);
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
  });

  test('every line, tax, total and payment is what the offer’s own terms give, to the cent', async () => {
    const offer = await kitchen.offer('regatta-lunch');
    const priced = quote(offer.terms, offer.proposed);
    const rows = await club.words('.quote .money tbody tr .figure');
    expect(rows.flatMap(sums)).toEqual([
      ...priced.lines.map(({ amount }) => amount),
      ...priced.taxes.map(({ amount }) => amount),
      priced.total,
      priced.perGuest,
    ]);
    const payments = (await club.words('.payments .figure')).flatMap(sums);
    expect(payments).toEqual(priced.payments.map(({ amount }) => amount));
    const cents = payments.reduce((sum, amount) => sum + Number(amount.replace('.', '')), 0);
    expect(cents).toBe(Number(priced.total.replace('.', '')));
    expect(priced.total).toBe(offer.samples[0]?.total);
  });

  test('each menu at each of five counts costs what `quote` says, and the proposal’s own count stands out', async () => {
    const offer = await kitchen.offer('regatta-lunch');
    const counts = await club.words('.compare tbody th');
    expect(counts).toHaveLength(5);
    expect(await club.words('.compare .own th')).toEqual(['37 guests as proposed']);
    const shown = (await club.words('.compare tbody td')).flatMap(sums);
    const expected = counts.flatMap((count) =>
      offer.terms.packages.flatMap((chosen) => {
        const base = offer.samples.find(({ choice }) => choice.package === chosen.id)!.choice;
        const { total, perGuest } = quote(
          offer.terms,
          choiceAtCount(chosen, base, Number.parseInt(count, 10)),
        );
        return [total, perGuest];
      }),
    );
    expect(shown).toEqual(expected);
  });

  test('the accepted page shows what was accepted, by whom it is to be eaten, and no longer how to accept', async () => {
    const crew = await openPage(browser, kitchen.out, `${crewFolder}/index.html`);
    const offer = await kitchen.offer('lifeboat-evening');
    const chosen = offer.samples.find(({ choice }) => choice.package === 'storm-supper')!;
    expect((await crew.words('.quote .total .figure')).flatMap(sums)).toEqual([chosen.total]);
    expect(await crew.words('.dish-chosen')).toContain('Chosen by 29 guests');
    expect(await crew.page.locator('#accept').count()).toBe(0);
    expect(await club.page.locator('#accept').count()).toBe(1);
    await crew.page.close();
  });

  test('every dish says its allergens and its marks have a legend', async () => {
    const offer = await kitchen.offer('regatta-lunch');
    const dishes = offer.terms.packages.flatMap(({ courses }) => courses.flatMap((course) => course.dishes));
    const said = await club.words('.dish > .dish-more');
    expect(said).toHaveLength(dishes.length);
    for (const text of said) expect(text).toMatch(/Contains|No listed allergen/);
    const legend = new Set(await club.words('.legend .mark'));
    for (const mark of await club.words('.marks .mark')) expect(legend).toContain(mark);
  });

  test('it asks no other host, breaks no policy, is not to be indexed and fits the narrowest phone', async () => {
    const { page, requests, complaints } = club;
    expect(requests.filter((url) => !url.startsWith('file:'))).toEqual([]);
    expect(complaints).toEqual([]);
    const head = await page.evaluate(() => ({
      // Only the character set, which has to stand within the first kilobyte, comes before it.
      policy: document.head.children[1]?.getAttribute('content') ?? '',
      kind: document.head.children[1]?.getAttribute('http-equiv'),
      robots: document.querySelector('meta[name=robots]')?.getAttribute('content'),
      referrer: document.querySelector('meta[name=referrer]')?.getAttribute('content'),
      width: document.documentElement.scrollWidth,
    }));
    expect(head).toMatchObject({
      kind: 'content-security-policy',
      robots: 'noindex, nofollow',
      referrer: 'no-referrer',
      width: 320,
    });
    expect(head.policy).toContain("default-src 'none'");
    expect(head.policy).not.toContain('unsafe');
    expect(await kitchen.text('public/robots.txt')).toContain('Disallow: /');
  });
});
