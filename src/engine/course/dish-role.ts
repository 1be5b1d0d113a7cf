import Fraction from 'fraction.js';
import type { PerGuest } from '../measure/per-guest.ts';
import { definedFactor } from '../measure/units.ts';

/** What a dish is in its course. A guest is fed role by role: bread is no main. */
export const DISH_ROLES = ['main', 'side', 'bread', 'sauce', 'drink', 'sweet'] as const;

export type DishRole = (typeof DISH_ROLES)[number];

/** A dish as a package places it; `role` as its package states it. */
export interface PlacedDish {
  readonly perGuest: PerGuest;
  readonly role?: DishRole | undefined;
  readonly recipe: { readonly role?: DishRole | undefined };
}

/** The course a dish is placed in, as `Course` has it. */
export interface PlacedIn {
  readonly name: string;
  readonly choose: number | null;
  readonly eachGuest: boolean;
}

/** Words in the name of a course that say what its dishes are. */
const COURSE_WORDS: Readonly<Record<string, DishRole>> = {
  main: 'main',
  mains: 'main',
  entree: 'main',
  entrees: 'main',
  side: 'side',
  sides: 'side',
  beside: 'side',
  bread: 'bread',
  breads: 'bread',
  sauce: 'sauce',
  sauces: 'sauce',
  drink: 'drink',
  drinks: 'drink',
  beverages: 'drink',
  sweet: 'sweet',
  sweets: 'sweet',
  dessert: 'sweet',
  desserts: 'sweet',
  pudding: 'sweet',
  puddings: 'sweet',
};

/** What is poured at up to an ounce for each guest goes over a dish; 30 ml is the same (common practice, no source). */
const MOST_SAUCE_ML = 30n;

/**
 * What a dish is in its course: as its package states it, else as its recipe does, else as the course tells
 * ({@link usualRole}). Undefined where nothing tells: then nobody may take it for a main, nor for anything less.
 */
export function roleOf({ perGuest, role, recipe }: PlacedDish, course: PlacedIn): DishRole | undefined {
  return role ?? recipe.role ?? usualRole(perGuest, course);
}

/**
 * What a course tells of a dish of which no role is stated. Dishes of which each guest takes one, or of which the
 * client chooses, stand in for one another, so they have one role: the one the course is named for, else a main where
 * each guest takes one and a side where the client chooses. Where everybody gets every dish, a course named for bread,
 * sides, drinks, sauces or sweets tells it, but one named for mains does not, since sides are often listed with them;
 * up to an ounce poured for each guest is a sauce, and more than that in no course of drinks could be anything.
 */
export function usualRole(perGuest: PerGuest, { name, choose, eachGuest }: PlacedIn): DishRole | undefined {
  const named = namedRole(name);
  if (eachGuest) return named ?? 'main';
  if (choose !== null) return named ?? 'side';
  if (named === 'drink') return named;
  const poured = definedFactor(perGuest.amount.unit, 'ml');
  if (poured) {
    const each = perGuest.amount.amount.mul(poured).div(new Fraction(perGuest.guests));
    return each.lte(MOST_SAUCE_ML) || named === 'sauce' ? 'sauce' : undefined;
  }
  return named === 'main' ? undefined : named;
}

/** The role that the name of a course says; undefined where it says none, or two. */
function namedRole(course: string): DishRole | undefined {
  const plain = course.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const roles = plain.split(/\P{L}+/u).flatMap((word) => {
    return Object.hasOwn(COURSE_WORDS, word) ? [COURSE_WORDS[word]] : [];
  });
  return new Set(roles).size === 1 ? roles[0] : undefined;
}
