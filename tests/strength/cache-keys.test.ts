import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { keepBetween, readSite } from '../../src/build/read-site.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { proposalCacheKey } from '../../src/views/client/cache-key.ts';
import type { ProposalPage } from '../../src/views/client/proposal-page.ts';
import { proposalView } from '../../src/views/client/proposal-view-of.ts';
import type { Site, SiteContent, SitePart } from '../../src/views/site.ts';
import { seeded } from '../bench/seeded.ts';
import { copyOf } from '../commands/kitchen-copy.ts';
import { DEMO, EDITS, edited, editOf, restored, TODAY } from './edits.ts';
import { LONG } from './long.ts';

const SEED = LONG ? Number(process.env.SALVER_SEED ?? 7) : 3;
const ROUNDS = LONG ? 400 : 10;
/** How often the kitchen's side is planned twice where its key stayed the same. */
const PLANNED = LONG ? 60 : 1;
/** Of each client's page, so many of the things it is made from are changed, one at a time. */
const CHANGES = LONG ? 4000 : 20;

/** All that is made from a site's view, as text by its place. */
function made({ pages, prints, files }: SiteContent): Record<string, string> {
  return Object.fromEntries([
    ...[...pages, ...prints].map((each) => [each.file, JSON.stringify(each.view)]),
    ...files.map(({ file, content }) => [file, String(content)]),
  ]);
}

describe('what a build takes over under a cache key is what it would make', () => {
  test(
    'of clients’ pages and of the kitchen’s side, after edits at random',
    async () => {
      const dir = copyOf(DEMO);
      const whole = new Map(edited(dir).map((file) => [file, readFileSync(join(dir, file))]));
      const random = seeded(SEED);
      const kept = await keepBetween();
      const story: string[] = [];
      const seen = new Map<string, string>();
      let before: SitePart | undefined;
      const counts = { pagesAgain: 0, pagesNew: 0, kitchenAgain: 0, kitchenNew: 0 };
      const read = async (): Promise<Site | undefined> =>
        (await readSite(dir, () => TODAY as Day, kept)).shown?.site;

      for (let round = 0; round < ROUNDS; round += 1) {
        // Half of the rounds touch what only clients see, since other edits nearly always reach the kitchen's key.
        const edit =
          round % 2 === 0 ? editOf(/^proposals\//) : random.of(round % 4 === 1 ? EDITS : [restored]);
        story.push(`${round}: ${await edit(dir, whole, random)}`);
        const told = story.slice(-6).join('\n');
        const site = await read();
        if (!site) continue;
        const { pages, files, part } = site;
        for (const each of pages) {
          const view = JSON.stringify(each.view);
          const place = `${each.file} ${each.known?.cacheKey}`;
          counts[seen.has(place) ? 'pagesAgain' : 'pagesNew'] += 1;
          expect(view === (seen.get(place) ?? view), `${each.file} is another\n${told}`).toBe(true);
          seen.set(place, view);
        }
        for (const { file, cacheKey, content } of files) {
          if (cacheKey === undefined) continue;
          const place = `${file} ${cacheKey}`;
          expect(String(content) === (seen.get(place) ?? content), `${file} is another\n${told}`).toBe(true);
          seen.set(place, String(content));
        }
        const isAsBefore = before !== undefined && before.cacheKey === part!.cacheKey;
        counts[isAsBefore ? 'kitchenAgain' : 'kitchenNew'] += 1;
        if (before && isAsBefore && counts.kitchenAgain <= PLANNED)
          expect(made(await part!.make()), told).toEqual(made(await before.make()));
        before = part;
      }
      // So that the above has something to tell apart.
      for (const [what, count] of Object.entries(counts)) expect(count, what).toBeGreaterThan(ROUNDS / 8);
    },
    ROUNDS * 20_000,
  );

  test('of clients’ pages, whatever one thing of their source changes', async () => {
    const { shown } = await readSite(DEMO, () => TODAY as Day);
    const random = seeded(SEED);
    let differing = 0;
    for (const { file, source } of shown!.site.pages) {
      const whole = JSON.stringify(proposalView(source!));
      const key = proposalCacheKey(source!);
      const ways = leaves(mayChange(source!));
      for (const way of LONG ? ways.slice(0, CHANGES) : random.some(ways, CHANGES)) {
        const view = viewOf(changed(source!, way));
        if (view === undefined || view === whole) continue;
        differing += 1;
        expect(proposalCacheKey(changed(source!, way)) !== key, `${file}: ${way.join('.')}`).toBe(true);
      }
    }
    expect(differing).toBeGreaterThan(CHANGES);
  });
});

/** What a source may hold otherwise: an issued offer never does under its digest, which reading has checked. */
function mayChange(source: ProposalPage): Partial<ProposalPage> {
  const { content: _, earlier: __, ...live } = source;
  return source.issued ? live : source;
}

type Way = readonly (string | number)[];

/** The ways to every text, figure and yes or no in plain data. */
function leaves(data: unknown, way: Way = []): Way[] {
  if (typeof data !== 'object' || data === null) return data === null || data === undefined ? [] : [way];
  return Object.entries(data).flatMap(([key, value]) => leaves(value, [...way, key]));
}

/** A copy in which one thing is another: a figure one higher, a text with one of its figures or its end another. */
function changed(source: ProposalPage, way: Way): ProposalPage {
  const copy = structuredClone(source);
  let at = copy as unknown as Record<string | number, unknown>;
  for (const step of way.slice(0, -1)) at = at[step] as typeof at;
  const last = way.at(-1)!;
  const value = at[last];
  if (typeof value === 'number') at[last] = value + 1;
  else if (typeof value === 'boolean') at[last] = !value;
  else {
    const text = String(value);
    const next = text.replace(/[1-8](?=\D*$)/, (figure) => String(Number(figure) + 1));
    at[last] = next === text ? `${text} too` : next;
  }
  return copy;
}

/** The page's view as text; undefined where such a source cannot be. */
function viewOf(source: ProposalPage): string | undefined {
  try {
    return JSON.stringify(proposalView(source));
  } catch {
    return undefined;
  }
}
