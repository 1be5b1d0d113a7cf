import type { PackOutLine } from '../../exports/form/sheets.ts';
import type { Say } from '../../words/words-in.ts';

const GROUPS = {
  food: 'lists.food',
  carriers: 'lists.carriers',
  'service ware': 'lists.service-ware',
  equipment: 'lists.equipment',
  kit: 'lists.kit',
  staff: 'lists.staff',
  'add-ons': 'lists.add-ons',
} as const;

/** What goes along under its headings: `food, hot`. Raw food has one of its own, which says where it stands. */
export function loadGroups(lines: readonly PackOutLine[], say: Say): Map<string, PackOutLine[]> {
  return Map.groupBy(lines, ({ group, hold, raw }) =>
    [
      raw ? say('lists.raw-group', { group: say(GROUPS[group]) }) : say(GROUPS[group]),
      hold && say('lists.hold', { how: hold }),
      raw ? say('labels.below-ready') : '',
    ]
      .filter(Boolean)
      .join(', '),
  );
}
