import Fraction from 'fraction.js';
import { convertFinishedFood } from '../../food/finished-food.ts';
import type { PackRule, PackStage, Recipe } from '../../food/recipe.ts';
import type { Container } from '../../kitchen/container.ts';
import { type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { unitKind } from '../../measure/units.ts';
import type { PlanFinding, PlannedContainer } from '../event-plan.ts';
import { comesTo, percent, plainAmount, signedNumber, unitsText, wholePercent } from '../figure-text.ts';

/** The order in which food passes through its containers. */
export const STAGES: readonly PackStage[] = ['chill', 'carry', 'serve'];

/**
 * The containers of a dish for each stage its recipe names: the finished amount ÷ what one holds, up to whole
 * containers. One holds what the recipe says for it, else its capacity at the working fill, of things that
 * cannot be split only whole ones. A last one that would be hardly begun is saved where the others take its food,
 * as a cook would: what is poured or heaped while it stays below their brim, one or two pieces more on a tray. At
 * least one stands on each service line, and where that takes more than the
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
        what: `${recipe.name} is packed in ${rule.container}, which kitchen.yaml does not have`,
        wayOut: `add ${rule.container} under containers in kitchen.yaml, or name another one in the recipe`,
      });
      continue;
    }
    const holds = rule.each ?? workingFill(container);
    const amount = convertFinishedFood(recipe, finished, holds.unit);
    if (amount) planned.push(fill(stage, container, rule, holds, amount, recipe, lines));
    else {
      findings.push({
        about: recipe.id,
        what: `${recipe.name} is made in ${unitsText(finished.unit)}, but ${container.name} is measured in ${unitsText(holds.unit)}`,
        wayOut: `add what a batch makes in ${unitsText(holds.unit)}, such as makes: [${plainAmount(recipe.makes[0])}, … ${unitsText(holds.unit)}]`,
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
  recipe: Recipe,
  lines: number,
): PlannedContainer {
  const exact = amount.amount.div(holds.amount);
  const needed = containersNeeded(exact, container, recipe, { stage, each: rule.each });
  const saved = needed.lt(exact);
  const forced = stage === 'serve' && needed.lt(BigInt(lines));
  const count = forced ? BigInt(lines) : needed.n;
  // Poured food is spread evenly; of pieces the last container has the one too many.
  const even = forced || (saved && (count === 1n || unitKind(holds.unit) !== 'count'));
  const each = even ? { ...amount, amount: amount.amount.div(count) } : holds;
  const last = { ...amount, amount: amount.amount.sub(each.amount.mul(count - 1n)) };
  const lastFull = forced || !even ? last.amount.div(holds.amount) : new Fraction(1n);
  return {
    stage,
    container: container.id,
    containerName: container.name,
    count: Number(count),
    lastFull,
    each,
    last,
    why: [
      ...(rule.each ? [] : [`${container.name} holds ${capacityText(container, holds)}`]),
      `${plainAmount(amount)} ÷ ${plainAmount(holds)} in each ${signedNumber(exact)}`,
      ...(forced ? [`${lines} lines take one each, ${wholePercent(lastFull)} full`] : []),
      ...(saved && !forced
        ? [
            even
              ? `${count}, each filled to ${plainAmount(each)}, rather than one more for so little`
              : `${count}, the last with ${plainAmount(last)}, rather than one more for so little`,
          ]
        : []),
      ...(forced || saved || exact.equals(needed)
        ? []
        : [`up to whole ones: ${count}, the last ${wholePercent(lastFull)} full`]),
    ],
  };
}

/** A further container is not begun for this share of one or less, where the kitchen names no other. */
const HARDLY_BEGUN = new Fraction(1n, 20n);

/**
 * Whole containers for an exact number of them: up to the next, or down where the last would be hardly begun and the
 * others take its food. Pieces lie side by side, so one more fits a tray whatever the recipe counts for it. What is
 * poured or heaped goes only where the recipe sets no amount for each, while it stays below the brim, and never where
 * it is chilled: there its depth is what cools it.
 */
export function containersNeeded(
  exact: Fraction,
  { holds, fill: share, over }: Container,
  { makes }: Pick<Recipe, 'makes'>,
  { stage, each }: { readonly stage?: PackStage | undefined; readonly each?: Quantity | undefined } = {},
): Fraction {
  const whole = exact.floor();
  const rest = exact.sub(whole);
  if (rest.n === 0n || whole.n === 0n || rest.gt(over ?? HARDLY_BEGUN)) return exact.ceil();
  const counted = unitKind((each ?? holds).unit) === 'count';
  const fits = counted
    ? makes.every(({ unit }) => unitKind(unit) !== 'volume')
    : !each && stage !== 'chill' && exact.div(whole).mul(share).lt(1n);
  return fits ? whole : exact.ceil();
}

function capacityText({ holds, fill: share }: Container, filled: Quantity): string {
  if (share.equals(1n)) return plainAmount(holds);
  return `${plainAmount(holds)} × ${percent(share)} fill ${comesTo(filled)}`;
}
