/** What the key of a recipe line says: which food, and how it is prepared. */
export interface LineKey {
  readonly id: string;
  /** null where none is stated. */
  readonly preparation: string | null;
  /** `potato, as purchased`: the amount is of the food as bought. */
  readonly asPurchased: boolean;
}

/** Reads the key of a recipe line: an id, and after the first comma the preparation, in any case and spacing. */
export function readLineKey(key: string): LineKey {
  const [id = '', ...rest] = key.split(',').map(preparationWords);
  const words = rest.filter((word) => word !== '');
  const prepared = words.filter((word) => word !== 'as purchased');
  return {
    id,
    preparation: prepared.length === 0 ? null : prepared.join(', '),
    asPurchased: prepared.length < words.length,
  };
}

/** A preparation's words as they are compared: lower case, single spaces. */
export function preparationWords(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, ' ');
}
