import { describe, expect, it } from 'vitest';
import { kitchenDay } from '../../../src/client/kitchen-day.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';

const issued = '2027-03-01' as Day;

describe('today for an offer', () => {
  // 03:30 UTC on May 2 is still the evening of May 1 in New York (UTC−4 in May) and already May 2 in Dublin.
  it('is the day of the kitchen’s own zone', () => {
    const now = new Date('2027-05-02T03:30:00Z');
    expect(kitchenDay(now, 'America/New_York', issued)).toBe('2027-05-01');
    expect(kitchenDay(now, 'Europe/Dublin', issued)).toBe('2027-05-02');
    expect(kitchenDay(now, 'Pacific/Kiritimati', issued)).toBe('2027-05-02');
  });

  it('is never before the offer was issued, however wrong the clock', () => {
    expect(kitchenDay(new Date('2001-01-01T12:00:00Z'), 'Europe/Dublin', issued)).toBe('2027-03-01');
  });

  it('goes by the browser’s zone where it knows no such zone', () => {
    expect(kitchenDay(new Date('2027-06-15T12:00:00Z'), 'Nowhere/Land', issued)).toMatch(/^2027-06-1[456]$/);
  });
});
