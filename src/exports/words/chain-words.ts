import { scaleOf } from '../../engine/measure/temperature.ts';
import type { ChainLink } from '../../engine/plan/clock/day-chain.ts';
import type { LaterWay, More } from '../../engine/plan/clock/later-ways.ts';
import { limitTemperatureText } from '../../engine/safety/limit-said.ts';
import { afterText, clockOf } from './clock-text.ts';
import { startWhy } from './clock-why.ts';
import type { ClockWords } from './clock-words.ts';

/** What words about a chain need besides the figures. */
export interface ChainWords extends Omit<ClockWords, 'locale'> {
  /** Names of events by their ids. */
  readonly occasions: ReadonlyMap<string, string>;
}

/** A link of a day's chain as it is read. */
export interface ChainLine {
  readonly begins: string;
  /** Empty for a moment. */
  readonly ends: string;
  readonly what: string;
  /** Why it begins then; empty where what follows says it. */
  readonly why: string;
}

/** What of a chain is done, when, and why then. */
export function chainLine({ what, begins, ends }: ChainLink, words: ChainWords): ChainLine {
  const { say, occasions } = words;
  const clock = what.kind !== 'step' || what.step.clock;
  const at = clock ? clockOf : afterText;
  const line = { begins: at(begins), ends: ends > begins ? at(ends) : '', why: '' };
  const partOf = (part: string, event: string) =>
    say('day.part-for', { part, event: occasions.get(event) ?? event });
  switch (what.kind) {
    case 'step': {
      const { step } = what;
      const spoken = { recipe: step.batch.recipe.name, number: step.number };
      return { ...line, what: say('clock.chain.step', spoken), why: clock ? startWhy(step, words) : '' };
    }
    case 'cooling':
      return { ...line, what: coolingLink(what, words) };
    case 'serve':
      return { ...line, what: partOf(say('clock.course', { course: what.course }), what.event) };
    default:
      return { ...line, what: partOf(say(`day.${what.kind}`), what.event) };
  }
}

/** Of what food cools in two stages, each says to where. */
function coolingLink(
  { step: { batch, cools }, to }: Extract<ChainLink['what'], { kind: 'cooling' }>,
  { say, system }: ChainWords,
): string {
  const recipe = batch.recipe.name;
  if (to)
    return say('clock.chain.cooling-to', {
      recipe,
      temperature: limitTemperatureText(to, scaleOf(system)),
    });
  return say(cools?.first ? 'clock.chain.cooling-cold' : 'clock.chain.cooling', { recipe });
}

/** A link in one line, `10:30–11:00 Load: Silver wedding`. */
export function chainText(link: ChainLink, words: ChainWords): string {
  const { begins, ends, what, why } = chainLine(link, words);
  const spoken = { time: ends ? `${begins}–${ends}` : begins, what, why };
  return why ? words.say('clock.chain.line-why', spoken) : words.say('clock.chain.line', spoken);
}

/** What was tried to let a step begin later, and what came of it. */
export function laterText({ more, begins }: LaterWay, words: ChainWords): string {
  const what = moreText(more, words);
  return begins === undefined
    ? words.say('clock.later.no', { what })
    : words.say('clock.later.with', { what, time: clockOf(begins) });
}

function moreText(more: More, { say, stations, equipment }: ChainWords): string {
  switch (more.kind) {
    case 'people':
      return say('clock.later.people');
    case 'skill':
      return say('clock.later.skill', { skill: more.skill });
    case 'station':
      return say('clock.way.station', { station: stations.get(more.station) ?? more.station });
    case 'equipment':
      return say('clock.way.equipment', {
        equipment: equipment.get(more.equipment)?.name ?? more.equipment,
      });
  }
}
