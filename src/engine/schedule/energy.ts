import type { Model } from './model.ts';
import { NONE } from './network.ts';
import { type Profile, stepAt } from './profile.ts';

/** Work that a resource has to do between two minutes, wherever a schedule puts it. */
interface Energy {
  readonly from: number;
  readonly until: number;
  /** Amount times minutes. */
  readonly amount: number;
}

/**
 * Whether each resource has, between all minutes by which a begin or an end is bound, at least the capacity that must
 * be used there. No schedule of an overfull day places everything, so none need be tried; the reverse does not hold.
 */
export function hasEnergy(model: Model): boolean {
  return model.calendars.every((calendar, resource) => {
    const work = workFor(model, resource);
    const [last, first] = [
      work.toSorted((a, b) => b.from - a.from),
      work.toSorted((a, b) => a.until - b.until),
    ];
    return holds(calendar, last) && holds(calendar, first);
  });
}

/** Whether a resource can do its work, one piece after the other added, between the first minute and the last of it. */
function holds(calendar: Profile, work: readonly Energy[]): boolean {
  let [amount, from, until] = [0, Number.POSITIVE_INFINITY, NONE];
  for (const each of work) {
    amount += each.amount;
    from = Math.min(from, each.from);
    until = Math.max(until, each.until);
    if (amount > capacityIn(calendar, from, until)) return false;
  }
  return true;
}

function workFor(model: Model, resource: number): Energy[] {
  const work: Energy[] = [];
  for (let block = 0; block < model.size; block++)
    for (let need = model.needAt[block] as number; need < (model.needAt[block + 1] as number); need++) {
      if (model.needResource[need] !== resource) continue;
      const [from, until] = [model.needFrom[need] as number, model.needUntil[need] as number];
      work.push({
        from: (model.earliest[block] as number) + from,
        until: (model.latest[block] as number) + until,
        amount: (model.needAmount[need] as number) * (until - from),
      });
    }
  return work;
}

/** Capacity times minutes in an interval. */
function capacityIn({ times, free, count }: Profile, from: number, until: number): number {
  let amount = 0;
  for (let step = stepAt(times, count, from); step < count && (times[step] as number) < until; step++)
    amount +=
      (free[step] as number) *
      (Math.min(times[step + 1] as number, until) - Math.max(times[step] as number, from));
  return amount;
}
