import type { Kitchen } from '../engine/kitchen/kitchen.ts';
import { unitWord } from '../engine/measure/find-unit.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { rentalsFor } from '../engine/plan/service-ware.ts';
import type { Choice } from '../engine/quote/choice.ts';
import { peopleFor } from '../engine/quote/staff-lines.ts';
import type { Terms } from '../engine/quote/terms.ts';
import { carriedIn, guestsOfDish } from './plan-labels.ts';
import type { PackOutLine } from './prep-plan-document.ts';

const ORDER = ['frozen', 'cold', 'room', 'hot'];

/** What goes on the van: food by container and temperature, service ware with spares, staff, add-ons taken. */
export function planPackOut(plan: EventPlan, kitchen: Kitchen, terms: Terms, choice: Choice): PackOutLine[] {
  return [
    ...foodLines(plan),
    ...rentalsFor(kitchen.rentals.values(), plan.input.style, plan.input.guests).map(({ rental, count }) => ({
      group: 'service ware' as const,
      item: rental.name,
      container: '',
      count: Number(count.amount.n),
      unit: unitWord(count.unit, count.amount),
      hold: '',
      note: rental.spare.n === 0n ? '' : 'spares included',
    })),
    ...terms.staff
      .filter(({ packages }) => !packages || packages.includes(choice.package))
      .map((role) => ({ role, people: peopleFor(role, choice.guests) }))
      .filter(({ people }) => people > 0)
      .map(({ role, people }) => ({
        group: 'staff' as const,
        item: role.name,
        container: '',
        count: people,
        unit: people === 1 ? 'person' : 'people',
        hold: '',
        note: `${role.hours} h each`,
      })),
    ...terms.addOns
      .filter(({ id }) => (choice.addOns[id] ?? 0) > 0)
      .map((addOn) => ({
        group: 'add-ons' as const,
        item: addOn.name,
        container: '',
        count: choice.addOns[addOn.id] ?? 0,
        unit: addOn.per === 'hour' ? 'hours' : 'each',
        hold: '',
        note: '',
      })),
  ];
}

function foodLines(plan: EventPlan): PackOutLine[] {
  const lines = plan.dishes.map((planned): PackOutLine => {
    const carried = carriedIn(planned);
    return {
      group: 'food',
      item: planned.dish.name,
      container: carried?.containerName ?? '',
      count: carried?.count ?? 1,
      unit: 'each',
      hold: planned.dish.recipe.hold,
      note: [guestsOfDish(planned.dish), planned.dish.recipe.finish ?? '']
        .filter((text) => text !== '')
        .join('. '),
    };
  });
  return lines.sort((a, b) => ORDER.indexOf(a.hold) - ORDER.indexOf(b.hold));
}
