import { addDays, type Day } from '../../engine/calendar/day.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { type ReturnFacts, washedBy } from '../../engine/kitchen/return-facts.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import type { ReturnLine } from '../form/return-list.ts';
import type { PackOutLine } from '../form/sheets.ts';
import { dateText } from '../words/date-text.ts';
import { type SayStatement, statementsIn } from '../words/statement-text.ts';
import { comesBack } from './comes-back.ts';

type Group = ReturnLine['group'];

/** In the order in which a crew unloads. */
const GROUPS: readonly Group[] = [
  'carriers',
  'containers',
  'service ware',
  'equipment',
  'kit',
  'add-ons',
  'drinks',
];
/** What is washed; equipment, kit and add-ons are where their entry states it. */
const WASHED: readonly Group[] = ['carriers', 'containers', 'service ware'];

/**
 * What comes back of an event, from the same lines as its pack-out: dishes by their containers, each kind once, drinks by
 * what may be unopened, all else as it went out. What is hired names the hirer and the day; hired things come first in a group.
 */
export function returnList(packOut: readonly PackOutLine[], plan: EventPlan, kitchen: Kitchen): ReturnLine[] {
  const inWords = statementsIn(kitchen.locale);
  const facts = factsByName(kitchen, inWords);
  const pans = new Set([...kitchen.containers.values()].map(({ name }) => inWords(name)));
  const drinks = new Set(plan.dishes.flatMap(({ dish }) => (dish.drink ? [dish.name] : [])));
  const back = packOut.filter(comesBack).flatMap((line) => {
    const thing = thingOf(line, drinks, pans);
    return thing ? [thing] : [];
  });
  const same = Map.groupBy(back, ({ group, item, unit }) => `${group}\n${item}\n${unit}`);
  return [...same.values()]
    .map((some) => {
      const { group, item, unit } = some[0]!;
      const count = some.reduce((sum, each) => sum + each.count, 0);
      const known = (group === 'drinks' ? undefined : facts.get(item)) ?? {};
      return { group, item, count, unit, ...wayBack(group, known, plan.input.date, kitchen.locale) };
    })
    .sort(
      (a, b) =>
        GROUPS.indexOf(a.group) - GROUPS.indexOf(b.group) ||
        Number(a.hiredFrom === '') - Number(b.hiredFrom === ''),
    );
}

/** What of a line is counted: a dish's containers; nothing of a dish that travels in none and is no drink. */
function thingOf(
  { group, item, container, count, unit }: PackOutLine,
  drinks: ReadonlySet<string>,
  pans: ReadonlySet<string>,
): Pick<ReturnLine, 'group' | 'item' | 'count' | 'unit'> | undefined {
  if (group === 'staff') return undefined;
  // What food is served from is one kind with what it travels in, where it is the same pan.
  if (group !== 'food') return { group: pans.has(item) ? 'containers' : group, item, count, unit };
  if (container !== '') return { group: 'containers', item: container, count, unit };
  return drinks.has(item) ? { group: 'drinks', item, count, unit } : undefined;
}

function wayBack(
  group: Group,
  facts: ReturnFacts,
  date: Day,
  locale: string,
): Pick<ReturnLine, 'hiredFrom' | 'by' | 'byText' | 'washed'> {
  const { hiredFrom = '', backWithin } = facts;
  const by = backWithin === undefined ? undefined : addDays(date, backWithin);
  return {
    hiredFrom,
    by: by ?? '',
    byText: by === undefined ? '' : dateText(by, locale),
    washed: WASHED.includes(group) || facts.washed ? washedBy(facts) : '',
  };
}

/** What the kitchen states of the way back, by the name that the pack-out list has for a thing. */
function factsByName(
  { containers, carriers, rentals, equipment, kit }: Kitchen,
  inWords: SayStatement,
): Map<string, ReturnFacts> {
  const things = [
    ...[...containers.values()].map(({ name, back }) => [inWords(name), back] as const),
    ...[carriers, rentals, equipment, kit].flatMap((kind) =>
      [...(kind?.values() ?? [])].map(({ name, back }) => [name, back] as const),
    ),
  ];
  return new Map(things.flatMap(([name, back]) => (back ? [[name, back]] : [])));
}
