import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { takeAcceptance } from '../../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { nextOffer } from '../../../src/offers/issue/issue.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { day, must } from '../offers/second-kitchen.ts';
import { NONE, plus, ratioFrom, textOf } from './ratio.ts';
import { type Amount, amountFrom, inUnit } from './second-amount.ts';
import { type SecondPlan, walkAgain } from './second-walk.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const TODAY = day('2027-01-04');

/** The plan of a proposal accepted with a choice, with as many crew meals as proposed or, where given, `staff`. */
async function planFor(
  book: Book,
  id: string,
  choice: (proposed: readonly Choice[]) => Choice,
  staff?: number,
) {
  const found = book.proposals.get(id)!;
  const guests = staff === undefined ? found.guests : { ...found.guests, staff };
  const proposal = { ...found, guests, withdrawn: false };
  const fresh = { ...book, offers: new Map(), events: new Map(), proposals: new Map([[id, proposal]]) };
  const offer = must(nextOffer(fresh, proposal, TODAY));
  const asked = { ...choice(offer.samples.map((sample) => sample.choice)), needs: { vegetarian: 0 } };
  const signature = { name: 'A', email: 'a@b.example', note: '', accepted: TODAY };
  const open = { ...fresh, offers: new Map([[id, [offer]]]) };
  const text = JSON.stringify(makeAcceptance(offer, asked, signature));
  const fact = must(takeAcceptance(open, text, TODAY, { dropNeeds: true }));
  const held = { ...open, events: new Map([[id, { id, facts: [fact] }]]) };
  return { choice: asked, plan: must(must(await plannedEvent(held, id, TODAY)).plan) };
}

/** A plan's figures beside the second walk's, line by line, each in the plan's own unit. */
function compare(plan: PrepPlanDocument, again: SecondPlan): void {
  const text = (amount: Amount, like: string, equals: Parameters<typeof inUnit>[2] = []) => {
    const { unit } = amountFrom(like);
    return `${textOf(inUnit(amount, unit, equals).size)} ${unit}`;
  };
  expect(plan.dishes.map(({ recipe, need, asMade }) => [recipe, need.exact, asMade.exact])).toEqual(
    again.dishes.map(({ recipe, need, asMade }, index) => [
      recipe,
      text(need, plan.dishes[index]!.need.exact),
      text(asMade, plan.dishes[index]!.asMade.exact),
    ]),
  );
  expect(plan.dishes.map(({ counted }) => textOf(ratioFrom(counted)))).toEqual(
    again.dishes.map(({ counted }) => textOf(counted)),
  );

  expect(plan.recipes.map(({ id }) => id).sort()).toEqual([...again.recipes.keys()].sort());
  for (const { id, need, makes, lines } of plan.recipes) {
    const walked = again.recipes.get(id)!;
    expect([id, need.exact, makes.exact]).toEqual([
      id,
      text(walked.need, need.exact),
      text(walked.makes, makes.exact),
    ]);
    expect([id, lines.map(({ amount }) => amount.exact)]).toEqual([
      id,
      walked.lines.map((line, index) => text(line, lines[index]!.amount.exact)),
    ]);
  }

  const toBuy = [...again.bought.keys()].filter((food) => !again.isTapWater(food));
  expect(
    plan.shopping
      .map(({ ingredient }) => ingredient)
      .filter((food) => !again.isTapWater(food))
      .sort(),
  ).toEqual(toBuy.sort());
  for (const { ingredient, need } of plan.shopping) {
    const { unit } = amountFrom(need.exact);
    const uses = again.bought
      .get(ingredient)!
      .map((use) => inUnit(use, unit, again.conversionsOf(ingredient)).size);
    expect([ingredient, need.exact]).toEqual([ingredient, `${textOf(uses.reduce(plus, NONE))} ${unit}`]);
  }
}

const KITCHENS: [string, string][] = [
  ['the demo kitchen', join(root, 'content')],
  ['the second kitchen', join(root, 'tests/fixtures/second-kitchen')],
];

describe.each(KITCHENS)('every plan of %s', (_, content) => {
  test('comes out the same on a second walk over the content files, figure by figure', async () => {
    const { book } = await readBook(content);
    let walked = 0;
    for (const { id, packages } of book!.proposals.values()) {
      for (const each of packages) {
        const { plan, choice } = await planFor(
          book!,
          id,
          (proposed) => proposed.find((one) => one.package === each.id)!,
        );
        compare(plan, walkAgain(content, choice, id));
        walked += plan.dishes.length;
      }
    }
    expect(walked).toBeGreaterThan(4);
  });
});

test('so do a plan with add-ons, and one for odd counts', async () => {
  const content = join(root, 'content');
  const { book } = await readBook(content);
  const wedding = await planFor(book!, 'farrowick-wedding', ([proposed]) => ({
    ...proposed!,
    addOns: { 'mussel-pot': 1 },
  }));
  expect(wedding.plan.dishes.some(({ recipe }) => recipe === 'mussels-in-cider')).toBe(true);
  compare(wedding.plan, walkAgain(content, wedding.choice));
  const guests = { adults: 71, children: 13, vendors: 3, staff: 7 };
  const odd = await planFor(
    book!,
    'farrowick-wedding',
    ([proposed]) => ({ ...proposed!, guests }),
    guests.staff,
  );
  compare(odd.plan, walkAgain(content, odd.choice));
});
