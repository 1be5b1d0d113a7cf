import Fraction from 'fraction.js';
import { convertFinishedFood } from '../../food/finished-food.ts';
import type { PackRule, PackStage, Recipe } from '../../food/recipe.ts';
import type { Container } from '../../kitchen/container.ts';
import { type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { unitKind } from '../../measure/units.ts';
import { type Statement, statement } from '../../text/statement.ts';
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
        what: statement('found.container-missing', { recipe: recipe.name, container: rule.container }),
        wayOut: statement('found.container-missing.way', { container: rule.container }),
      });
      continue;
    }
    const holds = rule.each ?? workingFill(container);
    const amount = convertFinishedFood(recipe, finished, holds.unit);
    if (amount) planned.push(fill(stage, container, rule, holds, amount, recipe, lines));
    else {
      findings.push({
        about: recipe.id,
        what: statement('found.container-measure', {
          recipe: recipe.name,
          units: unitsText(finished.unit),
          container: container.name,
          others: unitsText(holds.unit),
        }),
        wayOut: statement('found.add-makes', {
          units: unitsText(holds.unit),
          makes: plainAmount(recipe.makes[0]),
        }),
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
      ...(rule.each ? [] : [capacitySaid(container, holds)]),
      statement('why.in-each', {
        amount: plainAmount(amount),
        holds: plainAmount(holds),
        result: signedNumber(exact),
      }),
      ...(forced
        ? [statement('why.one-each-line', { lines: String(lines), share: wholePercent(lastFull) })]
        : []),
      ...(saved && !forced
        ? [
            even
              ? statement('why.filled-to', { count: String(count), amount: plainAmount(each) })
              : statement('why.last-with', { count: String(count), amount: plainAmount(last) }),
          ]
        : []),
      ...(forced || saved || exact.equals(needed)
        ? []
        : [statement('why.containers', { count: String(count), share: wholePercent(lastFull) })]),
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

function capacitySaid({ name, holds, fill: share }: Container, filled: Quantity): Statement {
  const values = { container: name, amount: plainAmount(holds) };
  return share.equals(1n)
    ? statement('why.holds', values)
    : statement('why.holds-filled', { ...values, share: percent(share), result: comesTo(filled) });
}
