import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A small kitchen without a finding: what a test changes in it is what it is about. */
export const SMALL_CONTENT: Readonly<Record<string, string>> = {
  'kitchen.yaml': `name: Lantern Kitchen
locale: en-US
currency: USD
time zone: America/Chicago
allergens: us
places:
  hill-town: { name: Hill Town }
stations:
  stove: Stove
staff:
  server: { name: Servers, price: 38.00 per hour, pay: 24.00 per hour, one per: { buffet: 30 guests }, hours: 6 hours }
containers:
  tub: { holds: 128 fl oz, for: cold }
  tray: { holds: 20 servings }
add-ons:
  late-soup: { name: Late soup, price: 4.00 per guest, class: food, dishes: { lentil-soup: 6 fl oz per guest } }
`,
  'suppliers.yaml': `hill-farm:
  name: Hill Farm
`,
  'prices/hill-farm.csv': `ingredient,pack,price,item number,valid from
lentils,25 lb sack,31.00,L1,2026-01-01
hill-cheese,5 lb,42.00,C1,2026-01-01
`,
  'ingredients/own.yaml': `lentils:
  from: plant
  contains: none
  conversions: [1 cup = 192 g]
hill-cheese:
  from: milk, animal rennet
  contains: milk
`,
  'recipes/lentil-soup.mdx': `---
name: Lentil soup
makes: [40 servings, 2 gal]
ingredients:
  lentils: 4 lb
steps:
  - do: Simmer until soft.
    station: stove
    cook to: 165 °F
keeps: 3 days
hold: hot
pack: { serve: tray }
---
Stir often.
`,
  'recipes/cheese-plate.mdx': `---
name: Cheese plate
makes: 20 servings
ingredients:
  hill-cheese: 3 lb
steps:
  - do: Slice.
    station: stove
hold: cold
keeps: 1 day
---
`,
  'packages/supper.mdx': `---
name: Supper
style: buffet
price: { 20-49: 30.00, 50+: 29.50 }
minimum guests: 20
counts: adults, children, vendors
courses:
  - name: All of it
    dishes:
      lentil-soup: 8 fl oz per guest
      cheese-plate: 1 serving per guest
---
A plain supper.
`,
  'proposals/gale.md': `---
link: mk4vxr2hq7tz3cwnb6ylpaj5ge
client: Tamsin Gale
occasion: Supper
date: 2027-05-15
serve at: 18:00
place: hill-town
valid until: 2027-05-01
guests: { adults: 40, vendors: 2 }
packages: supper
---
Dear Tamsin,
`,
};

/** The small kitchen with some files changed; `null` leaves one out. In a folder that goes with the test. */
export function contentWith(changes: Readonly<Record<string, string | null>> = {}): string {
  const dir = mkdtempSync(join(tmpdir(), 'salver-content-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  for (const [file, text] of Object.entries({ ...SMALL_CONTENT, ...changes })) writeIn(dir, file, text);
  return dir;
}

/** A file of the small kitchen with one text in it replaced by another; the text must be there. */
export function changed(file: string, from: string, to: string): Record<string, string> {
  const text = SMALL_CONTENT[file] ?? '';
  if (!text.includes(from)) throw new Error(`${file} has no “${from}”`);
  return { [file]: text.replace(from, to) };
}

function writeIn(dir: string, file: string, text: string | null): void {
  if (text === null) return;
  mkdirSync(dirname(join(dir, file)), { recursive: true });
  writeFileSync(join(dir, file), text);
}
