import type { KitBase, KitVenue } from '../../engine/kitchen/kit.ts';
import { unitWord } from '../../engine/measure/find-unit.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import { comesTo, oneOrMany, plainAmount, plainNumber } from '../../engine/plan/figure-text.ts';
import type { KitPart, PackedKit } from '../../engine/plan/load/kit.ts';
import type { Say } from '../../words/words-in.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import type { PackOutLine } from '../form/sheets.ts';
import { allOf, anyOf } from '../words/statement-text.ts';

/** The lines of the pack-out list for what goes along by rule. */
export function kitLines(
  kit: readonly PackedKit[],
  { say, locale, system }: { say: Say; locale: string; system: MeasureSystem },
): PackOutLine[] {
  return kit.map(({ item, count, parts, assumed }) => ({
    group: 'kit',
    item: item.name,
    container: '',
    count: Number(count.amount.n),
    unit: unitWord(count.unit, count.amount),
    hold: '',
    ...(item.usedUp && { usedUp: true as const }),
    note: [
      item.note ?? '',
      assumed.length === 0 ? '' : say('kit.assumed', { facts: anyOf(factsIn(assumed, say), locale) }),
    ]
      .filter((text) => text !== '')
      .join('; '),
    why: [...parts.map((part) => partText(part, say, system)), ...wholeText(parts, count, say)],
  }));
}

/** What a rule comes to: `1 per 50 guests: 94 guests = 1.88 each`. */
function partText({ rule, of, comes }: KitPart, say: Say, system: MeasureSystem): string {
  const { written, base } = rule;
  if (of === undefined)
    return say('kit.rule-unknown', { rule: written, of: manyOf(base, say), comes: comesTo(comes) });
  if (base.kind === 'event') return say('kit.rule-once', { rule: written, comes: comesTo(comes) });
  const count = plainNumber(of);
  const counted = say('kit.counted', {
    kind: base.kind,
    n: oneOrMany(of, system),
    count,
    name: nameOf(base),
  });
  return say('kit.rule', { rule: written, of: counted, comes: comesTo(comes) });
}

/** The sum of several rules, and what it is rounded up to. */
function wholeText(parts: readonly KitPart[], count: PackedKit['count'], say: Say): string[] {
  const [first, ...others] = parts.map(({ comes }) => comes);
  if (!first) return [];
  const amount = others.reduce((sum, each) => sum.add(each.amount), first.amount);
  const sum = { amount, unit: count.unit };
  return [
    ...(others.length === 0
      ? []
      : [
          say('why.sum', {
            amounts: parts.map(({ comes }) => plainAmount(comes)).join(' + '),
            result: comesTo(sum),
          }),
        ]),
    ...(amount.equals(count.amount)
      ? []
      : [say('why.up-to-whole', { amount: plainAmount(sum), whole: plainAmount(count) })]),
  ];
}

/** What nobody has stated and kit goes by, fact by fact, with the things that go along. */
export function kitFindings(
  kit: readonly PackedKit[],
  say: Say,
  locale: string,
): PrepPlanDocument['findings'] {
  const about = say('kit.heading');
  const unsure = kit.filter(({ assumed }) => assumed.length > 0);
  const facts = [...new Set(unsure.flatMap(({ assumed }) => assumed))];
  const uncounted = kit.flatMap(({ item, parts }) =>
    parts.filter(({ of }) => of === undefined).map(({ rule }) => ({ item, base: rule.base })),
  );
  const byBase = Map.groupBy(uncounted, ({ base }) => manyOf(base, say));
  return [
    ...(unsure.length === 0
      ? []
      : [
          {
            about,
            what: say('kit.found.assumed', {
              facts: anyOf(factsIn(facts, say), locale),
              items: allOf(
                unsure.map(({ item }) => item.name),
                locale,
              ),
            }),
            wayOut: say('kit.found.assumed.way', {
              written: facts.map((fact) => say('kit.written', { fact })).join(', '),
            }),
          },
        ]),
    ...[...byBase].map(([of, same]) => ({
      about,
      what: say('kit.found.uncounted', {
        of,
        items: allOf([...new Set(same.map(({ item }) => item.name))], locale),
      }),
      wayOut: say('kit.found.uncounted.way'),
    })),
  ];
}

function manyOf(base: KitBase, say: Say): string {
  return say('kit.many', { kind: base.kind, name: nameOf(base) });
}

function nameOf(base: KitBase): string {
  return 'name' in base ? base.name : '';
}

function factsIn(venue: readonly KitVenue[], say: Say): string[] {
  return venue.map((fact) => say('kit.fact', { fact }));
}
