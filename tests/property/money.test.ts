import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addDays, type Day, daysBetween, parseDay } from '../../src/engine/calendar/day.ts';
import { allocate } from '../../src/engine/money/allocate.ts';
import { minorUnits } from '../../src/engine/money/currency.ts';
import { Decimal } from '../../src/engine/money/decimal.ts';
import { compare, exactMoneyText, type Money, money, moneyText, sum } from '../../src/engine/money/money.ts';
import { parseMoney } from '../../src/engine/money/parse-money.ts';
import { parseRate, rateText } from '../../src/engine/money/rate.ts';
import { scheduleFor } from '../../src/engine/money/schedule.ts';
import { taxOn } from '../../src/engine/money/tax.ts';
import { instalments } from './payment-plans.ts';

const currencies = fc.constantFrom('USD', 'EUR', 'JPY', 'KWD');
const sums = (currency: string, most = 10_000_000) =>
  fc.integer({ min: 0, max: most }).map((minor): Money => {
    return { amount: new Decimal(minor).div(new Decimal(10).pow(minorUnits(currency))), currency };
  });

it('reads any sum back from its text', () => {
  fc.assert(
    fc.property(
      currencies.chain((currency) => sums(currency)),
      (m) => {
        const again = parseMoney(moneyText(m), m.currency);
        expect(again.ok && compare(again.value, m)).toBe(0);
        expect(exactMoneyText(m)).toBe(moneyText(m));
      },
    ),
  );
});

it('reads no text in any way but as a sum or a way out', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.stringMatching(/^[-$€.,0-9eE_x ]{0,20}$/)),
      currencies,
      (text, currency) => {
        const read = parseMoney(text, currency);
        expect(read.ok ? /^\d+(\.\d+)?$/.test(moneyText(read.value)) : read.wayOut.length > 0).toBe(true);
      },
    ),
  );
});

it('reads any rate back from its text', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100_000_000 }), (parts) => {
      const rate = new Decimal(parts).div(10_000_000);
      const again = parseRate(rateText(rate));
      expect(again.ok && again.value.eq(rate)).toBe(true);
    }),
  );
});

it('splits any sum into parts that make it, each within one minor unit of its share', () => {
  const cases = currencies.chain((currency) =>
    fc.tuple(sums(currency), fc.array(fc.integer({ min: 0, max: 5000 }), { minLength: 1, maxLength: 12 })),
  );
  fc.assert(
    fc.property(cases, ([m, weights]) => {
      const whole = weights.reduce((total, weight) => total + weight, 0);
      const parts = allocate(
        m,
        weights.map((weight) => new Decimal(weight)),
      );
      expect(moneyText(sum(parts, m.currency))).toBe(
        whole === 0 ? moneyText(money('0', m.currency)) : moneyText(m),
      );
      const unit = new Decimal(10).pow(-minorUnits(m.currency));
      for (const [index, part] of parts.entries()) {
        const share = whole === 0 ? new Decimal(0) : m.amount.times(weights[index] ?? 0).div(whole);
        expect(part.amount.minus(share).abs().lte(unit)).toBe(true);
        expect(part.amount.gte(0)).toBe(true);
      }
    }),
  );
});

it('takes tax out of a price so that putting it on again makes the price, within a minor unit', () => {
  const cases = fc.tuple(sums('USD'), fc.integer({ min: 0, max: 3000 }));
  fc.assert(
    fc.property(cases, ([price, parts]) => {
      const rate = new Decimal(parts).div(10_000);
      const within = taxOn([price], rate, 'USD', 'invoice', true);
      const net = { amount: price.amount.minus(within.amount), currency: 'USD' };
      const onTop = taxOn([net], rate, 'USD', 'invoice', false);
      expect(onTop.amount.minus(within.amount).abs().lte('0.01')).toBe(true);
    }),
  );
});

it('makes payments that sum to the total for any schedule and dates', () => {
  const days = fc.integer({ min: 0, max: 400 }).map((offset) => addDays('2027-01-01' as Day, offset));
  const dates = fc.record({ acceptedOn: fc.option(days), eventDate: days });
  fc.assert(
    fc.property(sums('USD', 2_000_000), instalments, dates, (total, plan, when) => {
      const rows = scheduleFor(total, { payments: plan }, when);
      const amounts = rows.map((row) => row.amount);
      expect(moneyText(sum(amounts, 'USD'))).toBe(moneyText(total));
      for (const row of rows) {
        expect(row.amount.amount.decimalPlaces()).toBeLessThanOrEqual(2);
        if (when.acceptedOn && row.due)
          expect(daysBetween(when.acceptedOn, row.due)).toBeGreaterThanOrEqual(0);
      }
    }),
  );
});

it('moves dates by days and back', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 300_000 }),
      fc.integer({ min: -10_000, max: 10_000 }),
      (start, days) => {
        const day = addDays('1950-01-01' as Day, start);
        const moved = addDays(day, days);
        expect(daysBetween(day, moved)).toBe(days);
        expect(addDays(moved, -days)).toBe(day);
        expect(parseDay(moved)).toEqual({ ok: true, value: moved });
      },
    ),
  );
});
