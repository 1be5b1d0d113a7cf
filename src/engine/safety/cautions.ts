/** Standing cautions for clients and their guests; every proposal shows them. */
export const CLIENT_CAUTIONS: readonly string[] = [
  'Tell us about every food allergy and dietary need, also those of guests who are not sure. Ask us again on the day.',
  'Our kitchen is shared: milk, egg, fish, shellfish, nuts, wheat, soy, sesame and other allergens are handled in it, and we cannot promise that no trace of them is carried over.',
  'What we say about allergens comes from our suppliers’ statements. It is no medical advice; if in doubt, please do not eat a dish and ask us.',
  'How food is kept, cooked and served safely is for the local food code and a licensed food-safety manager to say; where they ask for more than this page does, they rule.',
];

/** The standing caution on a label, in one line of small type. */
export const LABEL_CAUTION =
  'Shared kitchen: traces possible. Allergy? Ask first. Local food code and licensed manager rule.';

/** The standing caution on a card beside a dish, short enough to be read in passing. */
export const CARD_CAUTION =
  'Allergy? Ask us before you eat. Our kitchen is shared, and no trace of any allergen can be ruled out.';

/** Standing cautions for the crew; every plan and sheet shows them. */
export const CREW_CAUTIONS: readonly string[] = [
  'Follow the local food code and your licensed food-safety manager; where they ask for more than this plan, they rule.',
  'Check every label against this plan before opening: suppliers change recipes. Where they differ, stop and ask.',
  'Our kitchen is shared: promise no guest that a dish has no trace of an allergen. This plan is no medical advice.',
  'Prepare food for guests with allergies first, on clean boards with clean tools, sealed and named.',
];
