import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { type Allergen, parseAllergen } from '../../../src/engine/food/allergen.ts';
import type { AllergenLaw } from '../../../src/engine/food/allergen-law.ts';
import { parseNeed } from '../../../src/engine/food/need.ts';
import type { DishTerms, Terms } from '../../../src/engine/quote/terms.ts';
import type { Offer } from '../../../src/schema/offer.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import { day, EVENING, offerOf, secondKitchen } from '../offers/second-kitchen.ts';

const TODAY = day('2027-05-01');
const LOCALES = ['en-US', 'en-GB', 'de-DE'] as const;

/** An offer whose dishes hold what the two spellings differ in, in a locale and under these laws. */
async function viewIn(locale: string, ...laws: AllergenLaw[]): Promise<ProposalView> {
  const book = await secondKitchen();
  const before = offerOf(book);
  const facts = (dish: DishTerms, at: number): DishTerms => ({
    ...dish,
    contains: at === 0 ? ['sulphites', 'mollusc (squid)'] : [],
    mayContain: at === 1 ? ['sulphites', 'mollusc (mussel)'] : [],
    onRequest: at === 0 ? ['sulphites', 'vegan'] : [],
    marks: at === 0 ? ['no gluten'] : [],
  });
  const terms: Terms = {
    ...before.terms,
    locale,
    packages: before.terms.packages.map((chosen) => ({
      ...chosen,
      courses: chosen.courses.map((course) => ({ ...course, dishes: course.dishes.map(facts) })),
    })),
  };
  const offer: Offer = {
    ...before,
    terms,
    needs: { sulphites: 1, molluscs: 2 },
    kitchen: { ...before.kitchen, locale, allergenLaws: laws },
  };
  const earlier: Offer = { ...offer, revision: 1, terms: { ...before.terms, locale } };
  const later: Offer = { ...offer, revision: 2 };
  const issued: Book = { ...book, offers: new Map([[EVENING, [earlier, later]]]) };
  const [page] = clientSite(issued, TODAY).pages;
  return page?.view as ProposalView;
}

/** All texts of a view that a reader sees, without what its script computes from. */
function textsOf({ answering, ...view }: ProposalView): string {
  const { data: _, linkedData: __, ...shown } = answering;
  return JSON.stringify({ ...view, answering: shown });
}

/**
 * Sulphites and molluscs are the names of Regulation (EU) No 1169/2011, Annex II, nos. 12 and 14, and of the United
 * Kingdom’s retained text of it. An American reader writes sulfites (21 CFR 101.100(a)(4), from memory) and mollusks
 * (Merriam-Webster’s first form, from memory).
 */
describe('an allergen is spelled as the reader’s country spells it, on all of a client’s page', () => {
  test.each(LOCALES)('%s', async (locale) => {
    for (const laws of [['us'], ['eu'], ['us', 'eu']] satisfies AllergenLaw[][]) {
      const texts = textsOf(await viewIn(locale, ...laws));
      const [own, other] = [/sulphit|sulphur|mollusc/i, /sulfit|sulfur|mollusk/i];
      expect(texts).toMatch(locale === 'en-US' ? other : own);
      expect(texts.match(locale === 'en-US' ? own : other)?.[0], laws.join()).toBeUndefined();
    }
  });

  test('by the law’s own name in the table, the filter, the dishes and the forms', async () => {
    const shown = async (locale: string) => {
      const { allergenTable, needs, packages, changes, answering } = await viewIn(locale, 'eu');
      const [dish] = packages.flatMap(({ courses }) => courses.flatMap(({ dishes }) => dishes));
      return [
        allergenTable.allergens.slice(-3),
        needs.filter((need) => /sul|moll/.test(need)),
        // Corrections bring in what the kitchen’s own recipe has besides.
        /(?:celery, )(.*?)\. /.exec(dish?.allergens ?? '')?.[1],
        dish?.marks,
        answering.accept?.needs.map(({ label }) => label).slice(0, 2),
        changes?.groups.flatMap(({ lines }) => lines).filter((line) => /now contains sul/.test(line))[0],
      ];
    };
    const british = [
      ['sulphur dioxide and sulphites', 'lupin', 'molluscs'],
      ['no sulphur dioxide and sulphites', 'no molluscs'],
      'sulphur dioxide and sulphites, molluscs (squid)',
      ['no sulphites on request'],
      ['allergy: sulphites', 'allergy: molluscs'],
    ];
    const american = JSON.parse(
      JSON.stringify(british).replaceAll('sulph', 'sulf').replaceAll('mollusc', 'mollusk'),
    );
    expect((await shown('en-US')).slice(0, 5)).toEqual(american);
    expect((await shown('en-GB')).slice(0, 5)).toEqual(british);
    expect((await shown('de-DE')).slice(0, 5)).toEqual(british);
    expect((await shown('en-US'))[5]).toMatch(/ now contains sulfur dioxide and sulfites/);
    expect((await shown('en-GB'))[5]).toMatch(/ now contains sulphur dioxide and sulphites/);
  });

  test('and it stays the same allergen: cells, answers and what the script computes from differ in no country', async () => {
    const facts = async (locale: string) => {
      const { allergenTable, packages, answering } = await viewIn(locale, 'eu');
      const { needs } = JSON.parse(answering.data) as { needs: { name: string; suits: unknown }[] };
      return [
        allergenTable.menus.map(({ rows }) => rows.map(({ cells }) => cells.map(({ says }) => says))),
        packages.map(({ courses }) => courses.map(({ dishes }) => dishes.map((dish) => dish.needs))),
        needs.map(({ name, suits }) => [name, suits]),
      ];
    };
    const [american, british, german] = await Promise.all(LOCALES.map(facts));
    expect(american).toEqual(british);
    expect(german).toEqual(british);
  });
});

test('an American may write an allergen as the page shows it, in a recipe and as a need', () => {
  const allergen = (text: string): Allergen | undefined => {
    const read = parseAllergen(text);
    return read.ok ? read.value : undefined;
  };
  expect(allergen('sulfites')).toEqual({ group: 'sulphites', kind: null });
  expect(allergen('Mollusk (squid)')).toEqual(allergen('mollusc (squid)'));
  for (const [american, british] of [
    ['sulfites', 'sulphites'],
    ['mollusks', 'molluscs'],
    ['mollusk', 'mollusc'],
    ['mollusk (squid)', 'mollusc (squid)'],
    ['vegan + sulfites', 'vegan + sulphites'],
  ] as const) {
    expect(parseNeed(american).ok, american).toBe(true);
    expect(parseNeed(american)).toEqual(parseNeed(british));
  }
});

test('a page and its PDF declare the language that they are written in, not a locale without words', async () => {
  for (const [locale, language] of [
    ['de-DE', 'en-US'],
    ['en-IE', 'en-GB'],
    ['en-US', 'en-US'],
  ] as const) {
    const book = await secondKitchen();
    const offer = offerOf(book);
    const issued: Book = {
      ...book,
      offers: new Map([[EVENING, [{ ...offer, kitchen: { ...offer.kitchen, locale } }]]]),
    };
    const { pages, prints } = clientSite(issued, TODAY);
    const view = pages[0]?.view as ProposalView;
    expect([view.brand.language, prints[0]?.language], locale).toEqual([language, language]);
  }
});
