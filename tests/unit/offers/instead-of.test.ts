import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { planLabels } from '../../../src/exports/plan/labels.ts';
import { takeAcceptance } from '../../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { eventInputOf } from '../../../src/offers/event/input-of.ts';
import { nextOffer } from '../../../src/offers/issue/issue.ts';
import { offerSchema } from '../../../src/schema/offer.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import { changed, contentWith } from '../../findings/small-content.ts';
import { must } from '../plan/builders.ts';

const TODAY = '2027-04-26' as Day;
const NEEDS = changed(
  'proposals/gale.md',
  'packages: supper',
  'packages: supper\nneeds: { vegan: 3, sesame: 1 }',
);

/** The small kitchen with its two dishes written so, an offer of it issued and accepted. */
async function accepted(soup: string, plate: string, kitchen = '') {
  const dir = contentWith({
    ...NEEDS,
    ...changed('kitchen.yaml', 'places:', `${kitchen}places:`),
    ...changed(
      'packages/supper.mdx',
      '      lentil-soup: 8 fl oz per guest\n      cheese-plate: 1 serving per guest',
      `      lentil-soup: { amount: 8 fl oz per guest${soup} }\n      cheese-plate: { amount: 1 serving per guest${plate} }`,
    ),
  });
  const { book } = await readBook(dir);
  const issued = nextOffer(book!, book!.proposals.get('gale')!, TODAY);
  if (!issued.ok) throw new Error(issued.what);
  const offer = offerSchema.parse(JSON.parse(JSON.stringify(issued.value)));
  const offered = { ...book!, offers: new Map([['gale', [offer]]]) };
  const signature = { name: 'T', email: 't@gale.example', note: '', accepted: TODAY };
  const fact = must(
    takeAcceptance(offered, JSON.stringify(makeAcceptance(offer, offer.proposed, signature)), TODAY),
  );
  const events = new Map([['gale', { id: 'gale', facts: [fact] }]]);
  const input = eventInputOf({ ...offered, events }, 'gale');
  if (!input.ok) throw new Error(input.what);
  return { offer, offered, plan: planEvent(input.value, book!.kitchen, book!.prices) };
}

const counted = ({ plan }: Awaited<ReturnType<typeof accepted>>) =>
  plan.dishes.map(({ dish, counted: guests }) => [dish.recipe.id, guests.toFraction()]);

describe('a dish offered in place of another', () => {
  test('is frozen, read on the page, taken off the other and labelled by name', async () => {
    const made = await accepted(', instead of: cheese-plate, for: vegan', ', role: main');
    const [soup, plate] = made.offer.terms.packages[0]!.courses[0]!.dishes;
    expect(soup?.insteadOf).toEqual({ recipe: 'cheese-plate', needs: ['vegan'] });
    expect([soup?.role, plate?.role]).toEqual([undefined, 'main']);
    // 40 adults and 2 vendors; 3 vegans.
    expect(counted(made)).toEqual([
      ['lentil-soup', '3'],
      ['cheese-plate', '39'],
    ]);
    // What takes the place of a main is one.
    expect(made.plan.coverage[0]?.courses[0]).toMatchObject({
      fed: true,
      roles: [{ role: 'main', dishes: ['Lentil soup'] }],
    });
    const labels = planLabels(
      made.plan,
      { containers: new Map(), measures: 'us', allergenLaws: ['us'], locale: 'en-US' },
      [],
    );
    expect(labels.find(({ dish }) => dish === 'Lentil soup')?.guests).toBe('For 3 × vegan');
    const [page] = clientSite(made.offered, TODAY).pages;
    const dishes = (page!.view as ProposalView).packages[0]!.courses[0]!.dishes;
    expect(dishes.map(({ perGuest, role }) => [perGuest, role])).toEqual([
      ['8 fl oz per guest, instead of Cheese plate for vegan', 'main'],
      ['1 serving per guest', 'main'],
    ]);
  });

  test('is in no offer where it is not written, and a role nobody states is not frozen', async () => {
    const { offer } = await accepted('', '');
    for (const dish of offer.terms.packages[0]!.courses[0]!.dishes) {
      expect(dish).not.toHaveProperty('insteadOf');
      expect(dish).not.toHaveProperty('role');
    }
  });
});

test('a kitchen cooks for those who can eat a dish where it says so, and a dish wins over it', async () => {
  const all = 'cooked for: those who can eat it\n';
  expect(counted(await accepted('', ''))).toEqual([
    ['lentil-soup', '42'],
    ['cheese-plate', '42'],
  ]);
  // The three vegans cannot eat the plate; the guest with the sesame allergy can.
  expect(counted(await accepted('', '', all))[1]).toEqual(['cheese-plate', '39']);
  expect(counted(await accepted('', ', cooked for: everybody', all))[1]).toEqual(['cheese-plate', '42']);
  expect(counted(await accepted('', ', cooked for: those who can eat it'))[1]).toEqual([
    'cheese-plate',
    '39',
  ]);
});
