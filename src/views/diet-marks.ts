const LEGEND: readonly { readonly mark: string; readonly meaning: string }[] = [
  { mark: 'vegan', meaning: 'nothing of animal origin' },
  { mark: 'vegetarian', meaning: 'no meat, fish, animal rennet or gelatin; may have milk, egg or honey' },
  { mark: 'pescatarian', meaning: 'as vegetarian, but with fish or shellfish' },
  {
    mark: 'no gluten',
    meaning:
      'no gluten-containing ingredient; made in a kitchen that handles flour, so never to be read as gluten-free',
  },
];

/** The strictest of the animal-food marks that hold, since each takes in the next, and `no gluten`. */
export function marksOf(diets: readonly string[]): string[] {
  const strictest = ['vegan', 'vegetarian', 'pescatarian'].find((mark) => diets.includes(mark));
  return [...(strictest ? [strictest] : []), ...(diets.includes('no gluten') ? ['no gluten'] : [])];
}

/** What the marks mean, for those that stand on the page. */
export function legendFor(marks: Iterable<string>): { readonly mark: string; readonly meaning: string }[] {
  const used = new Set(marks);
  return LEGEND.filter(({ mark }) => used.has(mark));
}
