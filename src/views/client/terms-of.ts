import type { Day } from '../../engine/calendar/day.ts';
import { parseAllergen } from '../../engine/food/allergen.ts';
import type { AllergenSource } from '../../engine/food/allergens-of.ts';
import { DIETS } from '../../engine/food/diet.ts';
import type { Suits } from '../../engine/food/diets-of.ts';
import { isAllergy, type Need, parseNeed, suitsNeed } from '../../engine/food/need.ts';
import { DEFAULT_ANSWER_WAY } from '../../engine/kitchen/answer-way.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { plainChoice } from '../../engine/quote/plain-choice.ts';
import type { DishTerms, Terms } from '../../engine/quote/terms.ts';
import { type KnownSince, termsAsTheyStand } from '../../offers/corrections/dishes-now.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import type { OfferState } from '../../offers/offer-state.ts';
import { needWords } from '../diet-marks.ts';
import type { AcceptedCounts, ClientTerms, NeedTerms } from './terms.ts';

/** What of a proposal's page its script is fed from. */
export interface AnsweredPage {
  readonly content: OfferContent;
  readonly state: OfferState;
  readonly issued: { readonly revision: number; readonly digest: string; readonly on: Day } | null;
  readonly corrections: KnownSince['corrections'];
  readonly dishesNow: KnownSince['dishesNow'];
  readonly accepted: { readonly choice: Choice; readonly on: Day } | null;
  /** Set once the deposit is in: the counts may then be changed from the page. */
  readonly counts: AcceptedCounts | null;
}

/** Needs that every form names, with those the kitchen knows of. */
const COMMON_NEEDS = ['vegetarian', 'vegan', 'no gluten'];

/** The sell-side terms and standing of a proposal, for the script in its page. */
export function clientTerms(page: AnsweredPage): ClientTerms {
  const { content, state, issued, accepted, counts } = page;
  const { kitchen, proposed } = content;
  const terms = termsAsTheyStand(content.terms, page);
  const recorded = { ...accepted?.choice.needs, ...counts?.choice.needs };
  return {
    version: 1,
    state: state === 'draft' || state === 'offered' ? state : counts ? 'accepted' : 'closed',
    proposal: content.proposal,
    occasion: content.occasion,
    revision: issued?.revision ?? 0,
    digest: issued?.digest ?? '',
    issued: issued?.on ?? null,
    validUntil: content.validUntil,
    kitchen: { name: kitchen.name, email: kitchen.email ?? '', timeZone: kitchen.timeZone },
    answers: kitchen.acceptances ?? DEFAULT_ANSWER_WAY,
    terms,
    staff: (counts?.choice ?? proposed).guests.staff,
    proposed: proposed.guests,
    choices: choicesOf(content, accepted?.choice ?? proposed),
    needs: needsOf(terms, [content.needs, recorded], issued !== null),
    tellPriceSteps: kitchen.tellPriceSteps ?? false,
    accepted: counts,
  };
}

/** The choice shown first, then what is proposed of every other package. */
function choicesOf({ terms, samples }: Pick<OfferContent, 'terms' | 'samples'>, first: Choice): Choice[] {
  const others = terms.packages.filter(({ id }) => id !== first.package);
  return [
    first,
    ...others.map(
      (chosen) =>
        samples.find(({ choice }) => choice.package === chosen.id)?.choice ??
        plainChoice(chosen, first.guests),
    ),
  ];
}

/** The needs on record, whatever words they were given in, and the common ones: what no form shows would be lost. */
function needsOf(
  terms: Terms,
  [offered, recorded]: readonly [Choice['needs'], Choice['needs']],
  issued: boolean,
): NeedTerms[] {
  // Those on record last, so that a field keeps its number in links and in what a browser kept.
  const names = new Set([...Object.keys(offered), ...COMMON_NEEDS, ...Object.keys(recorded)]);
  const dishes = dishesOf(terms);
  return [...names].map((name) => {
    const need = parseNeed(name);
    return {
      name,
      label: needLabel(name, terms.locale),
      ...answersFor(name, need.ok && isKnown(need.value, issued) ? need.value : undefined, dishes),
    };
  });
}

/** `vegan` as it is, `allergy: tree nuts` for what is no diet; each of several that one guest has together. */
export function needLabel(name: string, locale: string): string {
  return needWords(name, 'dishes.allergy', locale);
}

/** In a draft it is not checked yet that every allergen is stated, so only diets can be claimed. */
function isKnown(need: Need, issued: boolean): boolean {
  return issued || !isAllergy(need);
}

/**
 * The dishes for a need: those that suit it as they are, and those offered to be made separately for it; and those of which
 * nobody knows, since not all that is in them is known.
 */
function answersFor(
  name: string,
  need: Need | undefined,
  dishes: readonly DishTerms[],
): Pick<NeedTerms, 'suits' | 'ask'> {
  if (!need) return { suits: null };
  const answers = dishes.map((dish) => ({ recipe: dish.recipe, suits: suitsAs(name, need, dish) }));
  const those = (wanted: Suits) => answers.flatMap(({ recipe, suits }) => (suits === wanted ? [recipe] : []));
  const ask = those('unknown');
  return { suits: those('yes'), ...(ask.length > 0 ? { ask } : {}) };
}

function suitsAs(name: string, need: Need, dish: DishTerms): Suits {
  if (dish.onRequest?.includes(name)) return 'yes';
  const facts = {
    contains: sources(dish.contains),
    mayContain: sources(dish.mayContain),
    unsaid: dish.unsaid ? [[dish.recipe]] : [],
  };
  const diets = DIETS.map((diet) => ({
    diet,
    suits: dish.marks.includes(diet)
      ? ('yes' as const)
      : dish.unsaid
        ? ('unknown' as const)
        : ('no' as const),
    because: [],
  }));
  return suitsNeed(need, facts, diets);
}

function sources(texts: readonly string[]): AllergenSource[] {
  return texts.map((text) => {
    const allergen = parseAllergen(text);
    if (!allergen.ok) throw new Error(`an offer names an allergen that is none: ${allergen.what}`);
    return { allergen: allergen.value, paths: [] };
  });
}

function dishesOf(terms: Terms): DishTerms[] {
  const dishes = new Map<string, DishTerms>();
  for (const { courses } of terms.packages)
    for (const course of courses) for (const dish of course.dishes) dishes.set(dish.recipe, dish);
  return [...dishes.values()];
}
