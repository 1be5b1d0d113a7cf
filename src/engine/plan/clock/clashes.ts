import type { Equipment } from '../../kitchen/kitchen.ts';
import { inUseFrom } from '../days/loads.ts';
import type { TimedStep } from './clock-step.ts';
import { type CrewSpan, spanAt, withSkill } from './crew-hours.ts';

/** What work shares: pairs of hands, those of people with a skill, pieces of one kind of equipment. */
export type Shared =
  | { readonly kind: 'hands' }
  | { readonly kind: 'skill'; readonly skill: string }
  | { readonly kind: 'equipment'; readonly equipment: Equipment };

/** A time at which more is asked for than there is. */
export interface Clash {
  readonly of: Shared;
  /** Minutes from the midnight of the date. */
  readonly from: number;
  readonly until: number;
  /** The most that is asked for at once in that time, and the least there is then. */
  readonly asked: number;
  readonly has: number;
  readonly what: readonly string[];
}

interface Use {
  readonly of: Shared;
  readonly what: string;
  readonly from: number;
  readonly until: number;
  readonly amount: number;
}

/** Where a date's steps ask for more than there is; times that touch are one. Hands are not counted where no crew is stated. */
export function clashesOf(steps: readonly TimedStep[], crew: readonly CrewSpan[]): Clash[] {
  const uses = steps.flatMap((step) => usesOf(step, crew.length > 0));
  return [...Map.groupBy(uses, ({ of }) => keyOf(of)).values()].flatMap((same) => clashesIn(same, crew));
}

function usesOf(timed: TimedStep, isCrewStated: boolean): Use[] {
  const { batch, step, begins, handsOff, ends, hands, load } = timed;
  const what = `${batch.recipe.name}: ${step.text}`;
  const atIt = { what, from: begins, until: handsOff };
  return [
    ...(isCrewStated ? [{ ...atIt, of: { kind: 'hands' } as const, amount: hands }] : []),
    ...(isCrewStated && step.skill !== undefined
      ? [{ ...atIt, of: { kind: 'skill', skill: step.skill } as const, amount: 1 }]
      : []),
    ...(load
      ? [
          {
            what,
            of: { kind: 'equipment', equipment: load.equipment } as const,
            from: begins + inUseFrom(timed),
            until: ends,
            amount: load.uses,
          },
        ]
      : []),
  ].filter(({ from, until }) => until > from);
}

function keyOf(of: Shared): string {
  return of.kind === 'hands'
    ? 'hands'
    : of.kind === 'skill'
      ? `skill ${of.skill}`
      : `gear ${of.equipment.id}`;
}

function clashesIn(uses: readonly Use[], crew: readonly CrewSpan[]): Clash[] {
  const [{ of }] = uses as [Use];
  const changes = of.kind === 'equipment' ? [] : crew.flatMap(({ from, until }) => [from, until]);
  const times = [...new Set([...uses.flatMap(({ from, until }) => [from, until]), ...changes])].sort(
    (a, b) => a - b,
  );
  const found: Clash[] = [];
  for (const [index, from] of times.entries()) {
    const until = times[index + 1];
    const at = uses.filter((use) => use.from <= from && use.until > from);
    const asked = at.reduce((sum, { amount }) => sum + amount, 0);
    const has = hasAt(of, from, crew);
    if (until === undefined || asked <= has) continue;
    const what = at.map((use) => use.what);
    const last = found.at(-1);
    if (last?.until === from) {
      const both = [...new Set([...last.what, ...what])];
      const most = { asked: Math.max(last.asked, asked), has: Math.min(last.has, has) };
      found[found.length - 1] = { ...last, ...most, until, what: both };
    } else found.push({ of, from, until, asked, has, what: [...new Set(what)] });
  }
  return found;
}

function hasAt(of: Shared, minute: number, crew: readonly CrewSpan[]): number {
  if (of.kind === 'equipment') return of.equipment.count;
  const span = spanAt(crew, minute);
  if (!span) return 0;
  return of.kind === 'hands' ? span.people : withSkill(span, of.skill);
}
