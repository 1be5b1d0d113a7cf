import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Offer, offerSchema } from '../../../src/schema/offer.ts';
import { offerChanges } from '../../../src/views/client/offer-changes.ts';
import { totalChange } from '../../../src/views/client/offer-changes-choice.ts';
import { offerOf, secondKitchen } from '../offers/second-kitchen.ts';

const DEMO = 'content/offers';

/** What a difference says nothing of, with the reason. Everything else of an offer must make a line. */
const UNSAID: readonly (readonly [path: RegExp, because: string])[] = [
  [/^(version|kind|proposal|link|terms\.version)$/, 'both are the same proposal’s, under the same link'],
  [/^(revision|issued|digest)$/, 'the head of the page says which revision it is and of which day'],
  [/^(kitchen|terms)\.locale$|^kitchen\.measures$/, 'how figures are written, not what they are'],
  [/^kitchen\.(paper|accent|mark|fonts|tellPriceSteps)\b/, 'how the page looks and what it points out'],
  [/^terms\.eventDate$/, 'the same day as `date`'],
  [/^terms\.place\.id$/, 'the client knows the place by its name'],
  [/^samples\b/, 'totals that follow from the terms; what is proposed of further menus has its own test'],
];

type Path = readonly (string | number)[];

function offers(): Offer[] {
  return readdirSync(DEMO).map((name) =>
    offerSchema.parse(JSON.parse(readFileSync(join(DEMO, name), 'utf8'))),
  );
}

/** Every entry of a record and of all within it: the path and what stands there. */
function* entries(value: unknown, path: Path = []): Generator<[Path, unknown]> {
  if (path.length > 0) yield [path, value];
  if (Array.isArray(value))
    for (const [index, each] of value.entries()) yield* entries(each, [...path, index]);
  else if (typeof value === 'object' && value !== null)
    for (const [key, each] of Object.entries(value)) yield* entries(each, [...path, key]);
}

/** Another value of the same kind, by what the entry is called and holds; undefined where only its parts can differ. */
function otherThan(value: unknown, path: Path): unknown {
  const name = path.join('.');
  if (/payments\.\d+$/.test(name)) return { of: 'amount', amount: '77.77', due: 77 };
  if (/payments\.\d+\./.test(name)) return undefined;
  if (/kitchen\.acceptances$/.test(name)) return { by: 'mail', to: 'other@kitchen.example' };
  if (/kitchen\.acceptances\./.test(name)) return undefined;
  if (/terms\.delivery$/.test(name)) return { label: 'Delivery elsewhere', price: '77.77' };
  if (/terms\.discount$/.test(name)) return { label: 'For friends', rate: '7 %', base: ['food'] };
  if (/terms\.serviceCharge$/.test(name))
    return { label: 'Charge', rate: '7 %', base: ['food'], afterDiscount: true };
  if (/terms\.minimumSpend$/.test(name)) return { amount: '77.77', base: ['food'], class: 'food' };
  if (/\.(contains|mayContain)\.\d+$/.test(name)) return value === 'lupin' ? 'celery' : 'lupin';
  if (/allergenLaws\.\d+$/.test(name)) return value === 'us' ? 'eu' : 'us';
  if (/\.(class|base\.\d+)$/.test(name)) return value === 'labour' ? 'rental' : 'labour';
  if (/\.per$/.test(name) && typeof value === 'string') return value === 'flat' ? 'hour' : 'flat';
  if (/\.taxBy$/.test(name)) return value === 'line' ? 'invoice' : 'line';
  if (/\.currency$/.test(name)) return 'CHF';
  if (/\.(tierCounts|minimumCounts|counts)\.\w+$/.test(name)) return '1/3';
  if (value === null) return /\.(to|choose)$/.test(name) ? 77 : undefined;
  if (typeof value === 'boolean') return !value;
  if (typeof value === 'number') return value + 1;
  if (typeof value !== 'string') return undefined;
  if (/^\d{4}-\d\d-\d\d$/.test(value)) return '2031-07-07';
  if (/^\d\d:\d\d$/.test(value)) return '07:07';
  if (/ %$/.test(value)) return '77.7 %';
  if (/^\d+\.\d+$/.test(value)) return '7777.77';
  return `${value} otherwise`;
}

/** A copy with one entry set, or taken out; what lies beside the path is shared. */
function changed(offer: Offer, path: Path, value: unknown): Offer {
  return withEntry(offer, path, value) as Offer;
}

function withEntry(parent: unknown, [step, ...rest]: Path, value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(parent))
    return parent.flatMap((each, index) => {
      if (index !== Number(step)) return [each];
      const entry = withEntry(each, rest, value);
      return entry === undefined ? [] : [entry];
    });
  const record = parent as Record<string, unknown>;
  const entry = withEntry(record[step], rest, value);
  const others = Object.entries(record).filter(([key]) => key !== step);
  return Object.fromEntries(entry === undefined ? others : [...others, [step, entry]]);
}

/** Offers that between them have whatever an offer can hold: a charge, a discount, counts of mains, several tiers. */
async function someOffers(): Promise<Offer[]> {
  const some = offers().filter(({ proposal, revision }) => proposal === 'tansyfield-lunch' || revision > 1);
  expect(some.length).toBeGreaterThan(1);
  return [...some, offerOf(await secondKitchen())];
}

const linesOf = (before: Offer, now: Offer) => offerChanges(before, now).flatMap(({ lines }) => lines);
const isSaid = (path: Path) => !UNSAID.some(([unsaid]) => unsaid.test(path.join('.')));

describe('what has changed between two revisions', () => {
  test('is nothing where nothing has', () => {
    for (const offer of offers()) expect(offerChanges(offer, structuredClone(offer))).toEqual([]);
  });

  test('names every entry that differs, whichever way round', async () => {
    const silent = new Set<string>();
    let tried = 0;
    for (const offer of await someOffers())
      for (const [path, value] of entries(offer)) {
        const other = otherThan(value, path);
        if (other === undefined || !isSaid(path)) continue;
        tried += 1;
        const now = changed(offer, path, other);
        if (linesOf(offer, now).length === 0 || linesOf(now, offer).length === 0) silent.add(path.join('.'));
      }
    expect([...silent]).toEqual([]);
    expect(tried).toBeGreaterThan(1000);
  });

  test('names everything that is taken out of a list or is new in it', async () => {
    const silent = new Set<string>();
    for (const offer of await someOffers())
      for (const [path] of entries(offer)) {
        const inList =
          typeof path.at(-1) === 'number' || /(venue|needs|stories)\.[^.]+$/.test(path.join('.'));
        if (!inList || !isSaid(path)) continue;
        const now = changed(offer, path, undefined);
        if (linesOf(offer, now).length === 0 || linesOf(now, offer).length === 0) silent.add(path.join('.'));
      }
    expect([...silent]).toEqual([]);
  });
});

describe('how a change is told', () => {
  const lunch = () => offers().find(({ proposal }) => proposal === 'tansyfield-lunch') as Offer;
  const [supper, table] = lunch().terms.packages;
  const at = (offer: Offer, path: string, value: unknown) => changed(offer, path.split('/'), value);
  const told = (now: Offer) => linesOf(lunch(), now);

  test('is what was and what is, in the client’s own words and sums', () => {
    expect(told(at(lunch(), 'serveAt', '13:00'))).toEqual(['Served at: 1:00 PM (was 12:30 PM).']);
    expect(told(at(lunch(), 'terms/packages/0/tiers/0/perHead', '91.5'))).toEqual([
      expect.stringMatching(/^Per guest, 24 to \d+ guests: \$91\.50 \(was \$\d+\.\d\d\)\.$/),
    ]);
    expect(
      told(at(lunch(), 'terms/discount', { label: 'Early booking', rate: '5 %', base: ['food'] })),
    ).toEqual(['Early booking: 5% of food (new).']);
    expect(told(at(lunch(), 'terms/guarantee/daysBefore', 10))).toEqual([
      'Your final count is due: 10 days before the event (was 7 days before the event).',
    ]);
  });

  test('tells a dish that moved from one that came or went, and a course that only has a new name', () => {
    const courses = structuredClone(supper!.courses) as unknown as { name: string; dishes: unknown[] }[];
    const [first, second] = courses;
    const dish = first!.dishes[0] as { name: string };
    second!.dishes.push(first!.dishes.shift());
    expect(told(at(lunch(), 'terms/packages/0/courses', courses))).toContain(
      `${dish.name} moved from ${first!.name} to ${second!.name}.`,
    );
    const named = supper!.courses.map((course, index) =>
      index === 0 ? { ...course, name: 'To begin' } : course,
    );
    expect(told(at(lunch(), 'terms/packages/0/courses', named))).toEqual([
      `${supper!.courses[0]!.name} is now called To begin.`,
    ]);
  });

  test('says an allergen once, though the dish stands in two menus', () => {
    const twice = { ...table!, id: 'again', name: 'Again' };
    const before = at(lunch(), 'terms/packages', [table, twice]);
    const sesame = structuredClone(before) as unknown as {
      terms: { packages: { courses: { dishes: { name: string; contains: string[] }[] }[] }[] };
    };
    for (const { courses } of sesame.terms.packages) courses[0]!.dishes[0]!.contains.push('sesame');
    const { name } = sesame.terms.packages[0]!.courses[0]!.dishes[0]!;
    expect(linesOf(before, sesame as unknown as Offer)).toEqual([`${name} now contains sesame.`]);
  });

  test('repeats short terms, and names the heads of long ones', () => {
    const legal = (text: string) => ({ ...lunch(), legal: text });
    expect(
      linesOf(legal('**Moving.** Free once.\n\nRest.'), legal('**Moving.** Never free.\n\nRest.')),
    ).toEqual(['The terms have changed.', 'Now: “Moving. Never free.”', 'Before: “Moving. Free once.”']);
    const long = 'We agree. '.repeat(60);
    expect(linesOf(legal(`**Moving.** ${long}`), legal(`**Moving.** ${long}Not.`))).toEqual([
      'The terms have changed: “Moving”. Please read them again.',
    ]);
  });

  test('follows what is proposed of a menu that is not the first', () => {
    const offer = offers().find(({ proposal }) => proposal === 'reading-room-opening') as Offer;
    const index = offer.samples.findIndex(({ choice }) => choice.package === 'towpath-lunch');
    const path = ['samples', index, 'choice', 'courses', 'In the bowls', 0];
    expect(linesOf(offer, changed(offer, path, 'nothing-known'))).toEqual([
      expect.stringMatching(/^Towpath Lunch, chosen for In the bowls: .* \(was .*\)\.$/),
    ]);
  });

  test('gives the total as each offer froze it, and the difference', () => {
    const dearer = at(lunch(), 'samples/0/total', '9999.99');
    const was = lunch().samples[0]!.total;
    expect(totalChange(lunch(), lunch())).toMatch(/^The total is \$[\d,.]+, as before\.$/);
    const difference = (999999 - Number(was.replace('.', '')))
      .toString()
      .replace(/(\d)(\d{3})?(\d\d)$/, '$1$2.$3');
    expect(totalChange(lunch(), dearer).replaceAll(',', '')).toContain(` up $${difference} from $`);
    expect(totalChange(dearer, lunch()).replaceAll(',', '')).toContain(` down $${difference} from $`);
  });
});
