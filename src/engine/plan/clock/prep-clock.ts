import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import type { ScheduleProblem, Task } from '../../schedule/problem.ts';
import { chilledUsually, mostChilled } from './chilling.ts';
import type { ClockStep } from './clock-step.ts';
import type { CrewSpan } from './crew-hours.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { type PrepWork, prepProblem } from './prep-problem.ts';
import { dayProblem, type Solved } from './solved.ts';

/** Work for other days with its hours; as much of it chilled as lets the crew go home at its hour. */
export function solvedForward(
  prep: PrepWork,
  kitchen: ClockKitchen,
  crew: readonly CrewSpan[],
): { readonly steps: readonly ClockStep[]; readonly solution: Solved } {
  const { crew: stated } = kitchen;
  const gone = stated?.from === undefined ? Infinity : minutesOfClock(stated.from) + stated.each;
  const solving = (steps: readonly ClockStep[]) => ({
    steps,
    solution: solvedOnce({ ...prep, steps }, kitchen, crew),
  });
  const inTime = ({ steps, solution }: ReturnType<typeof solving>) =>
    steps.every(({ id, handsFor }) => (solution.at(id)?.begins ?? gone) + handsFor <= gone);
  if (prep.steps.every(({ cools }) => !cools?.chiller)) return solving(prep.steps);
  return mostChilled(prep.steps, solving, inTime) ?? solving(chilledUsually(prep.steps));
}

/** Work for other days with all that it needs; where that is not there at any hour, with hands alone, then with nothing. */
function solvedOnce(prep: PrepWork, kitchen: ClockKitchen, crew: readonly CrewSpan[]): Solved {
  const strict = forward(prep, kitchen, crew);
  if (strict.complete) return strict.solution;
  const anybody = crew.map(({ from, until, people }): CrewSpan => ({ from, until, people }));
  const loose = forward(prep, kitchen, anybody);
  return loose.complete ? loose.solution : forward({ ...prep, placed: [] }, kitchen, []).solution;
}

/** Work for other days by the crew's hours, and whether each step of it has a time. */
export function forward(
  prep: PrepWork,
  kitchen: ClockKitchen,
  crew: readonly CrewSpan[],
): { readonly solution: Solved; readonly complete: boolean } {
  const solution = dayProblem(prepProblem(prep, kitchen, crew)).solved('final');
  return { solution, complete: prep.steps.every(({ id }) => solution.at(id)) };
}

/** What has its time, for work that is placed around it. */
export function placedOf({ tasks }: ScheduleProblem, solution: Solved): Task[] {
  return tasks.flatMap(({ id, minutes, needs }): Task[] => {
    const at = solution.at(id);
    return at ? [{ id: `placed ${id}`, minutes, needs, fixed: at.begins }] : [];
  });
}
