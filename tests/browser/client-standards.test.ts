import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeSlips, noColorsAsked } from './axe-slips.ts';
import { LINKS, MORE_LINKS, openClient, pageUrl } from './client-kitchen.ts';
import { htmlSlips } from './html-slips.ts';
import { type OneWindow, oneWindow } from './one-window.ts';
import { launch } from './open-page.ts';
import { HEAVIEST, pageWeight } from './page-weight.ts';
import type { SecondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

const ALL = { ...LINKS, ...MORE_LINKS };
const STATES = Object.keys(ALL) as (keyof typeof ALL)[];
/** Ways a page looks besides as it was opened. */
const MOMENTS: Readonly<Record<string, (page: Page, kitchen: SecondKitchen) => Promise<void>>> = {
  'as opened': async () => undefined,
  'with mistakes': async (page) => {
    await page.fill('#answer-guests\\.adults', 'x');
    await page.fill('[name="a.guests"]', 'x');
    await page.locator('[data-part=more-needs]').first().click();
    await page.click('[data-client=answer] [type=submit]');
  },
  answered: async (page) => {
    await page.fill('#answer-name', 'Marit Skarn');
    await page.fill('#answer-email', 'marit@skerrivane.example');
    await page.check('#answer-agreed');
    await page.click('[data-client=answer] [type=submit]');
    await page.waitForSelector('[data-part=sent]:not([hidden])');
  },
  'left open until it was replaced': async (page, kitchen) => {
    let digest: string | undefined;
    await page.route('http://kitchen.example/**', async (route) => {
      const { pathname } = new URL(route.request().url());
      const path = join(kitchen.out, 'public', pathname.endsWith('/') ? `${pathname}index.html` : pathname);
      if (digest === undefined || !pathname.endsWith('/standing.json')) return route.fulfill({ path });
      return route.fulfill({ json: { ...JSON.parse(await readFile(path, 'utf8')), offer: digest } });
    });
    await page.goto(`http://kitchen.example/proposals/${LINKS.offered}/`);
    await page.waitForSelector('html[data-ready]', { state: 'attached' });
    digest = '0'.repeat(64);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await page.locator('[data-client=answer]').waitFor({ state: 'hidden' });
  },
  'asked what suits a guest': async (page) => {
    await page.locator('[data-part=needs] summary').first().click();
    await page.locator('[data-part=needs] input').first().check();
  },
};
const VIEWS = [
  ...STATES.map((state) => [state, 'as opened'] as const),
  ['offered', 'with mistakes'] as const,
  ['offered', 'answered'] as const,
  ['offered', 'left open until it was replaced'] as const,
  ['offered', 'asked what suits a guest'] as const,
];

describe('the standards a client’s page is held to', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;
  let one: OneWindow;

  beforeAll(async () => {
    kitchen = await sharedKitchen('states');
    browser = await launch();
    one = await oneWindow(browser, 'client');
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
  });

  const asked = noColorsAsked();
  test.each(VIEWS)(
    'axe finds nothing on a page that is %s, %s, narrow and wide, light and dark',
    async (state, moment) => {
      // What a moment sets in a browser, such as an address that it answers itself, is that view's alone.
      const isOpened = moment === 'as opened';
      const page = isOpened
        ? await one.open(pageUrl(kitchen, state))
        : (await openClient(browser, pageUrl(kitchen, state))).page;
      await MOMENTS[moment]!(page, kitchen);
      for (const width of [320, 768, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      }
      expect(await axeSlips(page, asked)).toEqual([]);
      if (!isOpened) await page.context().close();
    },
  );

  test.each(STATES)('everything to press on a page that is %s is 24 px at least, each way', async (state) => {
    const page = await one.open(pageUrl(kitchen, state), { width: 320, height: 640 });
    if (state === 'offered') await MOMENTS['with mistakes']!(page, kitchen);
    const pressed = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'button, input, select, textarea, summary, .ways a, .papers a, .problems a',
        ),
      ]
        .filter((element) => element.checkVisibility())
        .map((element) => {
          const { width, height } = element.getBoundingClientRect();
          return {
            small: width < 24 || height < 24,
            html: `${width} × ${height} ${element.outerHTML.slice(0, 80)}`,
          };
        }),
    );
    expect(pressed.length).toBeGreaterThan(0);
    expect(pressed.filter(({ small }) => small).map(({ html }) => html)).toEqual([]);
  });

  test.each(STATES)(
    'everything to press on a page that is %s is reached by Tab, in its order, and seen to be',
    async (state) => {
      const page = await one.open(pageUrl(kitchen, state), { width: 1280, height: 900 });
      // Of radio buttons with a name, Tab goes to the one that is chosen; the arrows go on from there.
      const wanted = await page.evaluate(() => {
        const all = [
          ...document.querySelectorAll<HTMLElement>(
            'a[href], button, input, select, textarea, summary, [tabindex="0"]',
          ),
        ];
        const reached = all.filter(
          (element) =>
            element.checkVisibility({ visibilityProperty: true }) &&
            !(element as HTMLButtonElement).disabled &&
            element.tabIndex >= 0 &&
            !(element instanceof HTMLInputElement && element.type === 'radio' && !element.checked),
        );
        for (const [index, element] of reached.entries()) element.dataset.order = String(index);
        return reached.length;
      });
      const seen: string[] = [];
      for (let presses = 0; presses < wanted; presses += 1) {
        await page.keyboard.press('Tab');
        seen.push(
          await page.evaluate(() => {
            const element = document.activeElement as HTMLElement;
            const { outlineStyle, outlineWidth } = getComputedStyle(element);
            const outlined = outlineStyle !== 'none' && outlineWidth !== '0px';
            return outlined
              ? (element.dataset.order ?? element.outerHTML.slice(0, 80))
              : `bare ${element.outerHTML.slice(0, 80)}`;
          }),
        );
      }
      expect(wanted).toBeGreaterThan(2);
      expect(seen).toEqual(Array.from({ length: wanted }, (_, index) => String(index)));
    },
  );

  test.each(STATES)('the HTML of a page that is %s conforms', async (state) => {
    const html = await kitchen.text(`public/proposals/${ALL[state]}/index.html`);
    expect(await htmlSlips(html)).toEqual([]);
  });

  test.each(STATES)(
    'a page that is %s weighs 60 KB at most, compressed, without its fonts',
    async (state) => {
      expect(await pageWeight(kitchen.out, `public/proposals/${ALL[state]}`)).toBeLessThanOrEqual(HEAVIEST);
    },
  );

  test.each(STATES)('nothing moves while a page that is %s loads and is read to its end', async (state) => {
    expect(await shiftsWhileRead(await one.open(pageUrl(kitchen, state)))).toBe(0);
  });

  test('nothing on the page moves by itself: not while it loads, nor while a slider is drawn', async () => {
    for (const width of [390, 1280]) {
      const { page, complaints } = await openClient(browser, `${pageUrl(kitchen, 'offered')}#compare-now`, {
        viewport: { width, height: 900 },
      });
      await page.evaluate(() => {
        const shifts: number[] = [];
        Object.assign(window, { shifts });
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
        }).observe({ type: 'layout-shift', buffered: true });
      });
      const slider = page.locator('.slider').first();
      await slider.scrollIntoViewIfNeeded();
      const box = (await slider.boundingBox())!;
      await page.mouse.move(box.x + 8, box.y + box.height / 2);
      await page.mouse.down();
      for (let step = 0; step <= 30; step += 1)
        await page.mouse.move(box.x + 8 + ((box.width - 16) * step) / 30, box.y + box.height / 2);
      await page.mouse.up();
      for (const part of ['.picture', '.compared', '.coverage', '.answer-now']) {
        await page.locator(part).first().scrollIntoViewIfNeeded();
        await page.waitForTimeout(60);
      }
      const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
      expect(shifts.reduce((sum, shift) => sum + shift, 0)).toBe(0);
      expect(complaints).toEqual([]);
      await page.context().close();
    }
  });

  // Milliseconds are a machine's own, and one machine is not always alike: the steps are measured against a loop that
  // the same page runs in the same trace, and the 16 ms hold for a machine on which that loop takes what it took here.
  const slider =
    'a step of the slider takes 16 ms of script, style and layout at the median, at a quarter of the speed';
  test(slider, { retry: 2 }, async () => {
    const { page } = await openClient(browser, pageUrl(kitchen, 'offered'));
    await page.waitForSelector('[data-part=picture][data-drawn]', { state: 'attached' });
    await page.locator('.slider').first().focus();
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await browser.startTracing(page, {
      categories: ['devtools.timeline'],
    });
    await page.evaluate(referenceLoop, REFERENCE_EVENT);
    const before = await page.inputValue('[name="a.guests"]');
    for (let step = 0; step < 40; step += 1) {
      await page.keyboard.press(step < 20 ? 'ArrowRight' : 'ArrowLeft');
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
    }
    const trace = JSON.parse((await browser.stopTracing()).toString()) as Trace;
    expect(await page.inputValue('[name="a.guests"]')).toBe(before);
    const steps = stepTimes(trace);
    expect(steps.length).toBeGreaterThanOrEqual(40);
    // No step is nothing: the trace has times, and every press did its work.
    expect(Math.min(...steps)).toBeGreaterThan(0.1);
    const slower = middle(referenceTimes(trace)) / REFERENCE_MS;
    expect(middle(steps) / slower).toBeLessThanOrEqual(16);
    await page.context().close();
  });
});

/** The sum of layout shifts from the first paint on until the page has been scrolled to its end. */
async function shiftsWhileRead(page: Page): Promise<number> {
  await page.evaluate(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  for (let share = 1; share <= 10; share += 1) {
    await page.evaluate((part) => window.scrollTo(0, (document.body.scrollHeight * part) / 10), share);
    await page.waitForTimeout(40);
  }
  const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
  return shifts.reduce((sum, shift) => sum + shift, 0);
}

interface Trace {
  readonly traceEvents: readonly TraceEvent[];
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  /** The thread's own clock and time, which other programs on the machine do not lengthen. */
  readonly tts?: number;
  readonly tdur?: number;
  readonly tid: number;
  readonly pid: number;
  readonly args: { readonly data?: { readonly type?: string } };
}

const REFERENCE_EVENT = 'reference-loop';
/** What one turn of the loop takes at a quarter of the speed on the machine that the limit was set for. */
const REFERENCE_MS = 17.5;

/** Twenty turns of work that a page does: texts made, put in, and laid out. */
function referenceLoop(name: string): void {
  const box = document.createElement('div');
  box.style.cssText = 'position:absolute;visibility:hidden;width:20rem';
  document.body.append(box);
  let turn = 0;
  document.addEventListener(name, () => {
    turn += 1;
    for (let round = 0; round < 12; round += 1) {
      box.textContent = Array.from({ length: 60 }, (_, n) => ((n + turn) * 1.37 + round).toFixed(2)).join(
        ' ',
      );
      box.getBoundingClientRect();
    }
  });
  for (let count = 0; count < 20; count += 1) document.dispatchEvent(new Event(name));
  box.remove();
}

function referenceTimes({ traceEvents }: Trace): number[] {
  return traceEvents
    .filter(
      ({ name, args, ph }) => name === 'EventDispatch' && ph === 'X' && args.data?.type === REFERENCE_EVENT,
    )
    .map(({ tdur }) => (tdur ?? Number.NaN) / 1000);
}

function middle(figures: readonly number[]): number {
  return figures.toSorted((a, b) => a - b)[Math.floor(figures.length / 2)] ?? Number.NaN;
}

/** What counts as script, style and layout; events within each other count once. */
const WORK = [
  'EventDispatch',
  'FunctionCall',
  'TimerFire',
  'FireAnimationFrame',
  'UpdateLayoutTree',
  'Layout',
];

/** For each press of a key, the milliseconds of work on the page's thread until the next press. */
function stepTimes({ traceEvents }: Trace): number[] {
  const ofType =
    (type: string) =>
    ({ name, args }: TraceEvent) =>
      name === 'EventDispatch' && args.data?.type === type;
  const [{ pid, tid } = { pid: 0, tid: 0 }] = traceEvents.filter(ofType('input'));
  const own = traceEvents
    .filter((event) => event.pid === pid && event.tid === tid && event.ph === 'X')
    .map((event) => ({ ...event, tts: event.tts ?? Number.NaN, tdur: event.tdur ?? Number.NaN }));
  const presses = own
    .filter(ofType('keydown'))
    .map(({ tts }) => tts)
    .sort((a, b) => a - b);
  const work = own.filter(({ name }) => WORK.includes(name)).sort((a, b) => a.tts - b.tts);
  return presses.map((start, index) => {
    const end = presses[index + 1] ?? Number.POSITIVE_INFINITY;
    let total = 0;
    let done = start;
    for (const { tts, tdur } of work) {
      if (tts < start || tts >= end || tts + tdur <= done) continue;
      total += tts + tdur - Math.max(tts, done);
      done = tts + tdur;
    }
    return total / 1000;
  });
}
