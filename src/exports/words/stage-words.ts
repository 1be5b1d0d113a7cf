import type { PackStage } from '../../engine/food/recipe.ts';
import type { CheckStage } from '../../engine/safety/safety-check.ts';
import type { WordKey } from '../../words/catalogues.ts';
import type { Say } from '../../words/words-in.ts';

const CHECKS: Readonly<Record<CheckStage, WordKey>> = {
  receiving: 'safety.at.receiving',
  thawing: 'safety.at.thawing',
  'cold room': 'safety.at.cold-room',
  cooking: 'safety.at.cooking',
  cooling: 'safety.at.cooling',
  reheating: 'safety.at.reheating',
  transport: 'safety.at.transport',
  service: 'safety.at.service',
  'end of service': 'safety.at.end',
};

const PACKED: Readonly<Record<PackStage, WordKey>> = {
  chill: 'lists.stage.chill',
  carry: 'lists.stage.carry',
  serve: 'lists.stage.serve',
};

/** The part of the work that a check of food safety belongs to. One that this version does not know stays as it is. */
export function checkStageWords(stage: string, say: Say): string {
  return Object.hasOwn(CHECKS, stage) ? say(CHECKS[stage as CheckStage]) : stage;
}

/** What a container is for. One that this version does not know stays as it is. */
export function packStageWords(stage: string, say: Say): string {
  return Object.hasOwn(PACKED, stage) ? say(PACKED[stage as PackStage]) : stage;
}
