import type { Kitchen } from '../engine/kitchen/kitchen.ts';
import { unitWord } from '../engine/measure/find-unit.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { rentalsFor } from '../engine/plan/service-ware.ts';
import type { Choice } from '../engine/quote/choice.ts';
import { peopleFor } from '../engine/quote/staff-lines.ts';
import type { Terms } from '../engine/quote/terms.ts';
import { travelsAs } from '../engine/safety/travels-as.ts';
import { carriedIn, guestsOfDish } from './plan-labels.ts';
import type { PackOutLine } from './plan-sheets-document.ts';

const ORDER = ['frozen', 'cold', 'room', 'hot'];

/**
 * What goes on the van: food by container and temperature, what it is served from where that is another thing, service
 * ware with spares, staff by their ratios and the meals of those who work, add-ons taken.
 */
export function planPackOut(plan: EventPlan, kitchen: Kitchen, terms: Terms, choice: Choice): PackOutLine[] {
  const crew = terms.staff
    .filter(({ packages }) => !packages || packages.includes(choice.package))
    .map((role) => ({ role, people: peopleFor(role, choice.guests) }))
    .filter(({ people }) => people > 0);
  return [
    ...foodLines(plan),
    ...servingLines(plan),
    ...rentalsFor(kitchen, plan.input.style, plan.input.guests).map(({ rental, count }) => ({
      group: 'service ware' as const,
      item: rental.name,
      container: '',
      count: Number(count.amount.n),
      unit: unitWord(count.unit, count.amount),
      hold: '',
      note: rental.spare.n === 0n ? '' : 'spares included',
    })),
    ...crew.map(({ role, people }) => ({
      group: 'staff' as const,
      item: role.name,
      container: '',
      count: people,
      unit: people === 1 ? 'person' : 'people',
      hold: '',
      note: `${role.hours} h each`,
    })),
    ...mealLines(
      choice.guests,
      crew.reduce((sum, { people }) => sum + people, 0),
    ),
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
  const beside = new Set(plan.beside);
  const lines = [...plan.dishes, ...plan.beside].map((planned): PackOutLine => {
    const carried = carriedIn(planned);
    const goesWith = beside.has(planned) ? `Goes ${planned.why.join('; ')}` : '';
    return {
      group: 'food',
      item: planned.dish.name,
      container: carried?.containerName ?? '',
      count: carried?.count ?? 1,
      unit: 'each',
      hold: travelsAs(planned.dish.recipe),
      note: [goesWith, guestsOfDish(planned.dish), planned.dish.recipe.finish ?? '']
        .filter((text) => text !== '')
        .join('. '),
    };
  });
  return lines.sort((a, b) => ORDER.indexOf(a.hold) - ORDER.indexOf(b.hold));
}

/** What stands on the table or the line and is not what the food travels in, each kind once over all dishes. */
function servingLines(plan: EventPlan): PackOutLine[] {
  const served = [...plan.dishes, ...plan.beside].flatMap((planned) => {
    const carried = carriedIn(planned);
    return planned.containers
      .filter(({ stage, container }) => stage === 'serve' && container !== carried?.container)
      .map((container) => ({ ...container, dish: planned.dish.name }));
  });
  return [...Map.groupBy(served, ({ container }) => container).values()].map((same) => ({
    group: 'service ware',
    item: same[0]!.containerName,
    container: '',
    count: same.reduce((sum, { count }) => sum + count, 0),
    unit: 'each',
    hold: '',
    note: same.map(({ count, dish }) => (same.length === 1 ? dish : `${count} for ${dish}`)).join('; '),
  }));
}

/** The plates of those who work: the crew's that the kitchen pays, and other traders' that the client pays. */
function mealLines({ staff, vendors }: Choice['guests'], crew: number): PackOutLine[] {
  const line = (item: string, count: number, note: string): PackOutLine[] =>
    count === 0
      ? []
      : [
          {
            group: 'staff',
            item,
            container: '',
            count,
            unit: count === 1 ? 'meal' : 'meals',
            hold: '',
            note,
          },
        ];
  return [
    ...line('Staff meals', staff, crew > staff ? `for a crew of ${crew}: the others bring their own` : ''),
    ...line('Vendor meals', vendors, 'paid by the client'),
  ];
}
