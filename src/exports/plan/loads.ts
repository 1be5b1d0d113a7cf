import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { TimedTask } from '../../engine/plan/clock/event-work.ts';
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
    .sort((a, b) => a.time.handsOff - b.time.handsOff)
    .map(({ task, time, load }) => ({
      task: idOf(task),
      recipeName: task.recipe.name,
      text: stepWords(task.step.text, task.batches, system),
      equipment: load.equipment.name,
      uses: load.uses,
      containers: load.containers
        ? say('plan.counted', { count: load.containers.count, what: inWords(load.containers.name) })
        : '',
      loads: load.loads,
      goesIn: atOf(time.handsOff),
      comesOut: atOf(time.ends),
      minutes: time.ends - time.handsOff,
      why: load.why.map(inWords),
    }));
}
