import type { Clash } from './clashes.ts';
import type { ClockFinding } from './clock-finding.ts';

/** Whether a date has something found of it that it had not before, or the same later in the day or by more. */
export function isWorse(before: readonly ClockFinding[], after: readonly ClockFinding[]): boolean {
  return after.some((found) => {
    const same = (each: ClockFinding) => keyOf(each) === keyOf(found);
    const known = before.filter(same);
    if (after.filter(same).length > known.length) return true;
    if (found.kind === 'holding') return known.every((each) => isMore(found, each));
    return found.kind === 'after crew' && found.at > Math.max(...known.map(endOf));
  });
}

function isMore(found: ClockFinding, before: ClockFinding): boolean {
  return found.kind === 'holding' && before.kind === 'holding' && found.share.gt(before.share);
}

/** What a finding is about, whatever its minutes. */
function keyOf(found: ClockFinding): string {
  const { kind } = found;
  const event = 'event' in found ? found.event : '';
  return JSON.stringify([kind, event, subjectOf(found)]);
}

function subjectOf(found: ClockFinding): string {
  if (found.kind === 'waits') return found.waiting.dish.dish.recipe.id;
  if (found.kind === 'without control') return found.food.recipe.id;
  if (found.kind === 'holding') return found.keeps;
  return found.kind === 'clash' ? lackOf(found.clash) : '';
}

function lackOf({ of }: Clash): string {
  if (of.kind === 'skill') return `skill ${of.skill}`;
  return of.kind === 'equipment' ? `equipment ${of.equipment.id}` : of.kind;
}

function endOf(found: ClockFinding): number {
  return found.kind === 'after crew' ? found.at : 0;
}
