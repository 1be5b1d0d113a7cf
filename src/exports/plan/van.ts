import Fraction from 'fraction.js';
import type { VanLoad } from '../../engine/plan/load/van-load.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import type { PlanVan } from '../form/van.ts';
import type { CarrierWords } from './carriers.ts';
import { poundsUp } from './pounds-up.ts';

/** How the load fits its vehicle, for page, paper and data. */
export function planVan(load: VanLoad, { system }: Pick<CarrierWords, 'system'>): PlanVan {
  const { vehicle, grams, floor } = load;
  return {
    vehicle: vehicle.name,
    weight: poundsUp(grams, system),
    payload: vehicle.payloadGrams ? poundsUp(vehicle.payloadGrams, system) : '',
    floor: floor ? percentUp(floor) : '',
    runs: load.runs,
    unweighed: [...load.unweighed],
    unsized: [...load.unsized],
    zones: {
      cab: [...load.zones.cab],
      middle: [...load.zones.middle],
      doors: [...load.zones.doors],
    },
  };
}

/** What does not fit its vehicle, with the ways out that would do. */
export function vanFindings(
  load: VanLoad,
  { system, say }: Pick<CarrierWords, 'system' | 'say'>,
): PrepPlanDocument['findings'] {
  const { vehicle, grams, over, runs, floor } = load;
  const wayOut = say('carriers.over.way', { runs, name: vehicle.name });
  return over.map((kind) => ({
    about: vehicle.name,
    what:
      kind === 'weight'
        ? say('carriers.over-weight', {
            name: vehicle.name,
            weight: poundsUp(grams, system),
            payload: poundsUp(vehicle.payloadGrams ?? new Fraction(0n), system),
          })
        : say('carriers.over-space', { name: vehicle.name, share: percentUp(floor ?? new Fraction(0n)) }),
    wayOut,
  }));
}

function percentUp(share: Fraction): string {
  return `${share.mul(100n).ceil().toString()} %`;
}
