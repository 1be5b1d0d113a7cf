import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { TimedTask } from '../../engine/plan/clock/event-work.ts';
import type { PlanLoad } from '../form/day.ts';
import { stepWords } from '../words/step-words.ts';

/** What goes through ovens and the like of a day, in the order it goes in. `idOf` names a task, `atOf` a time. */
export function planLoads(
  tasks: readonly TimedTask[],
  { idOf, system }: { idOf: (task: TimedTask['task']) => string; system: MeasureSystem },
  atOf: (minute: number) => string,
): PlanLoad[] {
  return tasks
    .flatMap((timed) => (timed.time.load ? [{ ...timed, load: timed.time.load }] : []))
    .sort((a, b) => a.time.handsOff - b.time.handsOff)
    .map(({ task, time, load }) => ({
      task: idOf(task),
      recipeName: task.recipe.name,
      text: stepWords(task.step.text, task.batches, system),
      equipment: load.equipment.name,
      uses: load.uses,
      containers: load.containers ? `${load.containers.count} × ${load.containers.name}` : '',
      loads: load.loads,
      goesIn: atOf(time.handsOff),
      comesOut: atOf(time.ends),
      minutes: time.ends - time.handsOff,
      why: load.why,
    }));
}
