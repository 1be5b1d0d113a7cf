import {
  KIT_BASES,
  KIT_WEATHERS,
  type KitItem,
  type KitRule,
  type KitVenue,
} from '../../../engine/kitchen/kit.ts';
import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { parseGrams } from '../../../engine/kitchen/parse-grams.ts';
import { parseKitRule, type WrittenKitRule } from '../../../engine/kitchen/parse-kit-rule.ts';
import { parseCounts } from '../../../engine/quote/counts.ts';
import type { KitItemText } from '../../../schema/kit.ts';
import { idInWords } from '../../findings/words.ts';
import { suggestion } from '../../ledger.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkReturn } from './return-facts.ts';
import { linkStyles } from './styles.ts';

/** What a rule may name besides the words of every kitchen. */
export type KitNames = Pick<Kitchen, 'staff' | 'equipment'>;

/** What is written of a venue, and the fact for want of which kit then goes along. */
const VENUES: ReadonlyMap<string, KitVenue> = new Map([
  ['no water', 'water'],
  ['no power', 'power'],
  ['no cover', 'cover'],
  ['no cold space', 'cold'],
  ['stairs', 'stairs'],
]);

/** An amount that takes an item of the usual kit off the list. */
const NONE = 'none';

/**
 * A thing that goes along by rule. `usual` is what the usual kit says of the same id, which holds where the entry says
 * nothing. Undefined, without a finding, for one of the usual kit that is left out.
 */
export function linkKit(
  reading: Reading,
  id: string,
  own: KitItemText | undefined,
  usual: KitItemText | undefined,
  usualIds: readonly string[],
  { currency, ...names }: KitNames & Pick<Kitchen, 'currency'>,
): KitItem | undefined {
  const text: KitItemText = { ...usual, ...own };
  const amount = text.amount ?? [];
  if (amount.length === 1 && amount[0] === NONE) {
    if (!usual) {
      const near = suggestion(reading.ledger, id, usualIds);
      const wayOut = near ?? 'leave it out';
      reading.say('unknown-id', [], `the usual kit has no “${id}” to leave out`, wayOut, 'key');
    }
    return undefined;
  }
  if (amount.length === 0) {
    const wayOut = 'write it, such as “amount: 1 per event”';
    reading.say('missing-field', [], `“amount” of “${id}” is missing`, wayOut, 'key');
    return undefined;
  }
  const at = (index: number) => (own?.amount ? ['amount', index] : []);
  const rules = amount.flatMap((rule, index): KitRule[] => {
    const read = reading.understand(at(index), rule, parseKitRule);
    const base = read && linkBase(reading, read, at(index), names);
    return read && base ? [{ amount: read.amount, per: read.per, base, written: read.written }] : [];
  });
  const odd = rules.find((rule) => rule.amount.unit !== rules[0]?.amount.unit);
  if (odd) {
    const what = `“${odd.written}” is in another unit than “${rules[0]?.written}”, so they can’t be summed`;
    reading.say('not-understood', ['amount'], what, 'write all rules of one thing in one unit');
  }
  const styles = linkStyles(reading, text.for);
  const counts =
    text.counts === undefined ? undefined : reading.understand(['counts'], text.counts, parseCounts);
  const conditions = (text.if ?? []).map((word) => word.toLowerCase());
  for (const [index, word] of conditions.entries()) sayUnknownCondition(reading, word, index);
  const grams =
    text.weighs === undefined ? undefined : reading.understand(['weighs'], text.weighs, parseGrams);
  if (rules.length < amount.length) return undefined;
  return {
    id,
    name: text.name ?? idInWords(id),
    rules,
    ...(counts && { counts }),
    styles,
    venue: [...VENUES].flatMap(([word, fact]) => (conditions.includes(word) ? [fact] : [])),
    weather: KIT_WEATHERS.filter((each) => conditions.includes(each)),
    ...(text['used up'] === 'yes' && { usedUp: true as const }),
    ...(grams && { grams }),
    ...(text.note !== undefined && { note: text.note }),
    ...linkReturn(reading, text, currency),
  };
}

/** What the word of a rule names: one of every kitchen's words, a staff role, or a piece of equipment by its id or name. */
function linkBase(
  reading: Reading,
  { words }: WrittenKitRule,
  path: readonly (string | number)[],
  { staff, equipment }: KitNames,
): KitRule['base'] | undefined {
  const common = KIT_BASES.find((each) => words.includes(each));
  if (common) return { kind: common };
  const ids = words.map((word) => word.replaceAll(' ', '-'));
  const role = ids.map((id) => staff.get(id)).find((each) => each !== undefined);
  if (role) return { kind: 'role', role: role.id, name: role.name };
  const gear =
    ids.map((id) => equipment.get(id)).find((each) => each !== undefined) ??
    [...equipment.values()].find(({ name }) => words.includes(name.toLowerCase()));
  if (gear) return { kind: 'equipment', equipment: gear.id, name: gear.name };
  const { held } = reading.ledger;
  const keys = ids.flatMap((id) => [`staff/${id}`, `equipment/${id}`] as const);
  const missing = keys.find((key) => held.has(key));
  if (missing) {
    reading.restOn(missing);
    return undefined;
  }
  const known = [...KIT_BASES, ...staff.keys(), ...equipment.keys()];
  const wayOut =
    suggestion(reading.ledger, ids[1] ?? '', known) ??
    `write one of ${KIT_BASES.join(', ')}, a staff role’s id or a piece of equipment’s`;
  reading.say('unknown-id', path, `kit goes per “${words[0]}”, which is nothing that is counted`, wayOut);
  return undefined;
}

function sayUnknownCondition(reading: Reading, word: string, index: number): void {
  const known: readonly string[] = [...VENUES.keys(), ...KIT_WEATHERS];
  if (known.includes(word)) return;
  const wayOut = suggestion(reading.ledger, word, known) ?? `choose from ${known.join(', ')}`;
  reading.say('unknown-word', ['if', index], `“${word}” is nothing that kit can depend on`, wayOut);
}
