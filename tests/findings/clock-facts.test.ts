import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith, SMALL_CONTENT } from './small-content.ts';

const KITCHEN = 'kitchen.yaml';
const PROPOSAL = 'proposals/gale.md';

/** The small kitchen with a stove it can take along, and what its station and staff say. */
function equipped({ station = 'Stove', stove = '', server = '' } = {}): string {
  const text = (SMALL_CONTENT[KITCHEN] ?? '')
    .replace('  stove: Stove\n', `  stove: ${station}\n`)
    .replace('hours: 6 hours }', `hours: 6 hours${server} }`)
    .replace('add-ons:', `equipment:\n  ring: { station: stove${stove} }\nadd-ons:`);
  return contentWith({ [KITCHEN]: text });
}

describe('stations, equipment and staff: what check says', () => {
  test('nothing of a station with places, equipment that travels and cooks', async () => {
    const dir = equipped({
      station: '{ name: Hot line, places: 3 }',
      stove: ', travels: yes, draws: 12.5 A, heats in: 15 min',
      server: ', cooks: yes',
    });
    expect(await foundIn(dir)).toBe('');
    const { kitchen } = (await readBook(dir)).book!;
    expect(kitchen.stations).toEqual(new Map([['stove', 'Hot line']]));
    expect(kitchen.stationPlaces).toEqual(new Map([['stove', 3]]));
    expect(kitchen.equipment.get('ring')).toMatchObject({ travels: true, amperes: 12.5, heats: 15 });
    expect(kitchen.staff.get('server')).toMatchObject({ cooks: true });
  });

  test('what an old kitchen leaves out is left out', async () => {
    const { kitchen } = (await readBook(equipped())).book!;
    expect(kitchen).not.toHaveProperty('stationPlaces');
    expect(Object.keys(kitchen.equipment.get('ring')!)).toEqual(['id', 'name', 'count', 'holds', 'station']);
    expect(kitchen.staff.get('server')).not.toHaveProperty('cooks');
  });

  test('nothing of equipment that holds batches and is worked by hand', async () => {
    const dir = equipped({ stove: ', holds: "2 batches, 4 tray", by hand: yes' });
    expect(await foundIn(dir)).toBe('');
    expect((await readBook(dir)).book!.kitchen.equipment.get('ring')).toMatchObject({
      holds: [{ count: 4, container: 'tray' }],
      batches: 2,
      byHand: true,
    });
    expect(await foundIn(equipped({ stove: ', holds: no batch' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:16:34 error not-understood “no batch” does not give a number and a container — write a number and a container’s id, such as 5 full-pan-2, or 1 batch"`,
    );
    expect(await foundIn(equipped({ stove: ', by hand: often' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:16:36 error unknown-word “by hand” can’t be “often” — write one of yes, no"`,
    );
  });

  test('places, amperes, times and yeses that are none', async () => {
    expect(await foundIn(equipped({ station: '{ name: Stove, places: some }' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:9:33 error not-understood “some” does not fit here — write a whole number from 1 to 100"`,
    );
    expect(await foundIn(equipped({ stove: ', draws: 3 kW' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:16:34 error not-understood “3 kW” is not a current in amperes — write it such as 16 A; it is on the rating plate"`,
    );
    expect(await foundIn(equipped({ stove: ', draws: 0 A' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:16:34 error not-understood “0 A” can’t be right — write more than 0 A and at most 1000 A, or leave it out"`,
    );
    expect(await foundIn(equipped({ stove: ', heats in: a while' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:16:37 error not-understood "a while" does not start with a number — write the number first, such as 2 or 1 1/2"`,
    );
    expect(await foundIn(equipped({ stove: ', travels: maybe' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:16:36 error unknown-word “travels” can’t be “maybe” — write one of yes, no"`,
    );
    expect(await foundIn(equipped({ server: ', cooks: often' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:11:127 error unknown-word “cooks” can’t be “often” — write one of yes, no"`,
    );
  });
});

describe('vehicles: what check says', () => {
  const driving = (vehicles: string) =>
    contentWith(changed(KITCHEN, 'add-ons:', `vehicles:\n  van: ${vehicles}\nadd-ons:`));

  test('nothing of a name, nor of how many there are', async () => {
    const dir = driving('{ name: Box van, count: 2 }');
    expect(await foundIn(dir)).toBe('');
    expect((await readBook(dir)).book!.kitchen.vehicles).toEqual(
      new Map([['van', { id: 'van', name: 'Box van', count: 2 }]]),
    );
    const { vehicles } = (await readBook(driving('Box van'))).book!.kitchen;
    expect(vehicles!.get('van')).toMatchObject({ count: 1 });
    expect((await readBook(contentWith())).book!.kitchen).not.toHaveProperty('vehicles');
  });

  test('a proposal that asks for one there is not, with the nearest name', async () => {
    const asking = (vehicle: string) =>
      contentWith({
        ...changed(KITCHEN, 'add-ons:', 'vehicles:\n  box-van: Box van\nadd-ons:'),
        ...changed(PROPOSAL, 'packages:', `vehicle: ${vehicle}\npackages:`),
      });
    expect(await foundIn(asking('box-van'))).toBe('');
    expect(await foundIn(asking('bx-van'))).toMatch(
      /error unknown-id no vehicle is called “bx-van” — did you mean box-van\?/,
    );
    // An event that asks for it has it, with how many there are.
    const { proposals } = (await readBook(asking('box-van'))).book!;
    expect([...proposals.values()].map(({ vehicle }) => vehicle)).toContainEqual({
      id: 'box-van',
      name: 'Box van',
      count: 1,
    });
  });

  test('a number that is none', async () => {
    expect(await foundIn(driving('{ name: Box van, count: a few }'))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:16:32 error not-understood “a few” does not fit here — write a whole number from 1 to 1000"`,
    );
  });
});

describe('what people can do: what check says', () => {
  const skilled = (skills: string, needs: string, cooks = '') =>
    contentWith({
      ...changed(KITCHEN, 'stations:', `crew: { people: 3, hours: 8 hours, skills: ${skills} }\nstations:`),
      ...changed('recipes/lentil-soup.mdx', 'station: stove', `station: stove\n    skill: ${needs}`),
      ...(cooks && changed(PROPOSAL, 'packages: supper', `packages: supper\ncooks: ${cooks}`)),
    });

  test('nothing of skills that the crew has and steps that take them', async () => {
    const dir = skilled('{ pastry: 1, grill: 3 }', 'pastry', '{ people: 2, hours: 6 hours }');
    expect(await foundIn(dir)).toBe('');
    const { kitchen, recipes, proposals } = (await readBook(dir)).book!;
    expect(kitchen.crew!.skills).toEqual(
      new Map([
        ['pastry', 1],
        ['grill', 3],
      ]),
    );
    expect(recipes.get('lentil-soup')!.steps[0]).toMatchObject({ skill: 'pastry' });
    // Two of the three come: as many as there are have the skill.
    expect(proposals.get('gale')!.cooks!.skills).toEqual(
      new Map([
        ['pastry', 1],
        ['grill', 2],
      ]),
    );
  });

  test('an old kitchen has none', async () => {
    const { kitchen, recipes } = (
      await readBook(
        contentWith(changed(KITCHEN, 'stations:', 'crew: { people: 3, hours: 8 hours }\nstations:')),
      )
    ).book!;
    expect(kitchen.crew).not.toHaveProperty('skills');
    expect(recipes.get('lentil-soup')!.steps[0]).not.toHaveProperty('skill');
  });

  test('a skill that nobody has, with the nearest name, and more people with one than there are', async () => {
    expect(await foundIn(skilled('{ pastry: 1 }', 'pasty'))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:9:12 error unknown-id no skill is called “pasty” — did you mean pastry?"`,
    );
    expect(
      await foundIn(
        contentWith(changed('recipes/lentil-soup.mdx', 'station: stove', 'station: stove\n    skill: grill')),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:9:12 error unknown-id no skill is called “grill” — there is no skill yet; add one, or leave this out"`,
    );
    expect(await foundIn(skilled('{ pastry: 4 }', 'pastry'))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:8:54 error not-understood “4” does not fit here — write a whole number from 0 to 3"`,
    );
    expect(
      await foundIn(
        skilled('{ pastry: 1 }', 'pastry', '{ people: 2, hours: 6 hours, skills: { pastri: 1 } }'),
      ),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:11:47 error unknown-id no skill is called “pastri” — did you mean pastry?"`,
    );
  });
});

/** The small kitchen whose proposal says more. */
const proposing = (more: string) =>
  contentWith(changed(PROPOSAL, 'packages: supper', `packages: supper\n${more}`));

describe('who cooks and what the venue has: what check says', () => {
  test('nothing of cooks by the day and of facts that are understood', async () => {
    const dir = proposing(
      'cooks: { people: 3, from: 5:00 am, hours: 9 hours }\nvenue: { name: The Barn, ovens: two, burners: none, power: 2 × 20 A, water: "yes, one tap", cold space: no, Cover: yes, stairs: nine }',
    );
    expect(await foundIn(dir)).toBe('');
    const proposal = (await readBook(dir)).book!.proposals.get('gale')!;
    expect(proposal.cooks).toEqual({ people: 3, from: '05:00', each: 540 });
    expect(proposal.venueKit).toEqual({
      ovens: 2,
      burners: 0,
      circuits: [{ count: 2, amperes: 20 }],
      water: true,
      coldSpace: false,
      cover: true,
      stairs: true,
    });
  });

  test('a proposal that says none of it has none of it', async () => {
    const proposal = (await readBook(proposing('venue: The Barn'))).book!.proposals.get('gale')!;
    expect(proposal).not.toHaveProperty('cooks');
    expect(proposal).not.toHaveProperty('venueKit');
  });

  test('the pay of an event’s cooks is the crew’s', async () => {
    const crew = 'crew: { people: 2, hours: 8 hours, pay: 21.00 per hour }\nstations:';
    const dir = contentWith({
      ...changed(KITCHEN, 'stations:', crew),
      ...changed(PROPOSAL, 'packages: supper', 'packages: supper\ncooks: { people: 1, hours: 5 hours }'),
    });
    const proposal = (await readBook(dir)).book!.proposals.get('gale')!;
    expect(proposal.cooks).toEqual({ people: 1, each: 300, from: undefined, pay: '21.00' });
  });

  test('cooks that are none', async () => {
    expect(
      await foundIn(proposing('cooks: { people: many, from: dawn, hours: all day }')),
    ).toMatchInlineSnapshot(`
      "content/proposals/gale.md:11:18 error not-understood “many” does not fit here — write a whole number from 1 to 500
      content/proposals/gale.md:11:30 error not-understood “dawn” is not a time of day — write it such as 5:30 pm or 17:30
      content/proposals/gale.md:11:43 error not-understood "all day" does not start with a number — write hours such as "6 hours" or "5½ hours""
    `);
    expect(await foundIn(proposing('cooks: { people: 3 }'))).toMatchInlineSnapshot(
      `"content/proposals/gale.md:11:1 error missing-field “hours” is missing — write it, such as “hours: 8 hours” (how long each of them works)"`,
    );
  });

  test('facts of the venue that could be understood and are not: a note, and they stay as written', async () => {
    const dir = proposing(
      'venue: { name: The Barn, ovens: in the hall, burners: some, power: plenty, water: standpipe, cold space: cellar, cover: half }',
    );
    expect(await foundIn(dir)).toMatchInlineSnapshot(`
      "content/proposals/gale.md:11:33 note venue-not-understood “ovens: in the hall” does not tell how many there are, so it counts as not stated — write a number first, such as “2 convection”, or “none”
      content/proposals/gale.md:11:55 note venue-not-understood “burners: some” does not tell how many there are, so it counts as not stated — write a number first, such as “2 convection”, or “none”
      content/proposals/gale.md:11:68 note venue-not-understood “power: plenty” does not tell the circuits in amperes, so it counts as not stated — write how many and of how much, such as “two 20 A circuits”, or “none”
      content/proposals/gale.md:11:83 note venue-not-understood “water: standpipe” is neither a yes nor a no, so it counts as not stated — begin with yes or no, such as “yes, one cold tap”
      content/proposals/gale.md:11:106 note venue-not-understood “cold space: cellar” is neither a yes nor a no, so it counts as not stated — begin with yes or no, such as “yes, one cold tap”
      content/proposals/gale.md:11:121 note venue-not-understood “cover: half” is neither a yes nor a no, so it counts as not stated — begin with yes or no, such as “yes, one cold tap”"
    `);
    expect((await readBook(dir)).book!.proposals.get('gale')!.venue.get('power')).toBe('plenty');
  });
});

describe('when courses are served: what check says', () => {
  const timed = (words: string) =>
    contentWith(changed('packages/supper.mdx', '  - name: All of it\n', `  - name: All of it\n${words}`));

  test('nothing of times that it can read', async () => {
    const dir = timed('    begins: 45 min after\n    lasts: 30 min\n');
    expect(await foundIn(dir)).toBe('');
    const [course] = (await readBook(dir)).book!.packages.get('supper')!.courses;
    expect(course!.time).toEqual({ after: 45, lasts: 30 });
    const [bare] = (await readBook(contentWith())).book!.packages.get('supper')!.courses;
    expect(bare).not.toHaveProperty('time');
  });

  test('times that are none', async () => {
    expect(await foundIn(timed('    begins: after the toast\n    lasts: long\n'))).toMatchInlineSnapshot(`
      "content/packages/supper.mdx:9:13 error not-understood “after the toast” is not a time after serving starts — write it such as 45 min after
      content/packages/supper.mdx:10:12 error not-understood "long" does not start with a number — write the number first, such as 2 or 1 1/2"
    `);
  });
});
