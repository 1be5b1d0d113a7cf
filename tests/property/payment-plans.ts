import fc from 'fast-check';
import type { Instalment } from '../../src/engine/money/instalments.ts';

const due = fc.oneof(fc.constant('accepted' as const), fc.integer({ min: -60, max: 200 }));
const part = fc.oneof(
  fc.record({ of: fc.constant('rate' as const), rate: fc.integer({ min: 1, max: 400 }).map(tenths), due }),
  fc.record({
    of: fc.constant('amount' as const),
    amount: fc.integer({ min: 1, max: 500_000 }).map(cents),
    due,
  }),
);
const balance = fc.record({ of: fc.constant('balance' as const), due });

/** Any payment schedule: up to four instalments, with a balance anywhere or none. */
export const instalments: fc.Arbitrary<Instalment[]> = fc
  .tuple(fc.array(part, { maxLength: 4 }), fc.option(balance), fc.nat(4))
  .map(([parts, rest, at]) => (rest ? [...parts.slice(0, at), rest, ...parts.slice(at)] : parts));

function tenths(number: number): string {
  return `${Math.floor(number / 10)}.${number % 10} %`;
}

/** A number of cents as money text. */
export function cents(number: number): string {
  return `${Math.floor(number / 100)}.${String(number % 100).padStart(2, '0')}`;
}
