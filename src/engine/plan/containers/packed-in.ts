import type { Recipe } from '../../food/recipe.ts';
import type { Container } from '../../kitchen/container.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { PlannedContainer, PlannedDish } from '../event-plan.ts';
import { containersFor, STAGES } from './containers.ts';

/**
 * What a recipe's food is packed in, stage by stage, one entry for each kind of container: those of the dishes that it
 * is served as, else of what is made of it as a part, which is chilled and kept, and served from containers of its own
 * only where it is given out beside a dish.
 */
export function packedIn(
  recipe: Recipe,
  makes: Quantity,
  dishes: readonly Pick<PlannedDish, 'dish' | 'containers'>[],
  containers: ReadonlyMap<string, Container>,
  beside: readonly Pick<PlannedDish, 'dish' | 'containers'>[] = [],
): Pick<PlannedContainer, 'stage' | 'containerName' | 'count'>[] {
  const served = ownOf(recipe, dishes);
  const packed =
    served.length > 0
      ? served
      : [
          ...containersFor(recipe, makes, 1, containers).containers.filter(({ stage }) => stage !== 'serve'),
          ...ownOf(recipe, beside).filter(({ stage }) => stage === 'serve'),
        ];
  return STAGES.flatMap((stage) => {
    const kinds = Map.groupBy(
      packed.filter((each) => each.stage === stage),
      ({ container }) => container,
    );
    return [...kinds.values()].map((same) => ({
      stage,
      containerName: same[0]?.containerName ?? '',
      count: same.reduce((sum, each) => sum + each.count, 0),
    }));
  });
}

function ownOf(
  recipe: Recipe,
  dishes: readonly Pick<PlannedDish, 'dish' | 'containers'>[],
): readonly PlannedContainer[] {
  return dishes.filter(({ dish }) => dish.recipe.id === recipe.id).flatMap((each) => each.containers);
}
