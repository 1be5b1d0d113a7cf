import type { Carrier } from '../../kitchen/carrier.ts';
import { DAY_END } from '../clock/crew-hours.ts';
import type { ServedOn } from '../clock/day-clock.ts';
import type { LoadedCarrier } from './carriers.ts';

/** An event of a date with the carriers it takes. */
export interface CarriedEvent {
  readonly served: ServedOn;
  readonly carriers: readonly LoadedCarrier[];
}

/** A kind of carrier of which more are out at once than there are. */
export interface CarrierLack {
  readonly carrier: Carrier;
  /** The most that are out at once while this event has its own. */
  readonly taken: number;
  /** The other events that have some of them then, by occasion. */
  readonly others: readonly string[];
}

/**
 * The kinds of carriers that an event and others of its date take more of at once than there are. Each event has its own
 * from the loading of its truck until that is unloaded; for the rest of the date where it is not stated how long is served.
 */
export function carrierLacks(own: CarriedEvent, date: readonly CarriedEvent[]): CarrierLack[] {
  const [from, until] = outOf(own);
  const kinds = new Set(own.carriers.map(({ carrier }) => carrier));
  const starts = date.map((each) => outOf(each)[0]).filter((start) => from <= start && start < until);
  return [...kinds].flatMap((carrier): CarrierLack[] => {
    const at = [from, ...starts].map((minute) => {
      const out = date.filter((each) => each !== own && isOut(each, minute) && countOf(each, carrier) > 0);
      return {
        out,
        taken: out.reduce((sum, each) => sum + countOf(each, carrier), countOf(own, carrier)),
      };
    });
    const most = at.toSorted((a, b) => b.taken - a.taken)[0];
    return most && most.taken > carrier.count
      ? [{ carrier, taken: most.taken, others: most.out.map(({ served }) => served.plan.input.occasion) }]
      : [];
  });
}

function outOf({ served: { load, clock } }: CarriedEvent): [from: number, until: number] {
  return [load.begins, clock.unloaded ?? DAY_END];
}

function isOut(event: CarriedEvent, minute: number): boolean {
  const [from, until] = outOf(event);
  return from <= minute && minute < until;
}

function countOf({ carriers }: CarriedEvent, { id }: Carrier): number {
  return carriers.filter(({ carrier }) => carrier.id === id).length;
}
