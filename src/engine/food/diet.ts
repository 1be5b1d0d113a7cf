/**
 * Diets that Salver can claim. `vegetarian` in the sense of ISO 23662:2021 4.2 (nothing of animal origin,
 * processing aids included, but milk, eggs and honey), so no animal rennet and no gelatin.
 * `no gluten` says that no gluten-containing ingredient is used; it never says gluten-free.
 */
export const DIETS = ['vegetarian', 'vegan', 'pescatarian', 'no gluten', 'no pork', 'no alcohol'] as const;

export type Diet = (typeof DIETS)[number];
