import type { Day } from '../../../src/engine/calendar/day.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { DEFAULT_COUNTS, type Guests } from '../../../src/engine/quote/counts.ts';
import type {
  AddOnTerms,
  CourseTerms,
  DishTerms,
  PackageTerms,
  StaffTerms,
  Terms,
} from '../../../src/engine/quote/terms.ts';

/** Terms with one buffet at 46.00, 42.50 from 50 guests and 39.00 from 100, and nothing else, for tests to vary. */
export function sampleTerms(change: Partial<Terms> = {}): Terms {
  return {
    version: 1,
    currency: 'USD',
    locale: 'en-US',
    taxBy: 'invoice',
    place: {
      id: 'maren-falls',
      name: 'Maren Falls',
      taxIncluded: false,
      tax: {
        food: '7 %',
        drink: '7 %',
        'service charge': '7 %',
        rental: '6 %',
        labour: '0 %',
        delivery: '0 %',
      },
    },
    exempt: false,
    eventDate: '2027-05-15' as Day,
    packages: [samplePackage()],
    addOns: [],
    staff: [],
    delivery: null,
    discount: null,
    serviceCharge: null,
    minimumSpend: null,
    payments: [
      { of: 'rate', rate: '30 %', due: 'accepted' },
      { of: 'balance', due: 7 },
    ],
    guarantee: { daysBefore: 7, floorRate: '90 %' },
    ...change,
  };
}

export function samplePackage(change: Partial<PackageTerms> = {}): PackageTerms {
  return {
    id: 'harvest',
    name: 'Harvest table',
    style: 'buffet',
    tiers: [
      { from: 1, to: 49, perHead: '46.00' },
      { from: 50, to: 99, perHead: '42.50' },
      { from: 100, to: null, perHead: '39.00' },
    ],
    neverLessInAll: false,
    tierCounts: DEFAULT_COUNTS,
    child: { rate: '50 %' },
    vendor: { price: '24.00' },
    minimumGuests: 0,
    courses: [],
    ...change,
  };
}

export function sampleCourse(change: Partial<CourseTerms> = {}): CourseTerms {
  const dishes = ['squash', 'hake', 'lamb'].map((recipe) => sampleDish({ recipe, name: recipe }));
  return { name: 'Mains', choose: 2, eachGuest: false, dishes, ...change };
}

export function sampleDish(change: Partial<DishTerms> = {}): DishTerms {
  return {
    recipe: 'squash',
    name: 'Roast squash',
    perGuest: '1 piece per guest',
    counts: DEFAULT_COUNTS,
    marks: [],
    contains: [],
    mayContain: [],
    ...change,
  };
}

export function sampleAddOn(change: Partial<AddOnTerms> = {}): AddOnTerms {
  return {
    id: 'espresso',
    name: 'Espresso cart',
    class: 'drink',
    price: '6.50',
    per: 'guest',
    counts: { adults: '1' },
    ...change,
  };
}

export function sampleStaff(change: Partial<StaffTerms> = {}): StaffTerms {
  return {
    role: 'server',
    name: 'Servers',
    rate: '38.00',
    hours: '5.5',
    one: 1,
    per: 25,
    counts: DEFAULT_COUNTS,
    atLeast: 2,
    ...change,
  };
}

export function sampleGuests(adults: number, change: Partial<Guests> = {}): Guests {
  return { adults, children: 0, vendors: 0, staff: 0, ...change };
}

export function sampleChoice(guests: Guests, change: Partial<Choice> = {}): Choice {
  return { package: 'harvest', guests, courses: {}, mains: {}, addOns: {}, needs: {}, ...change };
}
