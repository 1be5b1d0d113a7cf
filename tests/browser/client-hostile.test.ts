import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compileApp } from '../../src/build/compile-app.ts';
import { mirrorBodies } from '../../src/build/mirror-bodies.ts';
import { asPublished } from '../../src/build/page-html.ts';
import { projectDir } from '../../src/build/project-dir.ts';
import { readSite } from '../../src/build/read-site.ts';
import { openRenderer, type Renderer } from '../../src/build/renderer.ts';
import { command as accept } from '../../src/commands/accept.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import type { Choice } from '../../src/engine/quote/choice.ts';
import type { DishTerms } from '../../src/engine/quote/terms.ts';
import { textProblem } from '../../src/engine/text/visible-text.ts';
import type { Offer } from '../../src/schema/offer.ts';
import type { ProposalPage } from '../../src/views/client/proposal-page.ts';
import { proposalView } from '../../src/views/client/proposal-view-of.ts';
import { LINKS, openClient, pageUrl, runCommand } from './client-kitchen.ts';
import { type OneWindow, oneWindow } from './one-window.ts';
import { launch } from './open-page.ts';
import type { SecondKitchen } from './second-kitchen.ts';
import { ownCopy } from './shared-kitchen.ts';

const TODAY = '2027-04-26' as Day;

/** Texts that would run, break out or overflow if anything took them for more than text. */
const HOSTILE = [
  '<script>window.pwned=1</script>',
  '"><img src=x onerror=window.pwned=1>',
  "'-alert(1)-'",
  '</script><svg onload=window.pwned=1>',
  '<!--<script>',
  // biome-ignore lint/suspicious/noTemplateCurlyInString: it is to look like a template that somebody fills.
  '${window.pwned=1}{{window.pwned=1}}',
  'javascript:window.pwned=1',
  '\u202Erevo thgir\u202C',
  'x'.repeat(110),
  '__proto__',
  '&lt;b&gt;&#60;b&#62;',
  '=HYPERLINK("http://elsewhere.example")',
];

/** An offer with the hostile text in every field of it that holds words. */
function planted(offer: Offer, text: string): Offer {
  const { terms } = offer;
  // Courses are told apart by their names, and an offer's choices name them.
  const course = (name: string) =>
    `${text} ${terms.packages.flatMap(({ courses }) => courses).findIndex((each) => each.name === name)}`;
  const choice = (each: Choice): Choice => ({
    ...each,
    courses: renamed(each.courses, course),
    mains: renamed(each.mains, course),
    needs: { [text]: 1 },
  });
  const dish = (each: DishTerms) => ({
    ...each,
    name: text,
    perGuest: text,
    marks: [text],
    onRequest: [text],
  });
  return {
    ...offer,
    kitchen: {
      ...offer.kitchen,
      name: text,
      town: text,
      phone: text,
      email: text,
      glutenTested: text,
    },
    client: { name: text, email: text },
    occasion: text,
    placeName: text,
    venue: { name: text, address: text, [text]: text },
    needs: { [text]: 1 },
    letter: text,
    legal: text,
    notices: [text],
    notIncluded: [text],
    stories: {},
    proposed: choice(offer.proposed),
    samples: offer.samples.map((sample) => ({ ...sample, choice: choice(sample.choice) })),
    terms: {
      ...terms,
      place: { ...terms.place, name: text },
      delivery: terms.delivery && { ...terms.delivery, label: text },
      serviceCharge: terms.serviceCharge && { ...terms.serviceCharge, label: text },
      discount: { label: text, rate: '1 %', base: ['food'] },
      addOns: terms.addOns.map((each) => ({ ...each, name: text, dishes: each.dishes?.map(dish) })),
      staff: terms.staff.map((each) => ({ ...each, name: text })),
      packages: terms.packages.map((chosen) => ({
        ...chosen,
        name: text,
        hours: text,
        courses: chosen.courses.map((each) => ({
          ...each,
          name: course(each.name),
          dishes: each.dishes.map(dish),
        })),
      })),
    },
  };
}

/** Fields whose form takes no words: ids, dates, figures, allergens, one of a few names. */
const FORMED =
  /^(?:kind|proposal|link|digest|issued|date|serveAt|validUntil|locale|measures|paper|accent|allergenLaws|timeZone|by|currency|taxBy|id|tax\b.*|eventDate|style|perHead|adults|children|vendors|staff|rate|price|amount|recipe|class|per|role|hours|of|due|base|floorRate|packages|addOns|total|contains|mayContain|package|courses\..*)$/;

/** Where an offer holds a text that the hostile one did not reach, and which may hold words. */
function unplanted(value: unknown, text: string, key = ''): string[] {
  if (typeof value === 'string') return value.includes(text) || FORMED.test(key) ? [] : [key];
  if (Array.isArray(value)) return value.flatMap((each) => unplanted(each, text, key));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, each]) =>
    unplanted(each, text, /^(?:tax|courses)$/.test(key) ? `${key}.${name}` : name),
  );
}

function renamed<T>(record: Readonly<Record<string, T>>, name: (old: string) => string): Record<string, T> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [name(key), value]));
}

/** What a page did that it should not, and whether it still fits the narrowest phone. */
async function damage(page: Page, asked: readonly string[]): Promise<object> {
  return {
    ran: await page.evaluate(() => 'pwned' in window),
    polluted: await page.evaluate(() => 'guests' in {} || 'name' in {}),
    elements: await page.locator('img, iframe, object, [onerror], [onload], main script').count(),
    width: await page.evaluate(() => document.documentElement.scrollWidth),
    elsewhere: asked.filter((url) => !url.startsWith('file:') && !url.startsWith('blob:')),
  };
}
const UNHARMED = { ran: false, polluted: false, elements: 0, width: 320, elsewhere: [] };

describe('hostile text', () => {
  let browser: Browser;
  let kitchen: SecondKitchen;
  let renderer: Renderer;
  let one: OneWindow;
  /** What the one window has asked for. */
  const asked: string[] = [];

  beforeAll(async () => {
    kitchen = await ownCopy('client');
    browser = await launch();
    one = await oneWindow(browser, 'client');
    one.page.on('request', (request) => asked.push(request.url()));
    one.page.on('dialog', (dialog) => asked.push(`dialog ${dialog.message()}`));
    const { shown } = await readSite(kitchen.content, () => TODAY);
    const app = await compileApp(projectDir, await mirrorBodies(projectDir, shown!.bodies), () => undefined);
    renderer = await openRenderer(app, { pdfs: false });
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
  });

  async function open(url: string) {
    const asked: string[] = [];
    const { page, complaints } = await openClient(browser, url, { viewport: { width: 320, height: 640 } });
    page.on('request', (request) => asked.push(request.url()));
    page.on('dialog', (dialog) => asked.push(`dialog ${dialog.message()}`));
    return { page, asked, complaints };
  }

  test.each(HOSTILE)('%s in every field of a proposal is text on the page', async (text) => {
    const offer = planted(await kitchen.offer('regatta-lunch'), text);
    expect(unplanted(offer, text)).toEqual([]);
    const { proposed: choice, guests } = offer;
    const page: Omit<ProposalPage, 'state' | 'accepted' | 'counts'> = {
      content: offer,
      look: { fonts: 'source' as const, mark: undefined },
      issued: { revision: 1, digest: offer.digest, on: offer.issued },
      roles: [],
      corrections: [
        { recipe: 'haddock-chowder', dish: text, contains: ['milk'], mayContain: [], lostMarks: [text] },
      ],
      dishesNow: [],
      changes: [],
      billed: null,
      event: null,
      earlier: planted({ ...offer, revision: 1 }, `${text} before`),
      today: TODAY,
    };
    const counts = { choice, guests, until: TODAY, floor: 5 };
    for (const view of [
      proposalView({ ...page, state: 'offered', accepted: null, counts: null }),
      proposalView({ ...page, state: 'accepted', accepted: { choice, on: TODAY }, counts }),
    ]) {
      const file = `public/proposals/${LINKS.offered}/hostile.html`;
      const html = await renderer.render(`/proposals/${LINKS.offered}/`, JSON.stringify(view));
      await writeFile(join(kitchen.out, file), asPublished(html, file).html);
      asked.length = 0;
      const shown = await one.open(pathToFileURL(join(kitchen.out, file)).href, { width: 320, height: 640 });
      expect(asked).not.toEqual([]);
      expect(await damage(shown, asked)).toEqual(UNHARMED);
      expect(one.complaints).toEqual([]);
      expect(await shown.locator('h1').textContent()).toBe(text);
      expect(await shown.locator('[data-client] legend, [data-client] label').allTextContents()).toEqual(
        expect.arrayContaining([expect.stringContaining(text)]),
      );
      // A later build would refuse an output with a file that is not its own.
      await rm(join(kitchen.out, file));
    }
  });

  test('a page may post to the address that the kitchen set, and nowhere else', async () => {
    const offer = await kitchen.offer('regatta-lunch');
    const policyFor = async (acceptances: Offer['kitchen']['acceptances']) => {
      const view = proposalView({
        content: { ...offer, kitchen: { ...offer.kitchen, acceptances } },
        state: 'offered',
        issued: { revision: 1, digest: offer.digest, on: offer.issued },
        look: { fonts: 'source', mark: undefined },
        roles: [],
        corrections: [],
        dishesNow: [],
        accepted: null,
        changes: [],
        billed: null,
        event: null,
        earlier: null,
        counts: null,
        today: TODAY,
      });
      const html = await renderer.render(`/proposals/${LINKS.offered}/`, JSON.stringify(view));
      return /connect-src ([^;]*)/.exec(html)?.[1];
    };
    expect(await policyFor({ by: 'download' })).toBe("'self'");
    expect(await policyFor({ by: 'post', to: null })).toBe("'self'");
    expect(await policyFor({ by: 'post', to: 'https://answers.example/acceptances' })).toBe(
      "'self' https://answers.example",
    );
  });

  test('all of them typed into the form are text in the file, on the client’s page and on the kitchen’s', async () => {
    const { page, asked, complaints } = await open(pageUrl(kitchen, 'offered'));
    await page.fill('#answer-email', 'marit@skerrivane.example');
    await page.check('#answer-agreed');
    // What turns letters about is refused where it is typed, and named by its number.
    await page.fill('#answer-name', HOSTILE.join(' ').slice(0, 200));
    await page.click('[data-client=answer] [type=submit]');
    expect(await page.locator('[data-client=answer]').textContent()).toContain('U+202E');
    const shown = HOSTILE.filter((each) => textProblem(each) === undefined);
    expect(shown).toHaveLength(HOSTILE.length - 1);
    await page.fill('#answer-name', shown.join(' ').slice(0, 200));
    await page.fill('#answer-note', shown.join('\n'));
    for (const [index, text] of shown
      .filter((each) => each !== '__proto__')
      .slice(0, 6)
      .entries()) {
      await page.locator('[data-client=answer] [data-part=more-needs]').click();
      await page.fill(`#answer-other-need\\.${index}\\.name`, text.slice(0, 80));
      await page.fill(`#answer-other-need\\.${index}\\.count`, '1');
      if (index === 5) break;
    }
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.click('[data-client=answer] [type=submit]'),
    ]);
    expect(await damage(page, asked)).toEqual(UNHARMED);
    expect(complaints).toEqual([]);
    const file = join(kitchen.content, '..', 'acceptance.json');
    await writeFile(file, await readFile(await download.path(), 'utf8'));
    await runCommand(kitchen.content, accept, [file]);
    await kitchen.build();
    const html = await kitchen.text('private/kitchen/events/regatta-lunch/index.html');
    expect(html).toContain('&lt;script&gt;');
    for (const url of [
      pageUrl(kitchen, 'offered'),
      pathToFileURL(join(kitchen.out, 'private/kitchen/events/regatta-lunch/index.html')).href,
    ]) {
      const seen = await browser.newPage({ viewport: { width: 320, height: 640 } });
      const requests: string[] = [];
      seen.on('request', (request) => requests.push(request.url()));
      await seen.goto(url);
      expect(await damage(seen, requests)).toEqual(UNHARMED);
      await seen.close();
    }
    await page.close();
  });

  test('in a link or in what the browser kept changes nothing but fields that take it', async () => {
    const texts = HOSTILE.map((text, index) => [`other-need.${index % 6}.name`, text]);
    const forged = new URLSearchParams([
      ...texts,
      ['package', '"><img src=x>'],
      ['guests.adults', '<b>1</b>'],
      ['a.package', '__proto__'],
      ['__proto__', 'x'],
      ['name', 'Mallory'],
      ['agreed', 'on'],
    ]);
    const url = `${pageUrl(kitchen, 'draft').replace(LINKS.draft, LINKS.expired)}`;
    const { page: closed } = await open(`${url}#choice=1&offer=0&${forged}`);
    expect(await damage(closed, [])).toEqual(UNHARMED);
    await closed.close();
    const { page, complaints } = await open(`${pageUrl(kitchen, 'draft')}#choice=1&offer=0&${forged}`);
    await page.evaluate(
      (all) => {
        for (const key of Object.keys(localStorage)) localStorage.setItem(key, all);
        localStorage.setItem('salver:pier-draft', all);
      },
      JSON.stringify([...texts, ['a.guests', '<b>'], ['a.package', 'nothing']]),
    );
    await page.reload();
    expect(await damage(page, [])).toEqual(UNHARMED);
    expect(complaints).toEqual([]);
    expect(await page.inputValue('[name="a.package"]')).toBe('chowder-lunch');
    await page.close();
  });
});
