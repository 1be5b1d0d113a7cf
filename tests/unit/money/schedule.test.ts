import { describe, expect, it } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import {
  type Instalment,
  instalmentProblems,
  parseInstalment,
} from '../../../src/engine/money/instalments.ts';
import { money, moneyText } from '../../../src/engine/money/money.ts';
import { type ScheduleDates, scheduleFor } from '../../../src/engine/money/schedule.ts';
import { instalmentText } from './instalment-text.ts';

const plan = (...texts: string[]): Instalment[] =>
  texts.map((text) => {
    const instalment = parseInstalment(text, 'USD');
    if (!instalment.ok) throw new Error(instalment.what);
    return instalment.value;
  });
const dates: ScheduleDates = { acceptedOn: '2027-04-20' as Day, eventDate: '2027-05-15' as Day };
const rows = (total: string, instalments: Instalment[], on = dates) =>
  scheduleFor(money(total, 'USD'), { payments: instalments }, on).map(
    (row) => `${instalmentText(row.instalment)}: ${moneyText(row.amount)} ${row.due}`,
  );

describe('an instalment', () => {
  it('is read as people write it', () => {
    expect(
      plan('30 % when accepted', '500.00 when accepted', '$500 30 days before', 'Balance the day before'),
    ).toEqual([
      { of: 'rate', rate: '30 %', due: 'accepted' },
      { of: 'amount', amount: '500.00', due: 'accepted' },
      { of: 'amount', amount: '500.00', due: 30 },
      { of: 'balance', due: 1 },
    ]);
    for (const text of [
      '50 % 30 days before',
      '500.00 when accepted',
      'balance on the day',
      'balance 14 days after',
    ]) {
      const [instalment] = plan(text);
      // A sum alone is shown otherwise than it is written: with its currency.
      expect(instalmentText(instalment as Instalment).replace('$', '')).toBe(text);
    }
  });

  it('is refused where it asks for nothing, too much, or never', () => {
    const texts = [
      '0 % when accepted',
      '101 % on the day',
      '0.00 on the day',
      'half on the day',
      'balance',
      '30 % soon',
    ];
    for (const text of texts) expect([text, parseInstalment(text, 'USD').ok]).toEqual([text, false]);
  });

  it('makes a whole with the others, or the schedule says what is wrong', () => {
    expect(instalmentProblems(plan('60 % when accepted', '50 % on the day'))).toEqual([
      'The installments add up to 110 % of the total. Bring them down to 100 % or less.',
    ]);
    expect(instalmentProblems(plan('balance on the day', 'balance 7 days after'))).toHaveLength(1);
    expect(instalmentProblems(plan('30 % when accepted'))).toHaveLength(1);
    expect(instalmentProblems(plan('30 % when accepted', '70 % on the day'))).toEqual([]);
    expect(instalmentProblems(plan('500.00 when accepted', 'balance on the day'))).toEqual([]);
    // 100 % and a sum on top ask for more than there is, and no balance takes the difference.
    expect(instalmentProblems(plan('100 % when accepted', '500.00 on the day'))).toHaveLength(1);
    expect(instalmentProblems(plan('500.00 when accepted'))).toHaveLength(1);
    expect(instalmentProblems([])).toEqual([]);
  });

  it('says what of it was not understood', () => {
    const told = (text: string) => {
      const read = parseInstalment(text, 'USD');
      return read.ok ? 'understood' : read.what;
    };
    expect(told('  30 %   when  accepted ')).toBe('understood');
    expect(told('  half a year ')).toBe('"half a year" is not an installment');
    expect(told('2000 % on the day')).toBe('2000 % is more than 1000 %');
    expect(told('30 % when accepted'.padEnd(5000, 'x'))).toMatch(
      /^"30 % when acceptedx+" is not an installment$/,
    );
    expect(told('30 % when accepted'.padEnd(5000, 'x')).length).toBeLessThan(120);
  });
});

describe('a payment schedule', () => {
  it('sums to the total to the cent, and what is due before acceptance is due then', () => {
    expect(
      rows('1000.01', plan('30 % when accepted', '40 % 30 days before', 'balance 7 days before')),
    ).toEqual([
      '30 % when accepted: 300.00 2027-04-20',
      '40 % 30 days before: 400.00 2027-04-20',
      'balance 7 days before: 300.01 2027-05-08',
    ]);
  });

  it('gives the last instalment the difference where there is no balance', () => {
    const thirds = plan('33.3 % when accepted', '33.3 % 7 days before', '33.4 % on the day');
    expect(rows('100.10', thirds).map((row) => row.split(' ').at(-2))).toEqual(['33.33', '33.33', '33.44']);
  });

  it('has no date for what is due on acceptance while nobody has accepted', () => {
    const open = { acceptedOn: null, eventDate: '2027-05-15' as Day };
    expect(rows('10.00', plan('50 % when accepted', 'balance 14 days after'), open)).toEqual([
      '50 % when accepted: 5.00 null',
      'balance 14 days after: 5.00 2027-05-29',
    ]);
  });

  it('asks for no more than the total', () => {
    expect(rows('300.00', plan('500.00 when accepted', 'balance on the day'))).toEqual([
      '$500.00 when accepted: 300.00 2027-04-20',
    ]);
    expect(rows('0.00', plan('30 % when accepted', 'balance on the day'))).toEqual([
      'balance on the day: 0.00 2027-05-15',
    ]);
    expect(rows('80.00', [])).toEqual(['balance on the day: 80.00 2027-05-15']);
  });

  it('asks for a fixed sum in full, and gives a balance listed first what is left', () => {
    expect(rows('800.00', plan('balance 7 days before', '500.00 when accepted'))).toEqual([
      'balance 7 days before: 300.00 2027-05-08',
      '$500.00 when accepted: 500.00 2027-04-20',
    ]);
  });

  it('has a date only for what hangs on acceptance while the event has no day', () => {
    const postponed = { acceptedOn: '2027-04-20' as Day, eventDate: null };
    expect(rows('10.00', plan('50 % when accepted', 'balance 7 days before'), postponed)).toEqual([
      '50 % when accepted: 5.00 2027-04-20',
      'balance 7 days before: 5.00 null',
    ]);
  });
});
