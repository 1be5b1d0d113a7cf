import { beforeAll, describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import type { Proposal } from '../../../src/engine/menu/proposal.ts';
import { bodyKey } from '../../../src/offers/issue/body-key.ts';
import { currentTerms } from '../../../src/offers/issue/current-terms.ts';
import { nextOffer } from '../../../src/offers/issue/issue.ts';
import { notices } from '../../../src/offers/issue/notices.ts';
import { offerContent } from '../../../src/offers/issue/offer-content.ts';
import { offeredDishes } from '../../../src/offers/issue/offered-dishes.ts';
import { newLink, proposalText } from '../../../src/offers/issue/proposal-text.ts';
import { unknownAllergens } from '../../../src/offers/issue/unknown-allergens.ts';
import { food, line, recipe } from '../plan/builders.ts';
import { day, EVENING, eveningOf, ISSUED, issued, must, offerOf, secondKitchen } from './second-kitchen.ts';

let book: Book;
let evening: Proposal;
beforeAll(async () => {
  book = await secondKitchen();
  evening = eveningOf(book);
});

const refused = (read: { ok: boolean; what?: string; wayOut?: string } | undefined) =>
  read === undefined || read.ok ? undefined : [read.what, read.wayOut];

describe('a dish whose food has allergens that nobody knows', () => {
  const mystery = food('mystery-sauce', { contains: undefined });
  const glaze = recipe('glaze', '1 qt', [line(mystery, '1 cup')]);
  const dishes = (...of: ReturnType<typeof recipe>[]) => of.map((each) => ({ recipe: each }));

  test('is no obstacle where all of it is known, none included', () => {
    expect(unknownAllergens(dishes(recipe('rice', '1 lb', [line(food('grain'), '1 lb')])))).toBeUndefined();
  });

  test('is not promised: each such food is named once, in order, with every dish that holds it, parts included', () => {
    const ribs = recipe('ribs', '1 lb', [
      line(glaze, '1 cup'),
      line(food('spice', { contains: undefined }), '1 oz'),
    ]);
    const wings = recipe('wings', '1 lb', [line(mystery, '1 cup')]);
    expect(refused(unknownAllergens(dishes(ribs, wings)))).toEqual([
      'the allergens are not stated for mystery-sauce (in ribs, wings); spice (in ribs)',
      'fill in `contains` for each, with `none` where there are none',
    ]);
    expect(refused(unknownAllergens(dishes(wings, ribs)))?.[0]).toContain(
      'mystery-sauce (in wings, ribs); spice',
    );
    const dust = recipe('dust', '1 lb', [line(food('spice', { contains: undefined }), '1 oz')]);
    expect(refused(unknownAllergens(dishes(dust, wings)))?.[0]).toContain(
      'mystery-sauce (in wings); spice (in dust)',
    );
  });

  test('is not promised either where it comes from an allergen that its list leaves out', () => {
    const stock = food('stock', { from: ['fish', 'mollusc'], contains: [] });
    const soup = recipe('soup', '1 qt', [line(stock, '1 qt')]);
    expect(refused(unknownAllergens(dishes(soup)))).toEqual([
      'stock (in soup) comes from fish, but its `contains` does not list it; stock (in soup) comes from mollusc, but its `contains` does not list it',
      'read the label and list in `contains` every allergen that `from` names',
    ]);
    const both = recipe('stew', '1 qt', [line(stock, '1 qt'), line(mystery, '1 cup')]);
    expect(refused(unknownAllergens(dishes(both)))?.map((text) => text?.split('; ').length)).toEqual([3, 2]);
  });

  test('keeps an offer from being issued, also as food of an add-on or of a menu beside the first', () => {
    const unknown = recipe('dip', '1 qt', [line(mystery, '1 cup')]);
    const [first, ...others] = evening.packages;
    const [table] = book.kitchen.addOns.values();
    const dish = first?.courses[0]?.dishes[0];
    if (!first || !table || !dish) throw new Error('the evening has a menu, and the kitchen a tea table');
    const addOns = new Map([[table.id, { ...table, dishes: [{ ...dish, recipe: unknown }] }]]);
    const dearer: Book = { ...book, kitchen: { ...book.kitchen, addOns } };
    expect(refused(nextOffer(dearer, evening, ISSUED))?.[0]).toBe(
      'the allergens are not stated for mystery-sauce (in dip)',
    );
    // Not offered, it is in nobody's way; included, it is served.
    expect(nextOffer(dearer, { ...evening, addOns: [] }, ISSUED).ok).toBe(true);
    const included = { ...evening, addOns: [], included: new Map([[table.id, 1]]) };
    expect(refused(nextOffer(dearer, included, ISSUED))).toBeDefined();
    const [second] = others;
    if (!second) throw new Error('the evening has two menus');
    const courses = [{ ...second.courses[0]!, dishes: [{ ...dish, recipe: unknown }] }];
    const packages = [first, { ...second, courses }] as const;
    expect(refused(nextOffer(book, { ...evening, packages }, ISSUED))?.[0]).toContain('mystery-sauce');
  });
});

describe('the next offer', () => {
  const why = (of: Book, proposal: Proposal, today = ISSUED) => refused(nextOffer(of, proposal, today));

  test('is the first revision, then the next, each with a digest of its own', () => {
    const first = offerOf(book);
    expect([first.revision, first.issued]).toEqual([1, ISSUED]);
    const edited = { ...evening, letter: `${evening.letter} Bring a coat.` };
    const second = must(nextOffer(issued(book), edited, day('2027-04-30')));
    expect([second.revision, second.issued]).toEqual([2, '2027-04-30']);
    expect(second.digest).not.toBe(first.digest);
  });

  test('is refused where nothing has changed, on whatever day', () => {
    expect(why(issued(book), evening, day('2027-05-02'))).toEqual([
      `nothing has changed in ${EVENING} since revision 1`,
      'the current offer stays valid; change the proposal, a package or a price first',
    ]);
  });

  test('is refused for a proposal that is withdrawn or accepted', () => {
    expect(why(book, { ...evening, withdrawn: true })?.[0]).toBe(`${EVENING} is withdrawn`);
    const events = new Map([[EVENING, { id: EVENING, facts: [] }]]);
    expect(why({ ...book, events }, evening)?.[0]).toBe(`${EVENING} has been accepted already`);
  });

  test('is refused after its last day, and from the day of its event on', () => {
    expect(why(book, evening, day('2027-05-10'))).toBeUndefined();
    expect(why(book, evening, day('2027-05-11'))?.[0]).toBe(
      `${EVENING} is valid only until 2027-05-10, and today is 2027-05-11`,
    );
    const late = { ...evening, validUntil: day('2027-06-30') };
    expect(why(book, late, day('2027-05-20'))).toBeUndefined();
    expect(why(book, late, day('2027-05-21'))?.[0]).toBe(
      `the event of ${EVENING} is on 2027-05-21, which is not in the future`,
    );
  });

  test('is refused while an earlier one of the same proposal can’t be read', () => {
    const held = (item: string): Book => ({ ...book, held: new Map([[item, 'it is torn']]) });
    expect(why(held(`offer/${EVENING}-r12`), evening)).toEqual([
      `${EVENING}-r12 can’t be used: it is torn`,
      'restore the file under offers as `issue` wrote it; `check` shows its place',
    ]);
    for (const other of [`offer/${EVENING}-two-r1`, `proposal/${EVENING}-r1`, `event/offer/${EVENING}-r1`])
      expect(why(held(other), evening), other).toBeUndefined();
  });
});

describe('the terms that a proposal stands by', () => {
  test('are those of its newest offer, else those it would be issued with, with a choice of each menu', () => {
    const draft = must(currentTerms(book, EVENING));
    expect(draft.offer).toBeNull();
    expect(draft.choices.map((choice) => choice.package)).toEqual(['chowder-lunch', 'storm-supper']);
    // As proposed, and not at one of the counts that are compared.
    expect(draft.choices.map(({ guests }) => guests)).toEqual([evening.guests, evening.guests]);
    const first = offerOf(book);
    const second = { ...first, revision: 2 };
    const two: Book = { ...book, offers: new Map([[EVENING, [first, second]]]) };
    const standing = must(currentTerms(two, EVENING));
    expect(standing.offer).toBe(second);
    expect(standing.terms).toBe(second.terms);
    expect(standing.choices).toEqual(draft.choices);
  });

  test('are refused, with what to do, where they are held back or nobody knows the proposal', () => {
    const held = (item: string): Book => ({
      ...book,
      proposals: new Map(),
      held: new Map([[item, 'it is torn']]),
    });
    expect(refused(currentTerms(held(`offer/${EVENING}-r1`), EVENING))?.[0]).toBe(
      `${EVENING}-r1 can’t be used: it is torn`,
    );
    expect(refused(currentTerms(held(`proposal/${EVENING}`), EVENING))).toEqual([
      `the proposal ${EVENING} can’t be used: it is torn`,
      'fix what `check` reports about it',
    ]);
    expect(refused(currentTerms(book, 'lifeboat-evenin'))).toEqual([
      'there is no proposal lifeboat-evenin',
      `did you mean ${EVENING}?`,
    ]);
    expect(refused(currentTerms(book, 'wedding'))?.[1]).toBe('write one with `new`');
  });

  test('name the dish that is raw, once, as the Food Code’s disclosure asks, and nothing where none is', () => {
    const raw = recipe('tartare', '1 lb', [], { name: 'Beef tartare', containsRaw: true });
    const done = recipe('roast', '1 lb', []);
    expect(notices([{ recipe: done }], 'en-US')).toEqual([]);
    const [notice, ...more] = notices([{ recipe: raw }, { recipe: done }, { recipe: raw }], 'en-US');
    expect(more).toEqual([]);
    expect(notice?.split('Beef tartare')).toHaveLength(2);
    expect(notice).not.toContain('roast');
  });

  test('have the least that a menu asks for, how long it is served, and every add-on that goes with it', () => {
    const [lunch, supper] = offerOf(book).terms.packages;
    expect(lunch).not.toHaveProperty('minimumSpend');
    expect(supper?.minimumSpend).toEqual({ amount: '150.00', base: ['food'], class: 'food' });
    expect([lunch?.hours, supper?.hours]).toEqual([
      expect.stringContaining('2'),
      expect.stringContaining('3'),
    ]);
    expect([lunch?.addOns, supper?.addOns]).toEqual([['tea-table'], ['tea-table']]);
    expect(offerOf(book).terms.addOns).toMatchObject([
      { id: 'tea-table', name: 'Tea table', class: 'drink', price: '3.20' },
    ]);
  });

  test('say who counts for an amount per guest only where that is not everybody at the table', () => {
    const counting = (counts: Book['kitchen']['counts']) => {
      const of = { ...book, kitchen: { ...book.kitchen, counts } };
      return must(offerContent(of, evening)).terms;
    };
    expect(counting({ adults: '1', children: '1' })).not.toHaveProperty('perGuest');
    expect(counting({ adults: '1', children: '1/2' }).perGuest).toEqual({ adults: '1', children: '1/2' });
  });
});

describe('what an offer says beside its terms', () => {
  const content = (change: Partial<Book>, proposal: Partial<Proposal> = {}) =>
    must(offerContent({ ...book, ...change }, { ...evening, ...proposal }));

  test('is the story of each menu that has one, trimmed', () => {
    expect(content({}).stories['chowder-lunch']).toBe(
      'A bowl, a slice and a spoon, with the windows steamed up.',
    );
    const bodies = new Map([
      ['chowder-lunch', '\n  \n'],
      ['storm-supper', '\nFor a night in.\n'],
    ]);
    expect(content({ packageBodies: bodies }).stories).toEqual({ 'storm-supper': 'For a night in.' });
    expect(content({ packageBodies: new Map() }).stories).toEqual({});
  });

  test('is what it does not include, and the client’s address, where there are any', () => {
    expect(content({})).not.toHaveProperty('notIncluded');
    expect(content({}, { notIncluded: ['Chairs'] }).notIncluded).toEqual(['Chairs']);
    expect(content({}).client).toEqual({ name: 'Dunmarrow Lifeboat Crew', email: 'crew@lifeboat.example' });
    const { email: _, ...client } = evening.client;
    expect(content({}, { client: { ...client, email: undefined } as never }).client).toEqual({
      name: client.name,
    });
  });

  test('is what the kitchen tells of price steps and tests of gluten, where it does', () => {
    const said = (change: object) => content({ kitchen: { ...book.kitchen, ...change } }).kitchen;
    expect(said({ tellPriceSteps: false, glutenTested: undefined })).not.toHaveProperty('tellPriceSteps');
    expect(said({ tellPriceSteps: true, glutenTested: 'yes' })).toMatchObject({
      tellPriceSteps: true,
      glutenTested: 'yes',
    });
    expect(said({ glutenTested: undefined })).not.toHaveProperty('glutenTested');
  });

  test('is the choice of add-ons that go with the menu, and no others', () => {
    const [first] = evening.packages;
    if (!first) throw new Error('the evening has a menu');
    const taken = (addOns: readonly string[] | null) =>
      content({}, { packages: [{ ...first, addOns } as never], included: new Map([['tea-table', 1]]) })
        .proposed.addOns;
    expect([taken(null), taken(['tea-table']), taken([])]).toEqual([
      { 'tea-table': 1 },
      { 'tea-table': 1 },
      {},
    ]);
  });

  test('of dishes counts every one that may be eaten, an add-on that is offered and included once', () => {
    const [first] = evening.packages;
    const [table] = book.kitchen.addOns.values();
    const dish = first?.courses[0]?.dishes[0];
    if (!first || !table || !dish) throw new Error('the evening has a menu, and the kitchen a tea table');
    const kitchen = { addOns: new Map([[table.id, { ...table, dishes: [dish] }]]) };
    const menu = offeredDishes(kitchen, { packages: [first], addOns: [], included: new Map() });
    expect(menu.map(({ recipe: { id } }) => id)).toEqual([
      'haddock-chowder',
      'bean-and-leek-stew',
      'apple-oat-crumble',
    ]);
    const both = {
      packages: [first] as const,
      addOns: [table.id, 'gone'],
      included: new Map([[table.id, 1]]),
    };
    expect(offeredDishes(kitchen, both)).toEqual([...menu, dish]);
  });
});

describe('the name of a story’s compiled body', () => {
  test('is one for the same text however it is spaced around, another for another, and none for none', () => {
    expect(bodyKey('\nSoup.\n')).toBe(bodyKey('Soup.'));
    expect(bodyKey('Soup.')).toMatch(/^[0-9a-f]{24}$/);
    expect(bodyKey('Stew.')).not.toBe(bodyKey('Soup.'));
    expect(bodyKey(' \n ')).toBe('');
  });
});

describe('a new proposal', () => {
  const start = {
    client: 'Dove & Daughters *Ltd*',
    email: '',
    occasion: 'Spring lunch',
    date: '2027-05-21',
    serveAt: '12:30',
    place: 'dunmarrow',
    validUntil: '2027-05-10',
    adults: '020',
    children: '',
    packages: 'chowder-lunch',
  };

  test('has what is known, as it was typed, and leaves out what is not', () => {
    expect(proposalText(start, 'abc')).toBe(
      [
        '---',
        'link: abc',
        'client:',
        '  name: Dove & Daughters *Ltd*',
        'occasion: Spring lunch',
        'date: 2027-05-21',
        'serve at: 12:30',
        'place: dunmarrow',
        'valid until: 2027-05-10',
        'guests:',
        '  adults: 020',
        'packages: chowder-lunch',
        '---',
        'Dear Dove \\& Daughters \\*Ltd\\*,',
        '',
        'Thank you for asking us.',
        '',
      ].join('\n'),
    );
    const whole = proposalText({ ...start, email: 'dove@daughters.example', children: '3' }, 'abc');
    expect(whole).toContain('  email: dove@daughters.example\n');
    expect(whole).toContain('guests:\n  adults: 020\n  children: 3\n');
    const long =
      'A lunch for everybody who helped with the roof, the floor and the long walls of the old boathouse';
    expect(proposalText({ ...start, occasion: long }, 'abc')).toContain(`occasion: ${long}\n`);
  });

  test('has a link of its own that nobody guesses', () => {
    const links = Array.from({ length: 50 }, newLink);
    expect(new Set(links).size).toBe(50);
    for (const link of links) expect(link).toMatch(/^[a-z2-7]{26}$/);
  });
});
