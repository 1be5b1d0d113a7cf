import { exactMoneyText, money } from '../../../engine/money/money.ts';
import { SLASH_MEANINGS } from '../../../engine/purchase/pack-slash.ts';
import type { PricedPack } from '../../../engine/purchase/price-list.ts';
import { type Finding, finding, type Place } from '../../findings/finding.ts';
import { hold, type Ledger, placeIn, suggestion } from '../../ledger.ts';
import type { PriceListContext, PriceRow, UnreadField } from './price-row.ts';
import { priceRowKey } from './price-row-key.ts';

/** Rows with the same trouble that are shown one by one; of more the first is shown, and the others in one sentence. */
const SHOWN_ROW_BY_ROW = 3;
/** Line numbers and names that one sentence lists. */
const LISTED = 8;
const WRITE_IT =
  'ignore this, or to buy one of them add the ingredient, or name the ingredient it is in suppliers.yaml under “names”';

/**
 * What the rows of one list leave to tell, each thing once however many rows have it. `used`: the foods that recipes
 * use, undefined while some recipe cannot be read; trouble with a food that no recipe uses is a note.
 */
export function tellPriceRows(
  ledger: Ledger,
  context: PriceListContext,
  rows: readonly PriceRow[],
  used: ReadonlySet<string> | undefined,
): void {
  const { findings } = ledger;
  findings.push(...slashNote(context, rows), ...pricedTwice(context, rows, used));
  const unread = rows.flatMap((row) => (row.kind === 'unread' ? [row] : []));
  const idle = unread.filter(({ ingredient }) => ingredient && used && !used.has(ingredient));
  const wanted = unread.filter((row) => !idle.includes(row));
  const fields = wanted.flatMap((row) => row.fields);
  for (const same of Map.groupBy(fields, ({ column }) => column).values())
    findings.push(...unreadFields(same));
  for (const { ingredient, fields } of wanted)
    holdRow(ledger, context, ingredient ?? '', fields[0]?.place.line);
  const unknown = rows.flatMap((row) => (row.kind === 'unknown food' ? [row] : []));
  const left = unknown.filter((row) => !misnamed(ledger, context, row));
  findings.push(...unusedNote(left, 'left out because there is no ingredient called', WRITE_IT));
  const unreadable = idle.flatMap(({ ingredient = '', fields }) =>
    fields.slice(0, 1).map(({ place }) => ({ place, name: ingredient })),
  );
  const until = 'correct them when a recipe uses them';
  findings.push(
    ...unusedNote(unreadable, 'left out because they can’t be read; no recipe needs them:', until),
  );
}

/** One note for all packs of a list whose slash could be read in two ways. */
function slashNote({ supplier }: PriceListContext, rows: readonly PriceRow[]): Finding[] {
  const open = rows.flatMap((row) =>
    row.kind === 'pack' && row.slash ? [{ ...row, slash: row.slash }] : [],
  );
  const [first, ...others] = open;
  if (!first) return [];
  const more = others.length === 0 ? '' : `, and so ${otherRows(others.map(({ place }) => place))}`;
  const what = `“${first.pack.packText}” is read as ${first.slash.taken}${more}`;
  const ways = SLASH_MEANINGS.map((word) => `“slash in packs: ${word}”`).join(' or ');
  const wayOut = `if it means ${first.slash.other}, write it that way; to settle it for the whole list, write ${ways} under ${supplier} in suppliers.yaml`;
  return [finding('pack-slash', first.place, what, wayOut)];
}

/** One pack of a food that is used, from one date at two prices: each pack once, at the row that counts, the last. */
function pricedTwice(
  { currency }: PriceListContext,
  rows: readonly PriceRow[],
  used: ReadonlySet<string> | undefined,
): Finding[] {
  const packs = rows.flatMap((row) => (row.kind === 'pack' ? [row] : []));
  const wanted = packs.filter(({ pack }) => !used || used.has(pack.ingredient));
  const show = ({ pack }: { readonly pack: PricedPack }) => exactMoneyText(money(pack.price, currency));
  return [...Map.groupBy(wanted, ({ pack }) => priceRowKey(pack)).values()].flatMap((same) => {
    const counts = same.at(-1);
    const differs = same.findLast((each) => counts && !each.pack.price.eq(counts.pack.price));
    if (!counts || !differs) return [];
    const { packText, ingredient, validFrom } = counts.pack;
    const what = `“${packText}” of ${ingredient} has two prices from ${validFrom}: ${show(differs)} ${currency} in line ${differs.place.line} and ${show(counts)} ${currency} here; the one here counts`;
    return [finding('price-twice', counts.place, what, 'delete the row that is wrong, or correct its date')];
  });
}

function unreadFields(fields: readonly UnreadField[]): Finding[] {
  const told = fields.length > SHOWN_ROW_BY_ROW ? fields.slice(0, 1) : fields;
  const findings = told.map(({ place, what, wayOut }) => finding('not-understood', place, what, wayOut));
  const [next, ...others] = fields.slice(told.length);
  if (!next) return findings;
  const places = [next, ...others].map(({ place }) => place);
  const what = `the ${next.column} of ${otherRows(places)} can’t be read either`;
  const wayOut = 'correct the first one, then the others the same way';
  return [...findings, finding('not-understood', next.place, what, wayOut)];
}

function otherRows(places: readonly Place[]): string {
  const lines = places.slice(0, LISTED).map(({ line }) => `${line}`);
  const more = places.length > LISTED ? ` and ${places.length - LISTED} further down` : '';
  return places.length === 1
    ? `1 other row (line ${lines[0]})`
    : `${places.length} other rows (lines ${lines.join(', ')}${more})`;
}

/**
 * True where an unknown food is a slip: suppliers.yaml gives a name to a food that there is none of, or a list in
 * Salver's own words misspells one. A supplier's own list is full of foods that the kitchen does not buy.
 */
function misnamed(
  ledger: Ledger,
  context: PriceListContext,
  { place, name, id }: Extract<PriceRow, { kind: 'unknown food' }>,
): boolean {
  const { supplier, text, names, ingredients } = context;
  if (ledger.held.has(`ingredient/${id}`) || ledger.unreadable.has('ingredient')) return true;
  const written = Object.keys(text.names ?? {}).find((each) => each.toLowerCase() === name.toLowerCase());
  if (names.has(name.toLowerCase()) && written !== undefined) {
    const at = placeIn(ledger, `supplier/${supplier}`, ['names', written]) ?? place;
    const known = ledger.findings.some((each) => each.code === 'unknown-id' && isAt(each.place, at));
    const near = suggestion(ledger, id, ingredients.keys());
    const what = `“${written}” is mapped to “${id}”, but there is no ingredient called that`;
    if (!known) ledger.findings.push(finding('unknown-id', at, what, near ?? 'write the ingredient'));
    holdRow(ledger, context, id, place.line);
    return true;
  }
  const near = text.names || text.columns ? undefined : suggestion(ledger, id, ingredients.keys());
  if (near === undefined) return false;
  const what = `no ingredient is called “${name}”, so the row is left out`;
  ledger.findings.push(finding('price-row-misnamed', place, what, near));
  holdRow(ledger, context, name, place.line);
  return true;
}

function unusedNote(
  rows: readonly { readonly place: Place; readonly name: string }[],
  why: string,
  wayOut: string,
): Finding[] {
  const [first] = rows;
  if (!first) return [];
  const names = [...new Set(rows.map(({ name }) => `“${name}”`))];
  const more = names.length > LISTED ? ` and ${names.length - LISTED} more` : '';
  const count = rows.length === 1 ? '1 row is' : `${rows.length} rows are`;
  const what = `${count} ${why} ${names.slice(0, LISTED).join(', ')}${more}`;
  return [finding('price-rows-unused', first.place, what, wayOut)];
}

/** While some row is not read, nobody can say that an ingredient has no price. */
function holdRow(ledger: Ledger, { supplier }: PriceListContext, name: string, line: number | undefined) {
  hold(ledger, `prices/${supplier}/${name}`, `line ${line} of its price list can’t be read`);
}

function isAt(a: Place, b: Place): boolean {
  return a.file === b.file && a.line === b.line && a.column === b.column;
}
