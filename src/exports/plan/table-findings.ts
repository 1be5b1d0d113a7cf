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
      what: `“${seat.need}” is no diet or allergy Salver knows`,
      wayOut: 'ask the guest what it means for each dish, and go through the dishes by hand',
    })),
    ...misfed.map((seat) => ({
      about: seatText(seat),
      what: `${seat.need}, and chose what is not for them: ${seat.notFor.join(', ')}`,
      wayOut: 'ask the guest to choose another dish, and give the list and the counts anew',
    })),
  ];
}

/** Where more guests of the list need a dish made apart than it is made for. */
export function apartFindings({ seats }: PlanTables, { dishes }: Pick<EventPlan, 'dishes'>): TableFinding[] {
  return dishes.flatMap(({ dish: { name, portions } }) => {
    if (!portions?.apart) return [];
    const who = seats.filter(({ apart }) => apart.includes(name));
    const made = Number(portions.guests.ceil().n);
    if (who.length <= made) return [];
    return [
      {
        about: name,
        what: `made apart for ${made}, and the guest list has ${who.length} who need it: ${who.map(seatText).join('; ')}`,
        wayOut: 'give the needs and the counts by dish anew by `guarantee`',
      },
    ];
  });
}

/** Where the list says something else than the count that is cooked for. */
export function listFindings(list: GuestListFact, offer: Offer, status: EventStatus): TableFinding[] {
  return listDifferences(list.guests, status.choice, listedCourses(offer, status)).map((what) => ({
    about: 'Guest list',
    what,
    wayOut: 'cooked is for the count; ask the client which is right, and give the count by `guarantee`',
  }));
}

/** A guest with the table: `Ada Lund, Table 4`. */
export function seatText({ name, table }: Pick<PlanSeat, 'name' | 'table'>): string {
  return `${name}, ${table}`;
}
