import { type BlockBegins, generatorOf } from './generate.ts';
import { justificationFor, SCHEDULES_PER_JUSTIFICATION } from './justify.ts';
import { bestScore, type LowerBounds, tailsOf } from './lower-bounds.ts';
import type { Model } from './model.ts';
import { NONE } from './network.ts';
import { crossed, listByKey, listOrder, movedForward, type PriorityList } from './priority-lists.ts';
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

const POOL = 24;

/**
 * The best schedule found: lists by several rules and chance, each justified, then children of good lists, until the
 * schedules are used up or the lower bounds are reached.
 */
export function search(model: Model, setting: SearchSetting): Found {
  const { size } = model;
  const generator = generatorOf(model);
  const order = listOrder(model);
  const random = randomFrom(setting.seed);
  const goal = bestScore(setting.bounds, setting.goals);
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

  const tails = tailsOf(model);
  const rules: ((block: number) => number)[] = [
    (block) => -(tails[block] as number),
    (block) => (model.minutes[block] as number) - (tails[block] as number),
    (block) => model.base[block] as number,
    (block) => -(order.later[block] as Int32Array).length,
    (block) => -(model.weight[block] as number),
    (block) => model.latest[block] as number,
  ];
  const lists = rules.map((rule) =>
    listByKey(
      order,
      Int32Array.from({ length: size }, (_, block) => rule(block)),
    ),
  );
  for (const known of setting.known) {
    made++;
    keep(generator.complete(known, lists[0] as PriorityList));
  }
  const pool: Individual[] = [];
  const longest = Math.max(1, ...tails);
  const noisy = (keys: (block: number) => number, spread: number): PriorityList =>
    listByKey(
      order,
      Int32Array.from({ length: size }, (_, block) => keys(block) + random.below(spread)),
    );
  for (let index = 0; index < POOL && !isOver(); index++) {
    const list =
      lists[index] ??
      noisy(rules[index % 2] as (block: number) => number, 1 + Math.floor((longest * (1 + (index % 4))) / 6));
    add(pool, tried(list));
  }
  const pick = (): Individual => {
    const [a, b] = [
      pool[random.below(pool.length)] as Individual,
      pool[random.below(pool.length)] as Individual,
    ];
    return compareScores(a.score, b.score) <= 0 ? a : b;
  };
  while (!isOver()) {
    const child = crossed(pick().list, pick().list, random);
    for (let place = 1; place < size; place++)
      if (random.below(20) === 0) movedForward(order, child, place, random);
    add(pool, tried(child));
  }
  const { begins, score } = best ?? keep(new Int32Array(size).fill(NONE));
  return { begins, score, schedules: made };
}

/** Adds an individual; one like it is added once, and the worst of too many is dropped. */
function add(pool: Individual[], one: Individual): void {
  if (pool.some((other) => compareBegins(other.begins, one.begins) === 0)) return;
  pool.push(one);
  if (pool.length <= POOL) return;
  let worst = 0;
  for (let index = 1; index < pool.length; index++)
    if (compareScores((pool[index] as Individual).score, (pool[worst] as Individual).score) > 0)
      worst = index;
  pool.splice(worst, 1);
}
