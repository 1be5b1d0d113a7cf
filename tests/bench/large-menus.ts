import type { LargeFood } from './large-store.ts';
import type { Seeded } from './seeded.ts';

/** The ids of what the large kitchen cooks and sells. */
export interface LargeMenus {
  readonly files: Record<string, string>;
  readonly packages: readonly string[];
}

/** Every tenth recipe is a sauce or a stock that other recipes use. */
const SUB_RECIPE_SHARE = 10;
const COURSES = ['To start', 'Mains', 'On the side', 'To finish'];

/** Recipes over the foods, and packages of fifteen dishes over the recipes. */
export function largeMenus(
  random: Seeded,
  foods: readonly LargeFood[],
  recipeCount: number,
  packageCount: number,
): LargeMenus {
  const files: Record<string, string> = {};
  const subs = Array.from({ length: Math.floor(recipeCount / SUB_RECIPE_SHARE) }, (_, i) => `sauce-${i + 1}`);
  const dishes = Array.from({ length: recipeCount - subs.length }, (_, i) => `dish-${i + 1}`);
  for (const id of subs) files[`recipes/${id}.mdx`] = recipe(random, id, foods, []);
  for (const id of dishes) files[`recipes/${id}.mdx`] = recipe(random, id, foods, subs);
  const packages = Array.from({ length: packageCount }, (_, i) => `menu-${i + 1}`);
  for (const [index, id] of packages.entries()) {
    // Menus overlap, and all dishes are on one.
    const start = Math.floor((index * dishes.length) / packageCount);
    const own = Array.from({ length: 15 }, (_, i) => dishes[(start + i) % dishes.length]!);
    files[`packages/${id}.mdx`] = menu(random, index, own);
  }
  return { files, packages };
}

function recipe(random: Seeded, id: string, foods: readonly LargeFood[], subs: readonly string[]): string {
  const lines = random
    .some(foods, 7 + random.below(4))
    .map((food) => `  ${food.id}, trimmed: ${1 + random.below(6)} lb ${random.below(16)} oz`);
  if (subs.length > 0 && random.below(2) === 0) lines.push(`  ${random.of(subs)}: ${1 + random.below(3)} qt`);
  return `---
name: ${id.startsWith('dish') ? 'Dish' : 'Sauce'} number ${id.split('-')[1]}
makes: [50 servings, 20 lb, 10 qt]
batches: ${random.of(['exact', 'half', 'whole'])}
ingredients:
${lines.join('\n')}
steps:
  - do: Trim and weigh everything, and cut it to one size.
    when: ${random.of(['2 days before', 'the day before'])}
    station: cold
    hands-on: ${20 + random.below(30)} min per batch
  - do: Cook in batches until done all through, and chill in shallow pans.
    when: the day before
    station: ${random.of(['stove', 'oven'])}
    hands-on: 25 min per batch
    unattended: ${20 + random.below(60)} min
    cook to: 165 °F
  - do: Reheat covered.
    when: on the day
    station: oven
    hands-on: 10 min
    unattended: 40 min
    cook to: 165 °F
keeps: 4 days
hold: hot
reheat: yes
pack: { chill: shallow-pan, carry: deep-pan, serve: deep-pan }
finish: Stir once and taste.
---
A note for the cook about ${id}: taste before you season, and again after it has been held.
`;
}

function menu(random: Seeded, index: number, dishes: readonly string[]): string {
  const price = 2800 + 25 * random.below(80);
  const courses = COURSES.map((name, course) => {
    const own = dishes.slice(Math.floor((course * 15) / 4), Math.floor(((course + 1) * 15) / 4));
    return [
      `  - name: ${name}`,
      '    dishes:',
      ...own.map((id) => `      ${id}: ${2 + random.below(4)} oz per guest`),
    ].join('\n');
  });
  const money = (cents: number) => (cents / 100).toFixed(2);
  return `---
name: Menu number ${index + 1}
style: buffet
price:
  20-59: ${money(price)}
  60-119: ${money(price - 200)}
  120+: ${money(price - 350)}
never less in all: yes
child: 50 %
vendor: 18.00
minimum guests: 20
hours: 4 hours
counts: adults, children, vendors
courses:
${courses.join('\n')}
---
A menu for a long table, number ${index + 1} in our book. It begins cold, goes on warm, and ends sweet.

Everything is carried in on the day and served within two hours.
`;
}
