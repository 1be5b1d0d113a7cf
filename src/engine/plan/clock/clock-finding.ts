import type Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import type { Statement } from '../../text/statement.ts';
import type { Keeps } from '../days/holding-room.ts';
import type { Clash } from './clashes.ts';
import type { RoleHours } from './presence.ts';
import type { ThrowAway } from './throw-away.ts';
import type { Waiting } from './waiting.ts';

/** A way out that was tried: with it, all of the date's work fits. */
export type WayOut =
  | {
      readonly kind: 'people';
      /** What one of them can do; undefined where anybody will do. */
      readonly skill: string | undefined;
      readonly from: number;
      readonly until: number;
    }
  | { readonly kind: 'equipment'; readonly name: string }
  /** One more cook at the place. */
  | { readonly kind: 'cook there' }
  | { readonly kind: 'station'; readonly station: string }
  | { readonly kind: 'come'; readonly at: number }
  /** So many more vehicles, of a kind where only that will do. */
  | { readonly kind: 'vehicle'; readonly more: number; readonly name: string | undefined }
  /** An occasion takes another kind than it asks for. */
  | { readonly kind: 'another vehicle'; readonly occasion: string }
  /** The truck of these occasions drives home after unloading and comes again to clear. */
  | { readonly kind: 'comes back'; readonly occasions: readonly string[] }
  /** The truck of an occasion leaves at this minute. */
  | { readonly kind: 'truck'; readonly occasion: string; readonly at: number }
  /** The food of an occasion is driven out earlier, leaving at this minute, and its truck comes again to clear. */
  | { readonly kind: 'leave early'; readonly occasion: string; readonly at: number }
  | { readonly kind: 'day before'; readonly recipes: readonly string[] };

/** What of the clock does not fit. Minutes are from the midnight of the date. */
export type ClockFinding =
  /** Work has to begin before the crew comes. */
  | {
      readonly kind: 'before crew';
      readonly date: Day;
      readonly at: number;
      readonly crew: number;
      readonly ways: readonly WayOut[];
    }
  /** More is needed at once than there is, wherever the work is put. */
  | { readonly kind: 'clash'; readonly date: Day; readonly clash: Clash; readonly ways: readonly WayOut[] }
  /** Food that equipment which chills would hold has no room in it in time, and is planned to cool as without it. */
  | {
      readonly kind: 'chiller';
      readonly date: Day;
      readonly equipment: string;
      readonly recipes: readonly string[];
      /** Of the kitchen's food code, as it is cited. */
      readonly source: Statement;
      readonly ways: readonly WayOut[];
    }
  /** More food waits hot, or cold, than what keeps it so holds. */
  | {
      readonly kind: 'holding';
      readonly date: Day;
      readonly keeps: Keeps;
      /** What keeps it so, by name. */
      readonly equipment: readonly string[];
      readonly from: number;
      readonly until: number;
      /** How much of all the room is asked for at the most; more than 1. */
      readonly share: Fraction;
      readonly recipes: readonly string[];
      readonly ways: readonly WayOut[];
    }
  /** More trucks are on the road or loaded at once than there are. */
  | {
      readonly kind: 'vehicles';
      /** Of which kind; undefined for vehicles of all kinds. */
      readonly name: string | undefined;
      readonly date: Day;
      readonly from: number;
      readonly until: number;
      readonly asked: number;
      readonly has: number;
      readonly occasions: readonly string[];
      readonly ways: readonly WayOut[];
    }
  /** Work for other days goes on after the crew has gone. */
  | { readonly kind: 'after crew'; readonly date: Day; readonly at: number; readonly crew: number }
  /** From the first task to the last truck it is longer than one of the crew works. */
  | {
      readonly kind: 'long day';
      readonly date: Day;
      readonly from: number;
      readonly until: number;
      readonly each: number;
    }
  /** A dish waits longer than it stands. */
  | {
      readonly kind: 'waits';
      readonly date: Day;
      readonly event: string;
      readonly waiting: Waiting;
      /** For what is finished at the place; none for any other. */
      readonly ways: readonly WayOut[];
    }
  /** Food that stands neither hot nor cold has to be thrown away before service is over. */
  | {
      readonly kind: 'without control';
      readonly date: Day;
      readonly event: string;
      readonly food: ThrowAway;
      /** When service is over. */
      readonly end: number;
      /** Of the kitchen's food code, as it is cited. */
      readonly source: Statement;
    }
  /** Who works at the event is sold for less time than the event takes them. */
  | {
      readonly kind: 'sold short';
      readonly date: Day;
      readonly event: string;
      readonly roles: readonly RoleHours[];
    }
  /** The work at the place takes longer than there is between arriving and serving. */
  | {
      readonly kind: 'place';
      readonly date: Day;
      readonly event: string;
      readonly minutes: number;
      readonly arrive: number;
      readonly serve: number;
      readonly cooks: number | undefined;
      readonly moreCooks: number | undefined;
    };
