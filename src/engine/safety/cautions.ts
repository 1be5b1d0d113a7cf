/** Standing cautions for clients and their guests; every proposal shows them. */
export const CLIENT_CAUTIONS: readonly string[] = [
  'Tell us about every food allergy and dietary need, also those of guests who are not sure. Ask us again on the day.',
  'Our kitchen is shared: milk, egg, fish, shellfish, nuts, wheat, soy, sesame and other allergens are handled in it, and we cannot promise that no trace of them is carried over.',
  'What we say about allergens comes from our suppliers’ statements. It is no medical advice; if in doubt, please do not eat a dish and ask us.',
  'How food is kept, cooked and served safely is for the local food code and a licensed food-safety manager to say; where they ask for more than this page does, they rule.',
];
