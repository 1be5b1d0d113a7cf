import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { durationText, minutes } from '../../engine/measure/duration.ts';
import { type Money, money, sum } from '../../engine/money/money.ts';
import type { RoleHours } from '../../engine/plan/clock/presence.ts';
import { payFor } from '../../engine/plan/money/pay-for.ts';
import { clockOf } from '../../exports/words/clock-text.ts';
import { workText } from '../../exports/words/hours-words.ts';
import type { Say } from '../../words/words-in.ts';
import type { HoursRowView, OwnerHoursView } from './owner-hours.ts';

/**
 * The hours of an event that are sold beside those that its clock takes, role by role, with what the difference is paid.
 * Null where nobody is sold or the clock is not known.
 */
export function ownerHours(
  hours: readonly RoleHours[] | undefined,
  { staff, currency }: Pick<Kitchen, 'staff' | 'currency'>,
  show: (amount: Money | null) => string,
  say: Say,
): OwnerHoursView | null {
  if (!hours || hours.length === 0) return null;
  const rows = hours.map((each) => {
    const { sold, from, until, missing } = each;
    const pay = staff.get(sold.role)?.pay;
    return {
      name: sold.name,
      why: say('money.hours.why', {
        n: sold.people,
        needed: durationText(minutes(until - from)),
        from: clockOf(from),
        until: clockOf(until),
        sold: durationText(sold.each),
      }),
      sold: sold.people * sold.each,
      needed: sold.people * (until - from),
      missing,
      cost: pay === undefined ? null : payFor(missing, money(pay, currency)),
    };
  });
  const total = (part: 'sold' | 'needed' | 'missing') => rows.reduce((all, row) => all + row[part], 0);
  const known = rows.flatMap(({ cost }) => (cost ? [cost] : []));
  const row = ({ name, ...rest }: Omit<(typeof rows)[number], 'why'> & { why: string }): HoursRowView => ({
    role: name,
    why: rest.why,
    sold: workText(rest.sold),
    needed: workText(rest.needed),
    missing: workText(rest.missing),
    cost: show(rest.cost),
  });
  return {
    rows: rows.map(row),
    all: row({
      name: say('money.hours.all'),
      why: '',
      sold: total('sold'),
      needed: total('needed'),
      missing: total('missing'),
      cost: known.length === rows.length ? sum(known, currency) : null,
    }),
  };
}
