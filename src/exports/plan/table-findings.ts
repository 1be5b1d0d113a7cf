import { parseNeed } from '../../engine/food/need.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import { listDifferences } from '../../offers/guest-list/differences.ts';
import { listedCourses } from '../../offers/guest-list/guest-list.ts';
import type { GuestListFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import type { PlanSeat, PlanTables } from '../form/tables.ts';

interface TableFinding {
  readonly about: string;
  readonly what: string;
  readonly wayOut: string;
}

/** Guests whose choice is not for them, those whose need nobody can plan for first. */
export function seatFindings({ seats }: PlanTables): TableFinding[] {
  const unknown = seats.filter(({ need }) => need !== '' && !parseNeed(need).ok);
  const misfed = seats.filter((seat) => seat.notFor.length > 0 && !unknown.includes(seat));
  return [
    ...unknown.map((seat) => ({
      about: seatText(seat),
      what: `“${seat.need}” is not a diet or allergy Salver knows`,
      wayOut: 'ask the guest what it means for each dish, and check every dish by hand',
    })),
    ...misfed.map((seat) => ({
      about: seatText(seat),
      what: `${seat.need}, and can’t eat what they chose: ${seat.notFor.join(', ')}`,
      wayOut: 'ask the guest to choose another dish, then record the list and the counts again',
    })),
  ];
}

/** Where more guests of the list need a dish made separately than it is made for. */
export function apartFindings({ seats }: PlanTables, { dishes }: Pick<EventPlan, 'dishes'>): TableFinding[] {
  return dishes.flatMap(({ dish: { name, portions } }) => {
    if (!portions?.apart) return [];
    const who = seats.filter(({ apart }) => apart.includes(name));
    const made = Number(portions.guests.ceil().n);
    if (who.length <= made) return [];
    return [
      {
        about: name,
        what: `made separately for ${made}, but ${who.length} on the guest list need it: ${who.map(seatText).join('; ')}`,
        wayOut: 'record the needs and the counts by dish again with `guarantee`',
      },
    ];
  });
}

/** Where the list says something else than the count that is cooked for. */
export function listFindings(list: GuestListFact, offer: Offer, status: EventStatus): TableFinding[] {
  return listDifferences(list.guests, status.choice, listedCourses(offer, status)).map((what) => ({
    about: 'Guest list',
    what,
    wayOut:
      'the kitchen cooks for the count; ask the client which is right, and record the count with `guarantee`',
  }));
}

/** A guest with the table: `Ada Lund, Table 4`. */
export function seatText({ name, table }: Pick<PlanSeat, 'name' | 'table'>): string {
  return `${name}, ${table}`;
}
