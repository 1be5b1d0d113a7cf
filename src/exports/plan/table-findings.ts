import { parseNeed } from '../../engine/food/need.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import { listDifferences } from '../../offers/guest-list/differences.ts';
import { listedCourses } from '../../offers/guest-list/guest-list.ts';
import type { GuestListFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanSeat, PlanTables } from '../form/tables.ts';
import type { SayStatement } from '../words/statement-text.ts';

interface TableFinding {
  readonly about: string;
  readonly what: string;
  readonly wayOut: string;
}

/** Guests whose choice is not for them, those whose need nobody can plan for first. */
export function seatFindings({ seats }: PlanTables, say: Say): TableFinding[] {
  const unknown = seats.filter(({ need }) => need !== '' && !parseNeed(need).ok);
  const misfed = seats.filter((seat) => seat.notFor.length > 0 && !unknown.includes(seat));
  return [
    ...unknown.map((seat) => ({
      about: seatText(seat),
      what: say('found.seat-unknown', { need: seat.need }),
      wayOut: say('found.seat-unknown.way'),
    })),
    ...misfed.map((seat) => ({
      about: seatText(seat),
      what: say('found.seat-misfed', { need: seat.need, dishes: seat.notFor.join(', ') }),
      wayOut: say('found.seat-misfed.way'),
    })),
  ];
}

/** Where more guests of the list need a dish made separately than it is made for. */
export function apartFindings(
  { seats }: PlanTables,
  { dishes }: Pick<EventPlan, 'dishes'>,
  say: Say,
): TableFinding[] {
  return dishes.flatMap(({ dish: { name, portions } }) => {
    if (!portions?.apart) return [];
    const who = seats.filter(({ apart }) => apart.includes(name));
    const made = Number(portions.guests.ceil().n);
    if (who.length <= made) return [];
    return [
      {
        about: name,
        what: say('found.made-for-fewer', { made, count: who.length, who: who.map(seatText).join('; ') }),
        wayOut: say('found.made-for-fewer.way'),
      },
    ];
  });
}

/** Where the list says something else than the count that is cooked for. */
export function listFindings(
  list: GuestListFact,
  offer: Offer,
  status: EventStatus,
  inWords: SayStatement,
  say: Say,
): TableFinding[] {
  return listDifferences(list.guests, status.choice, listedCourses(offer, status)).map((what) => ({
    about: say('found.guest-list'),
    what: inWords(what),
    wayOut: say('found.guest-list.way'),
  }));
}

/** A guest with the table: `Ada Lund, Table 4`. */
export function seatText({ name, table }: Pick<PlanSeat, 'name' | 'table'>): string {
  return `${name}, ${table}`;
}
