import type { Equipment } from '../../../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import type { Crew } from '../../../../src/engine/menu/crew.ts';
import type { Vehicle } from '../../../../src/engine/menu/vehicle.ts';
import { scheduleOf } from '../../../../src/engine/plan/clock/schedule.ts';
import type { EventInput } from '../../../../src/engine/plan/event-input.ts';
import type { EventPlan } from '../../../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../../../src/engine/plan/plan-event.ts';
import { FOOD_CODE_2022 } from '../../../../src/engine/safety/limits.ts';
import { day, dish, event, food, kitchen, line, prices, recipe, step } from '../builders.ts';

export const DATE = day('2027-05-15');
const beans = food('beans');
const oven: Equipment = {
  id: 'oven',
  name: 'Oven',
  count: 1,
  holds: [{ container: 'pan', count: 4 }],
  station: 'oven',
};
type Steps = ReturnType<typeof step>[];
/** A hot dish, 8 fl oz a guest of a batch of a gallon. */
export const hot = (id: string, steps: Steps, facts: object = {}) =>
  recipe(id, '1 gal', [line(beans, '1 lb')], { hold: 'hot', steps, ...facts });
/** Twenty minutes to fill, ten to put in, an hour in the oven. */
export const bake = (id: string, facts: object = {}) =>
  hot(
    id,
    [
      step('on the day', 'Fill', { station: 'cold', handsOn: minutes(20) }),
      step('on the day', 'Bake', { station: 'oven', handsOn: minutes(10), unattended: minutes(60) }),
    ],
    facts,
  );

export interface Place {
  crew?: Partial<Crew> | null;
  ovens?: number;
  places?: Record<string, number>;
  equipment?: readonly Equipment[];
  vans?: number;
  fleet?: ReadonlyMap<string, Vehicle>;
}

/** An event of 16 guests at 12:30, its truck leaving at 11:00. */
export function planned(
  id: string,
  of: readonly ReturnType<typeof hot>[],
  facts: Partial<EventInput> = {},
  containers: Parameters<typeof kitchen>[0] = [],
): EventPlan {
  const guests = { adults: 16, children: 0, vendors: 0, staff: 0 };
  const dishes = of.map((each) => dish(each, '8 fl oz per guest'));
  // 30 min on the road and 1 h to set up; loading takes 30 min, packing 1 h.
  const away = { travel: minutes(30), setUp: minutes(60), service: minutes(120) };
  const input = event(dishes, { id, occasion: id, guests, date: DATE, serveAt: '12:30', away, ...facts });
  return planEvent(input, kitchen(containers), prices());
}

/** The clock of a date in a kitchen of a cold bench, a stove and ovens. */
export function clock(
  plans: readonly EventPlan[],
  { crew = {}, ovens = 1, places = {}, equipment = [], vans, fleet }: Place = {},
  date = DATE,
) {
  const { clock: found, findings } = scheduleOf(plans, {
    equipment: new Map([{ ...oven, count: ovens }, ...equipment].map((each) => [each.id, each])),
    ...(fleet && { vehicles: fleet }),
    ...(vans !== undefined && { vehicles: new Map([['van', { id: 'van', name: 'Van', count: vans }]]) }),
    containers: kitchen([['pan', '1 gal', '1']]).containers,
    crew: crew === null ? undefined : { people: 4, each: minutes(600), from: '6:00', ...crew },
    day: { pack: minutes(60), load: minutes(30), clear: minutes(75), unload: minutes(30) },
    stations: new Map([
      ['cold', 'Cold bench'],
      ['oven', 'Ovens'],
      ['stove', 'Stove'],
    ]),
    stationPlaces: new Map(Object.entries(places)),
    foodSafety: FOOD_CODE_2022,
  }).on(date);
  const time = (at: number) => `${Math.floor(at / 60)}:${String(at % 60).padStart(2, '0')}`;
  const shown = [...found.steps, ...found.served.flatMap(({ place }) => place.steps)].map(
    ({ batch, number, begins, ends }) => `${batch.recipe.id} ${number} ${time(begins)}–${time(ends)}`,
  );
  return { ...found, findings, shown, time };
}
