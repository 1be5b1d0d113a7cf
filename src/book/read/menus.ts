import type { Recipe } from '../../engine/food/recipe.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { CrewMeal } from '../../engine/menu/crew-meal.ts';
import type { Book } from '../book.ts';
import type { ContentText } from '../files/content-texts.ts';
import { KITCHENS_CREW_MEAL } from '../item.ts';
import type { Ledger } from '../ledger.ts';
import { readItem } from '../link/grammar/reading.ts';
import { linkAddOn } from '../link/menu/add-on.ts';
import { linkCrewMeal } from '../link/proposal/crew-meal.ts';
import { ingredientsIn } from '../uses.ts';
import { readIngredients } from './ingredients.ts';
import { type ReadKitchen, readKitchen, readPart } from './kitchen.ts';
import { readPackages } from './packages.ts';
import { readPriceLists, settlePins } from './price-lists.ts';
import { readRecipes } from './recipes.ts';
import { readSuppliers } from './suppliers.ts';

/** The files that proposals, offers and events rest on, in the order in which they rest on each other. */
export interface MenuTexts {
  readonly kitchen: readonly ContentText[];
  readonly suppliers: readonly ContentText[];
  /** The foods that come with Salver. */
  readonly storeRoom: readonly ContentText[];
  readonly ingredients: readonly ContentText[];
  /** Files of ingredients under names that are not read. */
  readonly misnamedFoods: readonly ContentText[];
  readonly prices: readonly ContentText[];
  readonly recipes: readonly ContentText[];
  readonly packages: readonly ContentText[];
}

/** The kitchen, its food, prices and menus: what a Book holds but for its proposals and all that came of them. */
export interface ReadMenus
  extends Pick<
    Book,
    | 'suppliers'
    | 'ingredients'
    | 'prices'
    | 'priceRows'
    | 'recipes'
    | 'recipeBodies'
    | 'packages'
    | 'packageBodies'
  > {
  readonly kitchenFile: ReadKitchen;
  readonly kitchen: Omit<Kitchen, 'mark'>;
}

/** See {@link readMenus}. */
export type MenusReader = (
  ledger: Ledger,
  texts: MenuTexts,
  pictures: ReadonlySet<string>,
) => ReadMenus | undefined;

/** Reads everything that proposals rest on; nothing without a kitchen.yaml that can be used. */
export function readMenus(
  ledger: Ledger,
  texts: MenuTexts,
  pictures: ReadonlySet<string>,
): ReadMenus | undefined {
  const kitchenFile = readKitchen(ledger, texts.kitchen);
  if (!kitchenFile) return undefined;
  const { frame, parts } = kitchenFile;
  const { currency } = frame;
  const sellers = readSuppliers(ledger, texts.suppliers, currency);
  const foods = readIngredients(ledger, texts.storeRoom, texts.ingredients, texts.misnamedFoods);
  const { prices, rows, tell } = readPriceLists(ledger, texts.prices, sellers, currency, foods);
  const ingredients = settlePins(ledger, foods, prices);
  const { recipes, bodies: recipeBodies } = readRecipes(
    ledger,
    texts.recipes,
    pictures,
    ingredients,
    prices,
    { ...frame, containers: parts.containers },
  );
  tell(usedFoods(ledger, recipes));
  const addOns = readPart(
    ledger,
    kitchenFile.source,
    'add-ons',
    kitchenFile.text['add-ons'] ?? {},
    (reading, id, text) => linkAddOn(reading, id, text, frame, recipes),
  );
  const crewMeal = readCrewMeal(ledger, kitchenFile, recipes);
  const { packages, bodies: packageBodies } = readPackages(
    ledger,
    texts.packages,
    pictures,
    frame,
    recipes,
    addOns,
  );
  return {
    kitchenFile,
    kitchen: { ...frame, ...parts, addOns, ...(crewMeal && { crewMeal }) },
    suppliers: new Map([...sellers].map(([id, { supplier }]) => [id, supplier])),
    ingredients,
    prices,
    priceRows: rows,
    recipes,
    recipeBodies,
    packages,
    packageBodies,
  };
}

/** What the kitchen's crew eats where no proposal says it: an error in it holds back only what would go by it. */
function readCrewMeal(
  ledger: Ledger,
  { source, text }: ReadKitchen,
  recipes: ReadonlyMap<string, Recipe>,
): CrewMeal | undefined {
  const written = text['crew meal'];
  const spot = { source, base: ['crew meal'] };
  return (
    written &&
    readItem(ledger, KITCHENS_CREW_MEAL, spot, (reading) => linkCrewMeal(reading, [], written, recipes))
  );
}

/** The foods that recipes use; undefined while some recipe is not read, which may use any. */
function usedFoods(ledger: Ledger, recipes: ReadonlyMap<string, Recipe>): ReadonlySet<string> | undefined {
  const open =
    ledger.unreadable.has('recipe') || [...ledger.held.keys()].some((key) => key.startsWith('recipe/'));
  return open ? undefined : ingredientsIn(recipes.values());
}
