import type { Day } from '../../../src/engine/calendar/day.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import type { Terms } from '../../../src/engine/quote/terms.ts';
import type { ClientTerms } from '../../../src/views/client/terms.ts';
import {
  sampleAddOn,
  sampleChoice,
  sampleCourse,
  sampleDish,
  sampleGuests,
  samplePackage,
  sampleTerms,
} from '../quote/sample-terms.ts';

/** The plated menu beside the sample buffet: two mains of which each guest takes one. */
export const plated = samplePackage({
  id: 'plated',
  name: 'Plated supper',
  style: 'plated',
  tiers: [{ from: 1, to: null, perHead: '41.00' }],
  courses: [
    {
      name: 'Main',
      choose: null,
      eachGuest: true,
      dishes: [
        sampleDish({ recipe: 'lamb', name: 'Lamb' }),
        sampleDish({ recipe: 'hake', name: 'Hake', marks: ['pescatarian'] }),
      ],
    },
    {
      name: 'After',
      choose: null,
      eachGuest: false,
      dishes: [sampleDish({ recipe: 'torte', name: 'Torte' })],
    },
  ],
});

/** Two menus, add-ons of each kind, and an offer of the first for 60 adults and 4 children. */
export function clientData(change: Partial<ClientTerms> = {}, terms: Partial<Terms> = {}): ClientTerms {
  const all = sampleTerms({
    packages: [samplePackage({ courses: [sampleCourse()] }), plated],
    addOns: [
      sampleAddOn(),
      sampleAddOn({ id: 'hour', name: 'Extra hour', per: 'hour', price: '240.00', class: 'labour' }),
    ],
    ...terms,
  });
  const guests = sampleGuests(60, { children: 4, vendors: 2, staff: 3 });
  const choices: Choice[] = [
    sampleChoice(guests, { courses: { Mains: ['squash', 'hake'] } }),
    sampleChoice(guests, { package: 'plated', mains: { Main: { lamb: 40, hake: 24 } } }),
  ];
  return {
    version: 1,
    state: 'offered',
    proposal: 'harbour-party',
    occasion: 'Harbour party',
    revision: 2,
    digest: 'ab'.repeat(32),
    issued: '2027-03-01' as Day,
    validUntil: '2027-05-01' as Day,
    kitchen: { name: 'Lantern Kitchen', email: 'cook@lantern.example', timeZone: 'America/New_York' },
    answers: { by: 'download' },
    terms: all,
    staff: 3,
    proposed: guests,
    choices,
    needs: [
      { name: 'vegan', label: 'vegan', suits: ['squash'] },
      { name: 'tree nuts', label: 'allergy: tree nuts', suits: null },
    ],
    tellPriceSteps: false,
    accepted: null,
    ...change,
  };
}
