import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { printFindings } from '../../src/book/findings/print-findings.ts';
import { findingsOn } from '../../src/check/findings-on.ts';
import { powerShortOf } from '../../src/views/kitchen/power-short-of.ts';
import { acceptedSupper, bookOf, changed, done, EVENT } from '../unit/events/supper-kitchen.ts';
import { day } from '../unit/offers/second-kitchen.ts';

const PROPOSAL = `proposals/${EVENT}.md`;
const STOVE = 'equipment: { gas-range: { name: Gas range, station: stove } }\nstations:';

/** The supper whose pea pot is heated at the place, in a kitchen with a range that stays there. */
const kitchenWith = (equipment = STOVE) => ({
  ...changed('kitchen.yaml', 'stations:', equipment),
  ...changed(
    'recipes/pea-pot.mdx',
    '  - { do: Simmer., when: on the day, station: stove, hands-on: 20 min }',
    '  - { do: Simmer., when: on the day, station: stove, hands-on: 20 min }\n  - { do: Heat., when: at serving, station: stove }',
  ),
});

async function foundOn(dir: string, today: string): Promise<string> {
  const findings = findingsOn(await bookOf(dir), day(today)).filter(({ code }) =>
    /^(place|circuits)-/.test(code),
  );
  return printFindings(findings, 'content').trimEnd().split('\n').slice(0, -1).join('\n');
}

function venue(dir: string, facts: string): void {
  const file = join(dir, PROPOSAL);
  writeFileSync(file, readFileSync(file, 'utf8').replace('packages:', `venue: ${facts}\npackages:`));
}

describe('cooking at the place: what check says', () => {
  test('of a venue of which nothing is stated, a warning', async () => {
    expect(await foundOn(await acceptedSupper(kitchenWith()), '2027-05-03')).toMatchInlineSnapshot(
      `"content/proposals/pell-supper.md:2:1 warning place-not-stated “Pea pot” is cooked at the place at “Stove” for the event pell-supper on 2027-05-15, but nothing states that the venue has burners, and the kitchen’s Gas range is not stated to travel — write what the venue has as “burners: 2” or “burners: none”, bring equipment for that station (“travels: yes” in kitchen.yaml), do the step in the kitchen (“at: kitchen”), or serve another dish of the menu"`,
    );
  });

  test('of a venue that has none, an error at the fact that says so', async () => {
    const dir = await acceptedSupper(kitchenWith());
    venue(dir, '{ name: The Barn, burners: none }');
    expect(await foundOn(dir, '2027-05-03')).toMatchInlineSnapshot(
      `"content/proposals/pell-supper.md:11:26 error place-cannot-cook “Pea pot” is cooked at the place at “Stove” for the event pell-supper on 2027-05-15, but the venue has no burners, and the kitchen’s Gas range is not stated to travel — bring equipment for that station (“travels: yes” in kitchen.yaml), do the step in the kitchen (“at: kitchen”), or serve another dish of the menu"`,
    );
  });

  test('of hake that is baked at a venue without an oven: which oven stays behind, and what else can be done', async () => {
    const dir = await acceptedSupper({
      ...changed(
        'kitchen.yaml',
        'stations: { stove: Stove }',
        'equipment: { deck: { name: Deck oven, station: oven } }\nstations: { stove: Stove, oven: Ovens }',
      ),
      ...changed(
        'ingredients/own.yaml',
        'split-peas: { name: Split peas, from: plant',
        'hake: { name: Hake, from: fish, contains: fish (hake) }\nsplit-peas: { name: Split peas, from: plant',
      ),
      'recipes/pea-pot.mdx': `---
name: Baked hake
makes: 10 servings
ingredients:
  hake: 5 lb
steps:
  - { do: Season., when: on the day, station: stove, hands-on: 20 min }
  - { do: Bake to 145 °F., when: at serving, station: oven, cook to: 145 °F }
hold: hot
---
`,
    });
    venue(dir, '{ name: The Barn, ovens: none }');
    expect(await foundOn(dir, '2027-05-03')).toMatch(
      /error place-cannot-cook “Baked hake” is cooked at the place at “Ovens” for the event pell-supper on 2027-05-15, but the venue has no ovens, and the kitchen’s Deck oven is not stated to travel — bring equipment for that station \(“travels: yes” in kitchen\.yaml\), do the step in the kitchen \(“at: kitchen”\), or serve another dish of the menu$/,
    );
  });

  test('nothing once the venue has some, equipment travels, the step is done in the kitchen, or the event is over', async () => {
    const stated = await acceptedSupper(kitchenWith());
    expect(await foundOn(stated, '2027-05-16')).toBe('');
    venue(stated, '{ name: The Barn, burners: 2 }');
    expect(await foundOn(stated, '2027-05-03')).toBe('');
    const travels = STOVE.replace('station: stove }', 'station: stove, travels: yes }');
    const brought = await acceptedSupper(kitchenWith(travels));
    venue(brought, '{ name: The Barn, burners: none }');
    expect(await foundOn(brought, '2027-05-03')).toBe('');
    const inKitchen = kitchenWith();
    const steps = (inKitchen['recipes/pea-pot.mdx'] ?? '').replace(
      'when: at serving,',
      'when: at serving, at: kitchen,',
    );
    const home = await acceptedSupper({ ...inKitchen, 'recipes/pea-pot.mdx': steps });
    expect(await foundOn(home, '2027-05-03')).toBe('');
  });

  test('of an open offer, since its client may still choose the dish', async () => {
    const dir = await acceptedSupper(kitchenWith());
    const next = readFileSync(join(dir, PROPOSAL), 'utf8')
      .replace('link: mk4v', 'link: nk4v')
      .replace('packages:', 'venue: { burners: none }\npackages:');
    writeFileSync(join(dir, 'proposals/pell-lunch.md'), next);
    await done(dir, '2027-04-20', 'issue', 'pell-lunch');
    await done(dir, '2027-04-20', 'cancel', EVENT);
    expect(await foundOn(dir, '2027-04-26')).toMatchInlineSnapshot(
      `"content/proposals/pell-lunch.md:11:10 error place-cannot-cook “Pea pot” is cooked at the place at “Stove” for the open offer pell-lunch revision 1, but the venue has no burners, and the kitchen’s Gas range is not stated to travel — bring equipment for that station (“travels: yes” in kitchen.yaml), do the step in the kitchen (“at: kitchen”), or serve another dish of the menu"`,
    );
    expect(await foundOn(dir, '2027-05-02')).toBe('');
  });

  /** The supper with an electric range at a venue with so much power, as the command `check` tells it. */
  const powered = async (range: string, power: string) => {
    const electric = STOVE.replace(
      'name: Gas range, station: stove }',
      `${range}, station: stove, travels: yes }`,
    );
    const dir = await acceptedSupper(kitchenWith(electric));
    venue(dir, `{ name: The Barn, power: ${power} }`);
    const book = await bookOf(dir);
    const found = [...findingsOn(book, day('2027-05-03')), ...powerShortOf(book, day('2027-05-03'))];
    const circuits = found.filter(({ code }) => code === 'circuits-too-few');
    return printFindings(circuits, 'content').trimEnd().split('\n').slice(0, -1).join('\n');
  };

  test('of brought equipment for which no circuit is left at an event, as long as it is lit', async () => {
    expect(
      await powered('name: Induction range, count: 3, draws: 13 A', 'two 20 A circuits'),
    ).toMatchInlineSnapshot(
      `"content/proposals/pell-supper.md:11:26 warning circuits-too-few for the event pell-supper on 2027-05-15 no circuit is left for Induction range (13 A, 18:30 to 18:31); the venue has 2 × 20 A, and 39 A are needed at once — bring a generator that carries 13 A, fewer pieces, or ones that burn gas; or ask for another circuit and write it under “power”; an electrician decides what each carries"`,
    );
    // Three of 6 A: two on one circuit, one on the other.
    expect(await powered('name: Induction range, count: 3, draws: 6 A', 'two 12 A circuits')).toBe('');
  });

  test('of an open offer, with all of it lit at once', async () => {
    const electric = STOVE.replace(
      'name: Gas range, station: stove }',
      'name: Induction range, count: 3, station: stove, travels: yes, draws: 13 A }',
    );
    const dir = await acceptedSupper(kitchenWith(electric));
    const next = readFileSync(join(dir, PROPOSAL), 'utf8')
      .replace('link: mk4v', 'link: nk4v')
      .replace('packages:', 'venue: { power: two 20 A circuits }\npackages:');
    writeFileSync(join(dir, 'proposals/pell-lunch.md'), next);
    await done(dir, '2027-04-20', 'issue', 'pell-lunch');
    expect(await foundOn(dir, '2027-04-26')).toMatchInlineSnapshot(
      `"content/proposals/pell-lunch.md:11:10 warning circuits-too-few for the open offer pell-lunch revision 1 no circuit is left for Induction range (13 A); the venue has 2 × 20 A — bring fewer of them, equipment that burns gas, or a generator, and write its amperes under “power”"`,
    );
  });
});
