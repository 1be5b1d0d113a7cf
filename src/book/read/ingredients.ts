import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Ingredient } from '../../engine/food/ingredient.ts';
import { type IngredientText, ingredientSchema } from '../../schema/ingredient.ts';
import { areSame, type ContentText } from '../files/content-texts.ts';
import type { ItemKey } from '../item.ts';
import { enter, hold, type Ledger, openLedger } from '../ledger.ts';
import { idsInUnreadable } from '../link/grammar/entries.ts';
import { readForm } from '../link/grammar/form.ts';
import { linkIngredient } from '../link/ingredient.ts';
import { withStoreRoom } from '../with-store-room.ts';
import { readEntries } from './entries.ts';

/** Where the plain foods are that come with Salver. */
const STORE_ROOM = fileURLToPath(new URL('../../store-room/', import.meta.url));

/**
 * All ingredients by id: the store-room's, each field replaced where the caterer's own files say it too (of
 * conversions and yields, each of them), and the caterer's own. A caterer's entry with an error is held back, and the store-room's is not taken instead: the
 * error may be in the very fact that was corrected. So is every food that a file names which cannot be read, or stands
 * under a name that is not read; and all of the store-room where nothing of a file can be seen.
 */
export function readIngredients(
  ledger: Ledger,
  storeRoom: readonly ContentText[],
  own: readonly ContentText[],
  misnamed: readonly ContentText[] = [],
): Map<string, Ingredient> {
  const { stored, linked: ofStoreRoom, part } = readStoreRoom(storeRoom);
  enter(ledger, part);
  const ingredients = new Map(ofStoreRoom);
  const firstIn = new Map<string, string>();
  for (const file of own) {
    readEntries(ledger, 'ingredient', file, (reading, id, raw) => {
      const earlier = firstIn.get(id);
      if (earlier !== undefined) {
        const what = `“${id}” is defined here and in ${earlier}`;
        reading.say('defined-twice', [], what, 'keep one of the two', 'key');
        return;
      }
      firstIn.set(id, file.file);
      const text = readForm(reading, ingredientSchema, raw);
      if (!text) return;
      const linked = linkIngredient(reading, id, { ...stored.get(id), ...text });
      ingredients.set(id, withStoreRoom(linked, ingredients.get(id)));
    });
  }
  for (const { file, text, seen } of [...own.filter((each) => each.text === undefined), ...misnamed]) {
    const visible = text ?? seen;
    for (const id of visible === undefined ? stored.keys() : idsInUnreadable(visible))
      hold(ledger, `ingredient/${id}`, `${file} can’t be read`);
  }
  for (const id of [...ingredients.keys()]) {
    const item: ItemKey = `ingredient/${id}`;
    if (ledger.held.has(item)) ingredients.delete(id);
  }
  return ingredients;
}

/** The store-room, read. */
interface StoreRoom {
  readonly from: readonly ContentText[];
  readonly stored: ReadonlyMap<string, IngredientText>;
  readonly linked: ReadonlyMap<string, Ingredient>;
  /** What reading it has noted. */
  readonly part: Ledger;
}

/** It comes with Salver and is the same at every reading of this process; it takes longer to read than a small kitchen. */
let known: StoreRoom | undefined;

function readStoreRoom(from: readonly ContentText[]): StoreRoom {
  if (known && areSame(known.from, from)) return known;
  const part = openLedger();
  const stored = new Map<string, IngredientText>();
  const linked = new Map<string, Ingredient>();
  for (const file of from) {
    readEntries(part, 'ingredient', file, (reading, id, raw) => {
      const text = readForm(reading, ingredientSchema, raw);
      if (!text) return;
      stored.set(id, text);
      linked.set(id, linkIngredient(reading, id, text));
    });
  }
  known = { from, stored, linked, part };
  return known;
}

/** The files of the store-room that comes with Salver. */
export function storeRoomTexts(): ContentText[] {
  return readdirSync(STORE_ROOM)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => ({
      id: name,
      file: `store-room/${name}`,
      text: readFileSync(`${STORE_ROOM}${name}`, 'utf8'),
    }));
}
