import type { Supplier } from '../../../engine/purchase/price-list.ts';
import type { SupplierText } from '../../../schema/supplier.ts';
import { suggestion } from '../../ledger.ts';
import { moneyIn, wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

/** Days as suppliers.yaml names them, in the order that `Supplier.deliveryDays` counts them. */
const DAYS = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];

/** Who sells. */
export function linkSupplier(
  reading: Reading,
  id: string,
  text: SupplierText,
  currency: string,
): Supplier | undefined {
  const leadDays = reading.understand(['lead days'], text['lead days'] ?? '1', wholeNumber(0, 365));
  const minimumOrder = reading.understand(['minimum order'], text['minimum order'] ?? '0', moneyIn(currency));
  const deliveryFee = reading.understand(['delivery fee'], text['delivery fee'] ?? '0', moneyIn(currency));
  const deliveryDays = (text['delivery days'] ?? []).map((word, index) => linkDay(reading, word, index));
  if (leadDays === undefined || minimumOrder === undefined || deliveryFee === undefined) return undefined;
  return {
    id,
    name: text.name,
    leadDays,
    deliveryDays,
    minimumOrder,
    deliveryFee,
  };
}

function linkDay(reading: Reading, word: string, index: number): number {
  const day = DAYS.indexOf(word.toLowerCase().slice(0, 3));
  const whole = /^(sun|mon|tues?|wed(nes)?|thu(rs)?|fri|sat(ur)?)(day)?$/i.test(word);
  if (day === -1 || !whole) {
    const wayOut = suggestion(reading.ledger, word, DAYS) ?? `choose from ${DAYS.join(', ')}`;
    reading.say('unknown-word', ['delivery days', index], `“${word}” is not a day of the week`, wayOut);
  }
  return day;
}
