import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { TimedTask } from '../../engine/plan/clock/event-work.ts';
import { inUseFrom } from '../../engine/plan/days/loads.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { PlanLoad } from '../form/day.ts';
import { statementsIn } from '../words/statement-text.ts';
import { stepWords } from '../words/step-words.ts';

/** What goes through ovens and the like of a day, in the order it goes in. `idOf` names a task, `atOf` a time. */
export function planLoads(
  tasks: readonly TimedTask[],
  {
    idOf,
    system,
    locale,
  }: { idOf: (task: TimedTask['task']) => string; system: MeasureSystem; locale: string },
  atOf: (minute: number) => string,
): PlanLoad[] {
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  return tasks
    .flatMap((timed) => (timed.time.load ? [{ ...timed, load: timed.time.load }] : []))
    .map((timed) => ({ ...timed, goesIn: timed.time.begins + inUseFrom(timed.time) }))
    .sort((a, b) => a.goesIn - b.goesIn)
    .map(({ task, time, load, goesIn }) => ({
      task: idOf(task),
      recipeName: task.recipe.name,
      text: stepWords(task.step.text, task.batches, system),
      equipment: load.equipment.name,
      uses: load.uses,
      containers: load.containers
        ? say('plan.counted', { count: load.containers.count, what: inWords(load.containers.name) })
        : '',
      loads: load.loads,
      goesIn: atOf(goesIn),
      comesOut: atOf(time.ends),
      minutes: time.ends - goesIn,
      why: load.why.map(inWords),
    }));
}
