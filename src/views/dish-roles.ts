import type { Terms } from '../engine/quote/terms.ts';
import type { OfferedRoles } from '../offers/event/offered-roles.ts';

/** What is offered, with the role of each dish filled in where it is known: an offer need not state it itself. */
export function withRoles<C extends { readonly terms: Terms }>(content: C, roles: OfferedRoles): C {
  const packages = content.terms.packages.map((chosen, at) => ({
    ...chosen,
    courses: chosen.courses.map((course, courseAt) => ({
      ...course,
      dishes: course.dishes.map((dish, dishAt) => {
        const role = roles[at]?.[courseAt]?.[dishAt];
        return role ? { ...dish, role } : dish;
      }),
    })),
  }));
  return { ...content, terms: { ...content.terms, packages } };
}
