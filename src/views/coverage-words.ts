import type { DishRole } from '../engine/course/dish-role.ts';
import { type DishForNeed, roleGaps } from '../engine/course/role-gaps.ts';
import type { ServiceStyle } from '../engine/course/service-style.ts';
import { ALL_STATIONS, type Sitting, sittingsOf } from '../engine/course/sitting.ts';
import type { ScriptSay } from '../words/script-words.ts';

/** A course as guests with a need find it. */
export interface CourseForNeed extends Sitting<OfferedDish> {
  /** True where each guest takes one of the dishes. */
  readonly eachGuest: boolean;
}

/** A dish of it. */
export interface OfferedDish extends DishForNeed {
  /** True where nobody can say whether it suits them. */
  readonly mayFeed: boolean;
}

/** What a menu has for guests with a need, as a sentence's part and as whether it is all that others get. */
export interface CoverageWords {
  readonly words: string;
  readonly whole: boolean;
}

/**
 * What a menu has for guests with a need, role by role: `a main in every main course`, `a dish in every course` where no
 * dish is known to be a main, `no main in To share; nothing in First`, `a main at the stations`, `please ask us about On arrival` where a role or a
 * fact that is not stated decides it.
 */
export function coverageWords(
  say: ScriptSay,
  style: ServiceStyle,
  courses: readonly CourseForNeed[],
): CoverageWords {
  const sittings = sittingsOf(style, courses).map((each) =>
    each.name === ALL_STATIONS ? { ...each, name: say('fed.stations') } : each,
  );
  const oneByOne = new Set(courses.filter(({ eachGuest }) => eachGuest).map(({ name }) => name));
  const gaps = sittings.map(({ name, dishes }) => {
    const eachGuest = oneByOne.has(name);
    const { nothing, missing, asked } = roleGaps(dishes, eachGuest);
    // What may suit them may also be what they lack.
    const could = roleGaps(
      dishes.map((dish) => ({ ...dish, feeds: dish.feeds || dish.mayFeed })),
      eachGuest,
    );
    return {
      name,
      nothing: nothing && could.nothing,
      missing: missing.filter((role) => could.missing.includes(role)),
      asked: asked.length > 0 || nothing !== could.nothing || missing.length !== could.missing.length,
    };
  });
  const roles = [...new Set(gaps.flatMap(({ missing }) => missing))];
  const lacks = (role: DishRole) => gaps.filter(({ missing }) => missing.includes(role));
  const list = (named: readonly { readonly name: string }[]) => named.map(({ name }) => name).join(', ');
  const nothing = gaps.filter((each) => each.nothing);
  const asked = gaps.filter((each) => each.asked);
  const parts = [
    ...roles.map((role) => say('fed.lacks', { role, courses: list(lacks(role)) })),
    nothing.length > 0 ? say('fed.nothing', { courses: list(nothing) }) : '',
    asked.length > 0 ? say('fed.ask', { courses: list(asked) }) : '',
  ].filter((part) => part !== '');
  if (parts.length > 0) return { words: parts.join('; '), whole: false };
  const hasMain = sittings.some(({ dishes }) => dishes.some(({ role }) => role === 'main'));
  if (sittings.length < courses.length)
    return { words: say(hasMain ? 'fed.main-at-stations' : 'fed.dish-at-stations'), whole: true };
  return { words: say(hasMain ? 'fed.main' : 'fed.dish'), whole: true };
}
