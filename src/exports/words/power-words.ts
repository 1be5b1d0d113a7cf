import type { PowerPlan } from '../../engine/plan/load/power.ts';
import type { Say } from '../../words/words-in.ts';
import { clockOf } from './clock-text.ts';

/** Which pieces find no circuit, and what the venue has; the same in the plan and in what `check` says. */
export function offText({ off, circuits, most }: PowerPlan, say: Say): string {
  const kinds = Map.groupBy(circuits, ({ amperes }) => amperes);
  return say('power.off', {
    pieces: off
      .map(({ name, amperes, from, until }) =>
        say('power.piece', { name, n: String(amperes), from: clockOf(from), until: clockOf(until) }),
      )
      .join(', '),
    has:
      circuits.length === 0
        ? say('power.none')
        : [...kinds]
            .map(([amperes, same]) => say('power.circuits', { count: same.length, n: String(amperes) }))
            .join(', '),
    most: String(most),
  });
}

/** What would carry them. */
export function wayOutText({ lacking }: PowerPlan, say: Say): string {
  return say('power.off.way', { lacking: String(lacking) });
}
