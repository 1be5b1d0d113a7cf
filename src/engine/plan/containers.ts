import Fraction from 'fraction.js';
import { convertFinishedFood } from '../food/finished-food.ts';
import type { PackRule, PackStage, Recipe } from '../food/recipe.ts';
import type { Container } from '../kitchen/container.ts';
import { type Quantity, timesQuantity } from '../measure/quantity.ts';
import { unitKind } from '../measure/units.ts';
import type { PlanFinding, PlannedContainer } from './event-plan.ts';
import { comesTo, percent, plainAmount, signedNumber, unitsText, wholePercent } from './figure-text.ts';

/** The order in which food passes through its containers. */
export const STAGES: readonly PackStage[] = ['chill', 'carry', 'serve'];

/**
 * The containers of a dish for each stage its recipe names: the finished amount ÷ what one holds, up to whole
 * containers. One holds what the recipe says for it, else its capacity at the working fill, of things that
 * cannot be split only whole ones. A last one that would be hardly begun is saved where the others take its food
 * below their brim, as a cook would. At least one stands on each service line, and where that takes more than the
 * food fills, it is spread evenly. A container the kitchen does not have, or whose measure the finished food
 * cannot be turned into, is a finding.
 */
export function containersFor(
  recipe: Recipe,
  finished: Quantity,
  lines: number,
  containers: ReadonlyMap<string, Container>,
): { containers: PlannedContainer[]; findings: PlanFinding[] } {
  const planned: PlannedContainer[] = [];
  const findings: PlanFinding[] = [];
  if (finished.amount.n === 0n) return { containers: planned, findings };
  for (const stage of STAGES) {
    const rule = recipe.pack[stage];
    if (!rule) continue;
    const container = containers.get(rule.container);
    if (!container) {
      findings.push({
        about: recipe.id,
        what: `${recipe.name} is packed in ${rule.container}, which the kitchen does not have`,
        wayOut: `write ${rule.container} under containers in kitchen.yaml, or name another in the recipe`,
      });
      continue;
    }
    const holds = rule.each ?? workingFill(container);
    const amount = convertFinishedFood(recipe, finished, holds.unit);
    if (amount) planned.push(fill(stage, container, rule, holds, amount, lines));
    else {
      findings.push({
        about: recipe.id,
        what: `${recipe.name} is made in ${unitsText(finished.unit)}, and ${container.name} is measured in ${unitsText(holds.unit)}`,
        wayOut: `say what a batch makes in ${unitsText(holds.unit)} too, as in makes: [${plainAmount(recipe.makes[0])}, … ${unitsText(holds.unit)}]`,
      });
    }
  }
  return { containers: planned, findings };
}

/** Capacity × working fill; of things that cannot be split whole ones, at least one. */
function workingFill({ holds, fill }: Container): Quantity {
  const filled = timesQuantity(holds, fill);
  if (unitKind(holds.unit) !== 'count') return filled;
  const whole = filled.amount.floor();
  return { amount: whole.n === 0n ? whole.add(1n) : whole, unit: holds.unit };
}

function fill(
  stage: PackStage,
  container: Container,
  rule: PackRule,
  holds: Quantity,
  amount: Quantity,
  lines: number,
): PlannedContainer {
  const exact = amount.amount.div(holds.amount);
  const saved = savesLast(exact, container, rule);
  const needed = saved ? exact.floor() : exact.ceil();
  const forced = stage === 'serve' && needed.lt(BigInt(lines));
  const count = forced ? BigInt(lines) : needed.n;
  const each = forced || saved ? { ...amount, amount: amount.amount.div(count) } : holds;
  const lastFull =
    saved && !forced ? new Fraction(1n) : forced ? exact.div(count) : exact.sub(needed).add(1n);
  return {
    stage,
    container: container.id,
    containerName: container.name,
    count: Number(count),
    lastFull,
    each,
    last: { ...amount, amount: amount.amount.sub(each.amount.mul(count - 1n)) },
    why: [
      ...(rule.each ? [] : [`${container.name} holds ${capacityText(container, holds)}`]),
      `${plainAmount(amount)} ÷ ${plainAmount(holds)} in each ${signedNumber(exact)}`,
      ...(forced ? [`${lines} lines take one each, ${wholePercent(lastFull)} full`] : []),
      ...(saved && !forced
        ? [`${count}, each filled to ${plainAmount(each)}, rather than one more for so little`]
        : []),
      ...(forced || saved || exact.equals(needed)
        ? []
        : [`up to whole ones: ${count}, the last ${wholePercent(lastFull)} full`]),
    ],
  };
}

/** A further container is not begun for less than this share of it. */
const HARDLY_BEGUN = new Fraction(1n, 20n);

/**
 * Whether the food of a hardly begun last container goes into the others: only what is poured or heaped, only
 * where the recipe sets no amount for each, and only while they stay below the brim.
 */
function savesLast(exact: Fraction, { holds, fill: share }: Container, rule: PackRule): boolean {
  const whole = exact.floor();
  const rest = exact.sub(whole);
  if (rule.each || unitKind(holds.unit) === 'count' || whole.n === 0n || rest.n === 0n) return false;
  return rest.lte(HARDLY_BEGUN) && exact.div(whole).mul(share).lt(1n);
}

function capacityText({ holds, fill: share }: Container, filled: Quantity): string {
  if (share.equals(1n)) return plainAmount(holds);
  return `${plainAmount(holds)} × ${percent(share)} fill ${comesTo(filled)}`;
}
