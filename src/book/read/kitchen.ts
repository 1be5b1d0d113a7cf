import type { KitItem } from '../../engine/kitchen/kit.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { KitItemText } from '../../schema/kit.ts';
import { type KitchenText, kitchenSchema } from '../../schema/kitchen.ts';
import { checkBody } from '../bodies/source.ts';
import type { ContentText } from '../files/content-texts.ts';
import type { Source } from '../files/place-of.ts';
import { type Finding, finding } from '../findings/finding.ts';
import type { ItemKey, ItemKind } from '../item.ts';
import { hold, type Ledger } from '../ledger.ts';
import { linkCarrier } from '../link/equipment/carrier.ts';
import { linkContainer, linkEquipment } from '../link/equipment/container.ts';
import { type KitNames, linkKit } from '../link/equipment/kit.ts';
import { linkRental } from '../link/equipment/rental.ts';
import { linkVehicle } from '../link/equipment/vehicle.ts';
import { entriesAt, errorsByEntry } from '../link/grammar/entries.ts';
import { type FormProblem, formed, sayProblems } from '../link/grammar/form.ts';
import { type Reading, readItem } from '../link/grammar/reading.ts';
import { linkDeliveryZone } from '../link/kitchen/delivery-zone.ts';
import { type KitchenFrame, type KitchenParts, linkKitchen } from '../link/kitchen/kitchen.ts';
import { linkPlace } from '../link/kitchen/place.ts';
import { linkStaffRole } from '../link/kitchen/staff-role.ts';
import { usualKit } from './usual-kit.ts';

/** The fields of kitchen.yaml whose entries stand alone: an error in one holds back it and what uses it. */
const PARTS = {
  places: 'place',
  staff: 'staff',
  containers: 'container',
  equipment: 'equipment',
  carriers: 'carrier',
  vehicles: 'vehicle',
  'delivery zones': 'delivery-zone',
  rentals: 'rental',
  kit: 'kit-item',
  'add-ons': 'add-on',
} as const satisfies Record<string, ItemKind>;

type PartField = keyof typeof PARTS;

/** kitchen.yaml, but for its add-ons, whose dishes need the recipes first. */
export interface ReadKitchen {
  readonly frame: KitchenFrame;
  readonly parts: Omit<KitchenParts, 'addOns'>;
  readonly source: Source;
  readonly text: KitchenText;
}

/** Reads kitchen.yaml. Without it, or with an error outside its parts, there is no Book. */
export function readKitchen(ledger: Ledger, files: readonly ContentText[]): ReadKitchen | undefined {
  const [file] = files;
  if (!file) {
    const place = { file: 'kitchen.yaml', line: 1, column: 1 };
    const wayOut = 'write it in the content folder, or name another folder with --content';
    ledger.findings.push(finding('no-kitchen', place, 'there is no kitchen.yaml', wayOut));
  }
  const read = file?.text === undefined ? undefined : ledger.yaml(file.file, file.text);
  ledger.findings.push(...(read?.findings ?? []));
  if (!read?.source) {
    hold(ledger, 'kitchen/kitchen', 'kitchen.yaml can’t be read');
    return undefined;
  }
  return linkSource(ledger, read.source, read.findings);
}

function linkSource(ledger: Ledger, source: Source, findings: readonly Finding[]): ReadKitchen | undefined {
  const problems = byPart(problemsIn(source.data));
  for (const [key, what] of brokenParts(source, findings)) if (!problems.has(key)) problems.set(key, what);
  const ownProblems = problems.get(undefined);
  for (const [key, trouble] of problems) {
    if (key === undefined) continue;
    readItem(ledger, key, { source, base: baseOf(key) }, (reading) => tell(reading, trouble));
  }
  const whole = formed(kitchenSchema, without(source.data, [...problems.keys()]));
  const frame = readItem(ledger, 'kitchen/kitchen', { source, base: [] }, (reading) => {
    if (ownProblems) tell(reading, ownProblems);
    if (!('value' in whole)) return undefined;
    checkTerms(reading, whole.value.terms);
    return linkKitchen(reading, whole.value);
  });
  if (!frame || !('value' in whole)) return undefined;
  const text = whole.value;
  return { frame, parts: readParts(ledger, source, text, frame), source, text };
}

/** What is wrong in a part: problems of its form, or a finding that reading the file has made already. */
type Trouble = readonly FormProblem[] | Finding;

function problemsIn(data: unknown): readonly FormProblem[] {
  const result = formed(kitchenSchema, data);
  return 'value' in result ? [] : result.problems;
}

function byPart(problems: readonly FormProblem[]): Map<ItemKey | undefined, Trouble> {
  const found = new Map<ItemKey | undefined, FormProblem[]>();
  for (const problem of problems) {
    const [field, id] = problem.path;
    const part = id !== undefined && Object.hasOwn(PARTS, field as string);
    const key: ItemKey | undefined = part ? `${PARTS[field as PartField]}/${id}` : undefined;
    // A part's paths count from the part.
    const own = part ? { ...problem, path: problem.path.slice(2) } : problem;
    found.set(key, [...(found.get(key) ?? []), own]);
  }
  return found;
}

/** Errors of reading the file, by the part they lie in; undefined for those that lie in none. */
function brokenParts(source: Source, findings: readonly Finding[]): Map<ItemKey | undefined, Finding> {
  const found = new Map<ItemKey | undefined, Finding>();
  for (const each of findings) {
    const [field] = errorsByEntry([each], source).keys();
    if (field === undefined) continue;
    const kind = Object.hasOwn(PARTS, field) ? PARTS[field as PartField] : undefined;
    const [id] = kind ? errorsByEntry([each], source, [field]).keys() : [];
    found.set(kind && id ? `${kind}/${id}` : undefined, each);
  }
  return found;
}

function tell(reading: Reading, trouble: Trouble): undefined {
  if ('place' in trouble) reading.spoil(`${trouble.what} (${trouble.place.file}:${trouble.place.line})`);
  else sayProblems(reading, trouble);
  return undefined;
}

function baseOf(key: ItemKey): [PartField, string] {
  const slash = key.indexOf('/');
  const kind = key.slice(0, slash);
  const field = (Object.keys(PARTS) as PartField[]).find((each) => PARTS[each] === kind) as PartField;
  return [field, key.slice(slash + 1)];
}

/** The data without the parts that cannot be read, so that the rest can. */
function without(data: unknown, keys: readonly (ItemKey | undefined)[]): unknown {
  const left: Record<string, unknown> = { ...(data as Record<string, unknown>) };
  for (const key of keys) {
    if (key === undefined) continue;
    const [field, id] = baseOf(key);
    left[field] = Object.fromEntries(entriesAt(left, [field]).filter(([each]) => each !== id));
  }
  return left;
}

function checkTerms(reading: Reading, terms: string | undefined): void {
  if (terms === undefined) return;
  const { file } = reading.placeOf(['terms']);
  for (const each of checkBody(file, { text: terms, line: 1 }, 'markdown', []).findings) {
    reading.say(each.code, ['terms'], each.what, each.wayOut);
  }
}

function readParts(
  ledger: Ledger,
  source: Source,
  text: KitchenText,
  { currency, counts, stations }: Pick<Kitchen, 'currency' | 'counts' | 'stations'>,
): Omit<KitchenParts, 'addOns'> {
  const read = <T, V>(
    field: PartField,
    entries: Readonly<Record<string, T>> | undefined,
    link: (reading: Reading, id: string, entry: T) => V | undefined,
  ): Map<string, V> => readPart(ledger, source, field, entries ?? {}, link);
  const containers = read('containers', text.containers, (reading, id, entry) =>
    linkContainer(reading, id, entry, currency),
  );
  const places = read('places', text.places, (reading, id, entry) => linkPlace(reading, id, entry, currency));
  const staff = read('staff', text.staff, (reading, id, entry) =>
    linkStaffRole(reading, id, entry, currency, counts),
  );
  const equipment = read('equipment', text.equipment, (reading, id, entry) =>
    linkEquipment(reading, id, entry, containers, stations, currency),
  );
  return {
    places,
    staff,
    containers,
    equipment,
    ...(text.carriers && {
      carriers: read('carriers', text.carriers, (reading, id, entry) =>
        linkCarrier(reading, id, entry, containers, currency),
      ),
    }),
    ...(text['delivery zones'] && {
      deliveryZones: read('delivery zones', text['delivery zones'], (reading, id, entry) =>
        linkDeliveryZone(reading, id, entry, currency),
      ),
    }),
    ...(text.vehicles && { vehicles: read('vehicles', text.vehicles, linkVehicle) }),
    rentals: read('rentals', text.rentals, (reading, id, entry) => linkRental(reading, id, entry, currency)),
    ...readKit(text, { staff, equipment, currency }, (entries, link) => read('kit', entries, link)),
  };
}

/** The usual kit, where the kitchen goes by it, each item as the kitchen changes it, then what is its own. */
function readKit(
  text: KitchenText,
  names: KitNames & Pick<Kitchen, 'currency'>,
  read: <T>(entries: Readonly<Record<string, T>>, link: LinkEntry<T, KitItem>) => Map<string, KitItem>,
): Pick<KitchenParts, 'kit'> {
  if (text.kit === undefined && text['usual kit'] !== 'yes') return {};
  const usual = text['usual kit'] === 'yes' ? usualKit() : {};
  const ids = Object.keys(usual);
  return {
    kit: read<KitItemText>({ ...usual, ...text.kit }, (reading, id) =>
      linkKit(reading, id, text.kit?.[id], usual[id], ids, names),
    ),
  };
}

type LinkEntry<T, V> = (reading: Reading, id: string, entry: T) => V | undefined;

/** Reads one field's entries, each as an item of its own. */
export function readPart<T, V>(
  ledger: Ledger,
  source: Source,
  field: PartField,
  entries: Readonly<Record<string, T>>,
  link: (reading: Reading, id: string, entry: T) => V | undefined,
): Map<string, V> {
  const found = new Map<string, V>();
  for (const [id, entry] of Object.entries(entries)) {
    const spot = { source, base: [field, id] };
    const value = readItem(ledger, `${PARTS[field]}/${id}`, spot, (reading) => link(reading, id, entry));
    if (value !== undefined) found.set(id, value);
  }
  return found;
}
