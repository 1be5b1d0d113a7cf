import type { ScheduleProblem } from '../../schedule/problem.ts';
import type { Reason } from '../../schedule/result.ts';
import type { ClockStep, CooledTo, InUseBy, StartReason, TimedStep } from './clock-step.ts';
import { coolOf, firstCoolOf } from './cooling-tasks.ts';
import type { Solved } from './solved.ts';

/** What a solution is read with. */
interface Reading {
  readonly steps: ReadonlyMap<string, ClockStep>;
  readonly solution: Solved;
  readonly direction: ScheduleProblem['direction'];
}

/**
 * Steps with the times found for them, and what keeps each there, one of `all` steps of the date. `clock` is false where only the time since the
 * beginning is known, `critical` are the ids on a longest chain. A step without a time is left out.
 */
export function timedSteps(
  steps: readonly ClockStep[],
  solution: Solved,
  direction: ScheduleProblem['direction'],
  all: readonly ClockStep[],
  critical: ReadonlySet<string>,
  clock = true,
): TimedStep[] {
  const reading = { steps: new Map(all.map((step) => [step.id, step])), solution, direction };
  return steps.flatMap((step): TimedStep[] => {
    const at = solution.at(step.id);
    if (!at) return [];
    return [
      {
        ...step,
        begins: at.begins,
        handsOff: at.begins + step.handsFor,
        ends: at.ends,
        coldBy: solution.at(coolOf(step.id))?.ends,
        cooledTo: cooledTo(step, solution),
        clock,
        critical: critical.has(step.id),
        why: reasonOf(at.placed.reason, at.begins, reading),
      },
    ];
  });
}

function cooledTo({ id, cools }: ClockStep, solution: Solved): CooledTo | undefined {
  const at = solution.at(firstCoolOf(id))?.ends;
  return cools?.first && at !== undefined ? { temperature: cools.first.temperature, at } : undefined;
}

function reasonOf(reason: Reason, begins: number, reading: Reading): StartReason {
  const { direction } = reading;
  if (reason.kind === 'window')
    return direction === 'early'
      ? { kind: 'crew comes', at: begins }
      : { kind: 'crew goes', at: reason.window.until };
  if (reason.kind === 'resource') return inUse(reason, begins, reading);
  return reason.kind === 'lag' ? lagReason(reason, reading) : { kind: 'none' };
}

function inUse(
  reason: Extract<Reason, { kind: 'resource' }>,
  begins: number,
  { steps, direction }: Reading,
): StartReason {
  const [what, ...name] = reason.resource.split(' ');

  const by = holderOf(reason.task, steps);
  if (!by)
    return direction === 'early'
      ? { kind: 'crew comes', at: begins }
      : { kind: 'crew goes', at: reason.minute };
  return {
    kind: 'in use',
    what: what === 'hands' || what === 'station' || what === 'skill' ? what : 'equipment',
    name: name.join(' '),
    by,
    ...(direction === 'early' ? { until: reason.minute + 1 } : { from: reason.minute }),
  };
}

function holderOf(task: string | null, steps: Reading['steps']): InUseBy | undefined {
  const id = task?.replace(/^placed /, '') ?? '';
  const step = steps.get(id) ?? cooledStep(id, steps);
  if (step) return { kind: 'step', recipe: step.batch.recipe.name };
  const [kind, event = ''] = id.split(' ');
  return kind === 'pack' || kind === 'load' ? { kind, event } : undefined;
}

function lagReason({ task, side }: Extract<Reason, { kind: 'lag' }>, reading: Reading): StartReason {
  const { steps, solution, direction } = reading;
  const other = solution.at(task);
  if (!other) return { kind: 'none' };
  const next = steps.get(task);
  if (next) {
    const of = { recipe: next.batch.recipe.name, number: next.number };
    // What may wait only so long is held by the end of what it comes after, from whichever side all is placed.
    return (direction === 'early') === (side === 'least')
      ? { kind: 'after', ...of, at: other.ends }
      : { kind: 'next', of: { kind: 'step', ...of }, at: other.begins };
  }
  const [kind = '', ...rest] = task.split(' ');
  const [event = ''] = rest;
  if (kind === 'pack') return { kind: 'next', of: { kind, event }, at: other.ends };
  if (kind === 'load' || kind === 'serve') return { kind: 'next', of: { kind, event }, at: other.begins };
  return coldReason(task, reading);
}

/** The step whose food a task cools. */
function cooledStep(cooling: string, steps: Reading['steps']): ClockStep | undefined {
  return [...steps.values()].find(({ id }) => cooling === firstCoolOf(id) || cooling === coolOf(id));
}

/** A step that is cooled waits for nothing but its own cold: what that is for is the reason, or what chills it. */
function coldReason(cooling: string, reading: Reading): StartReason {
  const { steps, solution } = reading;
  const step = cooledStep(cooling, steps);
  if (!step) return { kind: 'none' };
  for (const id of [firstCoolOf(step.id), coolOf(step.id)]) {
    const at = solution.at(id);
    if (at?.placed.reason.kind === 'resource') return inUse(at.placed.reason, at.begins, reading);
  }
  const placed = solution.at(coolOf(step.id))?.placed;
  if (placed?.reason.kind !== 'lag') return { kind: 'none' };
  const [kind = '', event = ''] = placed.reason.task.split(' ');
  return kind === 'load' || kind === 'pack'
    ? { kind: 'next', of: { kind: 'cold', event, first: cooledTo(step, solution) }, at: placed.end }
    : { kind: 'none' };
}
