import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atTable, type Guests } from '../../../src/engine/quote/counts.ts';
import { billedGuests, floorCount } from '../../../src/offers/event/billed-guests.ts';
import { sampleGuests } from '../quote/sample-terms.ts';

const people = (text: string): Guests => {
  const [adults = 0, children = 0, vendors = 0, staff = 0] = text.split(' ').map(Number);
  return { adults, children, vendors, staff };
};
const words = ({ adults, children, vendors, staff }: Guests) => `${adults} ${children} ${vendors} ${staff}`;

test.each([
  ['90 %', 100, 90],
  ['90 %', 101, 91],
  ['92.5 %', 80, 74],
  ['33.33 %', 3, 1],
  ['0 %', 50, 0],
  ['100 %', 7, 7],
])('a floor of %s of %d guests is %d, up to a whole guest', (rate, guests, floor) => {
  expect(floorCount(rate, sampleGuests(guests))).toBe(floor);
  expect(floorCount(rate, sampleGuests(0, { children: guests, vendors: 40 }))).toBe(floor);
});

test.each([
  // guaranteed, served, accepted, floor, billed: adults, children, vendors, staff
  ['80 10 2 3', null, '80 10 2 3', 81, '80 10 2 3'],
  ['80 10 2 3', '70 10 2 3', '80 10 2 3', 81, '80 10 2 3'],
  ['80 10 2 3', '84 10 1 5', '80 10 2 3', 81, '84 10 2 5'],
  // More children and fewer adults than guaranteed: who is missing is a child.
  ['80 10 0 0', '76 16 0 0', '80 10 0 0', 81, '80 12 0 0'],
  // More adults, fewer children: as many adults as came, the rest of the guarantee as children.
  ['80 10 0 0', '86 2 0 0', '80 10 0 0', 81, '86 4 0 0'],
  // Under the floor: children up to those accepted, then adults.
  ['60 0 0 0', null, '80 10 0 0', 81, '71 10 0 0'],
  ['60 4 0 0', '50 0 0 0', '80 10 0 0', 81, '71 10 0 0'],
  ['60 0 0 0', null, '90 0 0 0', 81, '81 0 0 0'],
  ['60 20 0 0', null, '90 0 0 0', 90, '70 20 0 0'],
])('of %s guaranteed and %s served, %s accepted with a floor of %d, %s are billed', (...row) => {
  const [guaranteed, served, accepted, floor, billed] = row;
  expect(
    words(billedGuests(people(guaranteed), served === null ? null : people(served), people(accepted), floor)),
  ).toBe(billed);
});

test('of all ways to fill the count that fit the contract, the one with the fewest adults is billed', () => {
  const some = fc.record({ adults: fc.nat(12), children: fc.nat(6), vendors: fc.nat(3), staff: fc.nat(3) });
  fc.assert(
    fc.property(some, fc.option(some), some, fc.nat(25), (guaranteed, served, accepted, floor) => {
      const all = served ? [guaranteed, served] : [guaranteed];
      const table = Math.max(floor, ...all.map(atTable));
      const leastAdults = Math.max(...all.map(({ adults }) => adults));
      const mostChildren = Math.max(accepted.children, ...all.map(({ children }) => children));
      // Every way, from the most children down: the first that has the adults who came or were guaranteed.
      let children = table;
      while (children > mostChildren || table - children < leastAdults) children -= 1;
      expect(billedGuests(guaranteed, served, accepted, floor)).toEqual({
        adults: table - children,
        children,
        vendors: Math.max(...all.map(({ vendors }) => vendors)),
        staff: Math.max(...all.map(({ staff }) => staff)),
      });
    }),
  );
});
