import { firstLists } from './first-lists.ts';
import { type BlockBegins, generatorOf } from './generate.ts';
import { justificationFor, SCHEDULES_PER_JUSTIFICATION } from './justify.ts';
import { bestScore, type LowerBounds } from './lower-bounds.ts';
import type { Model } from './model.ts';
import { NONE } from './network.ts';
import { childOf } from './offspring.ts';
import { listByKey, listOrder, type PriorityList } from './priority-lists.ts';
import { randomFrom } from './random.ts';
import { compareBegins, compareScores, type Goal, type Score, scoreOf } from './score.ts';

export interface SearchSetting {
  readonly goals: readonly Goal[];
  /** How many schedules may be made. */
  readonly schedules: number;
  readonly seed: number;
  /** Schedules that are known: the answer is none worse. */
  readonly known: readonly BlockBegins[];
  readonly bounds: LowerBounds;
  /** True: the first schedule that places everything is enough, however good it is. */
  readonly anyWill?: boolean;
}

export interface Found {
  readonly begins: BlockBegins;
  readonly score: Score;
  /** Schedules made. */
  readonly schedules: number;
}

interface Individual {
  readonly list: PriorityList;
  readonly begins: BlockBegins;
  readonly score: Score;
}

/** Lists that are kept: one for so many schedules that may be made, within limits. */
const POOL = { least: 12, most: 40, share: 40 } as const;

/**
 * The best schedule found: lists by several rules and chance, each justified, then children of good lists, until the
 * schedules are used up or the lower bounds are reached.
 */
export function search(model: Model, setting: SearchSetting): Found {
  const { size } = model;
  const generator = generatorOf(model);
  const order = listOrder(model);
  const random = randomFrom(setting.seed);
  const goal = bestScore(setting.bounds, setting.anyWill ? [] : setting.goals);
  let justify: ReturnType<typeof justificationFor> | undefined;
  let made = 0;
  let best: Individual | undefined;

  function keep(begins: BlockBegins): Individual {
    const score = scoreOf(model, setting.goals, begins);
    // What is left out has the least key: it goes first the next time.
    const individual = { list: listByKey(order, begins), begins, score };
    const difference = best ? compareScores(score, best.score) : -1;
    if (difference < 0 || (difference === 0 && best && compareBegins(begins, best.begins) < 0))
      best = individual;
    return individual;
  }

  function isProven(): boolean {
    return best !== undefined && goal.every((figure, index) => (best?.score[index] as number) <= figure);
  }

  function isOver(): boolean {
    return made >= setting.schedules || isProven();
  }

  function tried(list: PriorityList): Individual {
    made++;
    const plain = keep(generator.run(list));
    if (isOver() || made + SCHEDULES_PER_JUSTIFICATION > setting.schedules) return plain;
    justify ??= justificationFor(model, order, generator);
    made += SCHEDULES_PER_JUSTIFICATION;
    const justified = keep(justify(plain.begins));
    return compareScores(justified.score, plain.score) <= 0 ? justified : plain;
  }

  const pool: Individual[] = [];
  const room = Math.max(POOL.least, Math.min(POOL.most, Math.floor(setting.schedules / POOL.share)));
  for (const known of setting.known) {
    made++;
    add(pool, keep(generator.complete(known, listByKey(order, model.base))), room);
  }
  for (const list of firstLists(model, order, room, random)) {
    if (isOver()) break;
    add(pool, tried(list), room);
  }
  const pick = (): Individual => {
    const [a, b] = [pool[random.below(pool.length)], pool[random.below(pool.length)]] as [
      Individual,
      Individual,
    ];
    return compareScores(a.score, b.score) <= 0 ? a : b;
  };
  for (let pressed = false; !isOver(); pressed = !pressed)
    add(pool, tried(childOf(model, order, [pick(), pick()], pressed, random)), room);
  const { begins, score } = best ?? keep(new Int32Array(size).fill(NONE));
  return { begins, score, schedules: made };
}

/** Adds an individual; one like it is added once, and the worst of too many is dropped. */
function add(pool: Individual[], one: Individual, room: number): void {
  if (pool.some((other) => compareBegins(other.begins, one.begins) === 0)) return;
  pool.push(one);
  if (pool.length <= room) return;
  let worst = 0;
  for (let index = 1; index < pool.length; index++)
    if (compareScores((pool[index] as Individual).score, (pool[worst] as Individual).score) > 0)
      worst = index;
  pool.splice(worst, 1);
}
