import type { DishTerms, PackageTerms } from '../../engine/quote/terms.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';

/** Marks that schema.org has a diet for with the same meaning. `no gluten` is not among them: it is no GlutenFreeDiet. */
const DIETS: Readonly<Record<string, string>> = {
  vegan: 'https://schema.org/VeganDiet',
  vegetarian: 'https://schema.org/VegetarianDiet',
};

/**
 * The menus in the vocabulary of schema.org: a Menu for each package with its sections and items, an Offer for each
 * price tier. It claims no diet that the marks of the dishes as they stand do not support.
 */
export function menuLinkedData({
  terms,
  kitchen,
  validUntil,
}: Pick<OfferContent, 'terms' | 'kitchen' | 'validUntil'>): object {
  const seller = { '@type': 'FoodEstablishment', name: kitchen.name };
  return {
    '@context': 'https://schema.org',
    '@graph': terms.packages.map((chosen) => ({
      '@type': 'Menu',
      name: chosen.name,
      inLanguage: kitchen.locale,
      hasMenuSection: chosen.courses.map(({ name, dishes }) => ({
        '@type': 'MenuSection',
        name,
        hasMenuItem: dishes.map(menuItem),
      })),
      offers: offersOf(chosen, terms.currency, validUntil, seller),
    })),
  };
}

function menuItem({ name, marks }: DishTerms): object {
  const diets = marks.flatMap((mark) => (Object.hasOwn(DIETS, mark) ? [DIETS[mark]] : []));
  return { '@type': 'MenuItem', name, ...(diets.length > 0 ? { suitableForDiet: diets } : {}) };
}

function offersOf({ tiers }: PackageTerms, currency: string, validThrough: string, seller: object): object[] {
  return tiers.map(({ from, to, perHead }) => ({
    '@type': 'Offer',
    price: perHead,
    priceCurrency: currency,
    eligibleQuantity: {
      '@type': 'QuantitativeValue',
      minValue: from,
      ...(to === null ? {} : { maxValue: to }),
      unitText: 'guest',
    },
    validThrough,
    seller,
  }));
}
