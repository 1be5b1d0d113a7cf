import { SERVICE_STYLES, type ServiceStyle } from '../../../engine/course/service-style.ts';
import type { StaffRole } from '../../../engine/kitchen/kitchen.ts';
import { parseHourly } from '../../../engine/kitchen/parse-hourly.ts';
import { parseGuestCount } from '../../../engine/measure/guest-count.ts';
import { parseHours } from '../../../engine/measure/parse-hours.ts';
import { notParsed, type Parsed } from '../../../engine/parsed.ts';
import { type Counts, parseCounts } from '../../../engine/quote/counts.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

/** A role that serves, with how many guests one of them is for in each style. `usual` is whom the kitchen counts. */
export function linkStaffRole(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['staff']>[string],
  currency: string,
  usual: Counts,
): StaffRole | undefined {
  const hourly = (words: string) => parseHourly(words, currency);
  const price = reading.understand(['price'], text.price, hourly);
  const pay = reading.understand(['pay'], text.pay, hourly);
  const hours = reading.understand(['hours'], text.hours, parseHours);
  const atLeast = reading.understand(['at least'], text['at least'] ?? '0', wholeNumber(0, 10_000));
  const guestsEach = new Map<ServiceStyle, number>();
  for (const style of SERVICE_STYLES) {
    const guests = text['one per'][style];
    const count = guests && reading.understand(['one per', style], guests, parseGuestsForOne);
    if (count) guestsEach.set(style, count);
  }
  const counts = text.counts === undefined ? usual : reading.understand(['counts'], text.counts, parseCounts);
  if (
    price === undefined ||
    counts === undefined ||
    pay === undefined ||
    hours === undefined ||
    atLeast === undefined
  )
    return undefined;
  const role = { id, name: text.name, price, pay, guestsEach, hours, atLeast, counts };
  return {
    ...role,
    ...(text.cooks === 'yes' && { cooks: true as const }),
    ...(text['reports to'] === 'place' && { reportsTo: 'place' as const }),
  };
}

function parseGuestsForOne(text: string): Parsed<number> {
  const count = parseGuestCount(text);
  return count.ok && count.value === 0
    ? notParsed(
        'one person per 0 guests makes no sense',
        'leave the style out, or write for example "15 guests"',
      )
    : count;
}
