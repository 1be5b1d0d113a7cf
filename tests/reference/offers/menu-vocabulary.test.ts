import { describe, expect, it } from 'vitest';
import { termsAsTheyStand } from '../../../src/offers/corrections/dishes-now.ts';
import type { OfferContent } from '../../../src/offers/issue/offer-content.ts';
import { menuLinkedData } from '../../../src/views/client/proposal-choice-linked-data.ts';
import { sampleDish, samplePackage, sampleTerms } from '../../unit/quote/sample-terms.ts';

/**
 * The properties that each type has and what each may hold, as schema.org publishes them: MenuItem, its offers and
 * suitableForDiet after https://schema.org/MenuItem, eligibleQuantity (on Offer, a QuantitativeValue) after
 * https://schema.org/eligibleQuantity, validThrough, price and priceCurrency after https://schema.org/Offer; the other
 * rows are from memory of the same vocabulary.
 */
const VOCABULARY: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  Menu: { name: 'Text', inLanguage: 'Text', hasMenuSection: 'MenuSection', offers: 'Offer' },
  MenuSection: { name: 'Text', hasMenuItem: 'MenuItem' },
  MenuItem: { name: 'Text', suitableForDiet: 'RestrictedDiet' },
  Offer: {
    price: 'Number',
    priceCurrency: 'Currency',
    eligibleQuantity: 'QuantitativeValue',
    validThrough: 'Date',
    seller: 'FoodEstablishment',
  },
  QuantitativeValue: { minValue: 'Number', maxValue: 'Number', unitText: 'Text' },
  FoodEstablishment: { name: 'Text' },
};

/** Values of RestrictedDiet as schema.org lists them. */
const DIETS =
  'DiabeticDiet GlutenFreeDiet HalalDiet HinduDiet KosherDiet LowCalorieDiet LowFatDiet LowLactoseDiet LowSaltDiet VeganDiet VegetarianDiet';

const FORMS: Readonly<Record<string, RegExp>> = {
  Text: /./,
  Number: /^\d+(\.\d+)?$/,
  Currency: /^[A-Z]{3}$/,
  Date: /^\d{4}-\d{2}-\d{2}$/,
  RestrictedDiet: new RegExp(`^https://schema\\.org/(${DIETS.replaceAll(' ', '|')})$`),
};

const content = {
  kitchen: { name: 'Lantern Kitchen', locale: 'en-US' },
  validUntil: '2027-05-01',
  terms: sampleTerms({
    packages: [
      samplePackage({
        courses: [
          {
            name: 'Mains',
            choose: null,
            eachGuest: false,
            dishes: [
              sampleDish({ recipe: 'squash', name: 'Squash', marks: ['vegetarian', 'vegan', 'no gluten'] }),
              sampleDish({ recipe: 'hake', name: 'Hake', marks: ['pescatarian', 'no pork', 'no alcohol'] }),
            ],
          },
        ],
      }),
    ],
  }),
} as unknown as Pick<OfferContent, 'terms' | 'kitchen' | 'validUntil'>;

function faults(value: unknown, type: string, path: string): string[] {
  if (Array.isArray(value)) return value.flatMap((each, index) => faults(each, type, `${path}[${index}]`));
  const form = FORMS[type];
  if (form) return form.test(String(value)) ? [] : [`${path}: ${String(value)} is no ${type}`];
  const properties = VOCABULARY[type];
  const node = value as Record<string, unknown>;
  if (!properties || node['@type'] !== type) return [`${path}: ${String(node['@type'])} instead of ${type}`];
  return Object.entries(node)
    .filter(([key]) => key !== '@type')
    .flatMap(([key, each]) => {
      const expected = properties[key];
      return expected ? faults(each, expected, `${path}.${key}`) : [`${path}: ${type} has no ${key}`];
    });
}

describe('the menus for machines', () => {
  const data = menuLinkedData(content) as { '@context': string; '@graph': Record<string, unknown>[] };

  it('use the vocabulary of schema.org and nothing else', () => {
    expect(data['@context']).toBe('https://schema.org');
    expect(data['@graph'].flatMap((menu, index) => faults(menu, 'Menu', `menu ${index}`))).toEqual([]);
    expect(data['@graph']).toHaveLength(1);
  });

  it('claim vegan and vegetarian where the marks do, and never gluten-free for “no gluten”', () => {
    const text = JSON.stringify(data);
    expect(text).toContain(
      '"suitableForDiet":["https://schema.org/VegetarianDiet","https://schema.org/VeganDiet"]',
    );
    expect(text).not.toContain('GlutenFree');
    expect(text.match(/suitableForDiet/g)).toHaveLength(1);
  });

  it('claim no diet that a correction has taken away', () => {
    const correction = {
      recipe: 'squash',
      dish: 'Squash',
      contains: ['milk'],
      mayContain: [],
      lostMarks: ['vegan'],
    };
    const terms = termsAsTheyStand(content.terms, { corrections: [correction], dishesNow: [] });
    const text = JSON.stringify(menuLinkedData({ ...content, terms }));
    expect(text).not.toContain('VeganDiet');
    expect(text).toContain('VegetarianDiet');
  });
});
