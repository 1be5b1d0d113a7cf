import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openClient, pageUrl } from './client-kitchen.ts';
import { launch } from './open-page.ts';
import type { SecondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

describe('the slider of a client’s page', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;

  beforeAll(async () => {
    kitchen = await sharedKitchen('states');
    browser = await launch();
  });

  afterAll(() => browser?.close());

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
    await page.close();
  });
});

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
