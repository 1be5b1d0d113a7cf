/** Standing cautions for clients and their guests; every proposal shows them. */
export const CLIENT_CAUTIONS: readonly string[] = [
  'Tell us about every food allergy and dietary need, also those of guests who are not sure. Ask us again on the day.',
  'Our kitchen is shared: milk, egg, fish, shellfish, nuts, wheat, soy, sesame and other allergens are handled in it, and we cannot promise that no trace of them is carried over.',
  'What we say about allergens comes from our suppliers’ statements. It is no medical advice; if in doubt, please do not eat a dish and ask us.',
];

/** The standing caution on a card beside a dish, short enough to be read in passing. */
export const CARD_CAUTION =
  'Allergy? Ask us before you eat. Our kitchen is shared, and no trace of any allergen can be ruled out.';

/** Standing cautions for the crew; every plan and sheet shows them. */
export const CREW_CAUTIONS: readonly string[] = [
  'Follow the local food code and your certified food-protection manager; where they ask for more than this plan, they rule.',
  'Check every label against this plan before opening: suppliers change recipes. Where they differ, stop and ask.',
  'Prepare food for guests with allergies first, on clean boards with clean tools, sealed and named.',
];
