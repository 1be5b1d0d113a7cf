import type { Say } from '../../words/words-in.ts';

/** Standing cautions for the crew; every plan and sheet shows them. */
export function crewCautions(say: Say): string[] {
  return [
    say('cautions.crew.code'),
    say('cautions.crew.labels'),
    say('cautions.crew.traces'),
    say('cautions.crew.first'),
  ];
}
