import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, onTestFinished } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { currentEvent } from '../../../src/offers/event/current-event.ts';
import { run } from '../../commands/run.ts';

export const EVENT = 'pell-supper';

/**
 * A kitchen small enough to plan by hand: a plated supper of one starter for everybody and two mains of which each
 * guest takes one, no overage, no tax, whole batches of stew.
 */
const FILES: Readonly<Record<string, string>> = {
  'kitchen.yaml': `name: Lantern Kitchen
locale: en-US
currency: USD
measures: us
time zone: America/Chicago
buying: 3 days before
allergens: us
overage: { plated: 0 % }
places:
  hill-town: { name: Hill Town }
guarantee: { deadline: 7 days before, floor: 90 % }
payments: [30 % when accepted, balance 7 days before]
capacity: { guests a day: 100, events a day: 1 }
stations: { stove: Stove }
containers:
  tray: { name: Tray, holds: 20 pieces }
add-ons:
  late-fritters: { name: Late fritters, price: 2.00 per guest, class: food, dishes: { bean-fritters: 1 piece per guest } }
`,
  'suppliers.yaml': 'hill-farm: { name: Hill Farm }\n',
  'prices/hill-farm.csv': `ingredient,pack,price,item number,valid from
lamb-neck,10 lb box,80.00,L10,2026-01-01
lamb-neck,10 lb box,90.00,L10,2027-06-01
split-peas,25 lb sack,30.00,P25,2026-01-01
white-beans,3 lb bag,6.00,B3,2026-01-01
yogurt,1 gal,16.00,Y1,2026-01-01
tahini,1 lb,9.00,T1,2026-01-01
`,
  'ingredients/own.yaml': `lamb-neck: { name: Lamb neck, from: lamb, contains: none, yield: 80 % }
split-peas: { name: Split peas, from: plant, contains: none }
white-beans: { name: White beans, from: plant, contains: none }
yogurt: { name: Yogurt, from: milk, contains: milk }
tahini: { name: Tahini, from: plant, contains: sesame, conversions: [1 cup = 8.5 oz] }
mystery-paste: { name: Mystery paste, from: plant }
bouillon: { name: Bouillon, from: plant, contains: celery }
`,
  'recipes/bean-fritters.mdx': `---
name: Bean fritters
makes: 20 pieces
ingredients:
  white-beans: 2 lb
  herb-yogurt: 1 qt
steps:
  - { do: Fry., when: on the day, station: stove, hands-on: 10 min per batch }
hold: hot
pack: { carry: tray }
---
`,
  'recipes/herb-yogurt.mdx': `---
name: Herb yogurt
makes: 1 qt
ingredients:
  yogurt: 1 qt
steps:
  - { do: Stir., when: 1 day before, station: stove, hands-on: 5 min }
hold: cold
---
`,
  'recipes/lamb-stew.mdx': `---
name: Lamb stew
makes: 10 servings
batches: whole
ingredients:
  lamb-neck: 4 lb
steps:
  - { do: Braise., when: 2 days before, station: stove, hands-on: 30 min per batch }
hold: hot
---
`,
  'recipes/pea-pot.mdx': `---
name: Pea pot
makes: 10 servings
ingredients:
  split-peas: 5 lb
steps:
  - { do: Simmer., when: on the day, station: stove, hands-on: 20 min }
hold: hot
---
`,
  'recipes/bean-pot.mdx': `---
name: Bean pot
makes: 10 servings
ingredients:
  white-beans: 5 lb
  tahini: 2 cups
steps:
  - { do: Simmer., when: on the day, station: stove, hands-on: 20 min }
hold: hot
---
`,
  'packages/supper.mdx': `---
name: Supper
style: plated
price: { 20+: 40.00 }
child: 50 %
vendor: 20.00
minimum guests: 20
courses:
  - name: First
    dishes:
      bean-fritters: 1 piece per guest
  - name: Main
    each guest: one
    dishes:
      lamb-stew: 1 serving per guest
      pea-pot: 1 serving per guest
---
`,
  'proposals/pell-supper.md': `---
link: mk4vxr2hq7tz3cwnb6ylpaj5ge
client: Tamsin Pell
occasion: Supper
date: 2027-05-15
serve at: 18:00
place: hill-town
valid until: 2027-05-01
guests: { adults: 84 }
needs: { milk: 2, vegan: 4 }
packages: supper
choices:
  supper:
    Main: { lamb-stew: 63, pea-pot: 21 }
---
Dear Tamsin,
`,
};

/** The kitchen with its supper accepted by 84 adults on 2027-04-01 and confirmed. In a folder that goes with the test. */
export async function supperKitchen(changes: Readonly<Record<string, string>> = {}): Promise<string> {
  const dir = await acceptedSupper(changes);
  await done(dir, '2027-04-02', 'confirm', EVENT);
  return dir;
}

/** The same before anything has come in for it. */
export async function acceptedSupper(changes: Readonly<Record<string, string>> = {}): Promise<string> {
  const dir = mkdtempSync(join(tmpdir(), 'salver-supper-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  for (const [file, text] of Object.entries({ ...FILES, ...changes })) {
    mkdirSync(dirname(join(dir, file)), { recursive: true });
    writeFileSync(join(dir, file), text);
  }
  await done(dir, '2027-03-01', 'issue', EVENT);
  await done(
    dir,
    '2027-04-01',
    'accept',
    '--signed',
    EVENT,
    '--name',
    'Tamsin Pell',
    '--email',
    't@pell.example',
  );
  return dir;
}

/** A file of the kitchen with one text replaced; the text must be there. */
export function changed(file: string, from: string, to: string): Record<string, string> {
  const text = FILES[file] ?? '';
  if (!text.includes(from)) throw new Error(`${file} has no “${from}”`);
  return { [file]: text.replace(from, to) };
}

/** Runs a command that must succeed and gives what it said as JSON where asked for. */
export async function done(dir: string, today: string, name: string, ...words: string[]): Promise<string> {
  const ran = await run(dir, name, ...words, '--today', today);
  expect({ words, ...ran }).toMatchObject({ code: 0, err: '' });
  return ran.out;
}

/** Runs a command that must be refused, and gives the sentence. */
export async function refusal(dir: string, today: string, name: string, ...words: string[]): Promise<string> {
  const ran = await run(dir, name, ...words, '--today', today);
  expect({ words, ...ran }).toMatchObject({ code: 1, out: '' });
  return ran.err.trim();
}

export async function bookOf(dir: string): Promise<Book> {
  const { book, findings } = await readBook(dir, offerProblem);
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  if (!book) throw new Error('there is no kitchen');
  return book;
}

export async function statusOf(dir: string) {
  const found = currentEvent(await bookOf(dir), EVENT);
  if (!found.ok) throw new Error(found.what);
  return found.value.status;
}

/** The event's facts as written, in order: file name and content. */
export function factsIn(dir: string): { file: string; fact: Record<string, unknown> }[] {
  const folder = join(dir, 'events', EVENT);
  return readdirSync(folder)
    .sort()
    .map((file) => ({ file, fact: JSON.parse(readFileSync(join(folder, file), 'utf8')) }));
}
