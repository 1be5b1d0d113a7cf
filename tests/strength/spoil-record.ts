import { digestOfRecord } from '../../src/offers/digest.ts';
import type { Seeded } from '../bench/seeded.ts';
import type { Spoiler } from './spoil.ts';

/** What a field of a record may hold that it never should. */
const VALUES: readonly unknown[] = [
  null,
  true,
  '',
  ' ',
  '\0',
  '\n',
  '\u202E',
  '\uD800',
  '9'.repeat(400),
  'x'.repeat(100_000),
  -1,
  0,
  0.5,
  1e308,
  Number.MAX_SAFE_INTEGER,
  '0',
  '0 serving',
  '-7 serving',
  '1e9 lb',
  '-0.01',
  '999999999999999999.99',
  '1e309',
  '1/0',
  `${'9'.repeat(400)} serving`,
  '½',
  '0000-00-00',
  '2027-02-30',
  '24:00',
  '__proto__',
  'constructor',
  '../../kitchen',
  '<script>1</script>',
  '{process.exit()}',
  '[a](javascript:1)',
  '![a](../../kitchen.yaml)',
  [],
  {},
  [null],
  { a: { b: [{}] } },
  JSON.parse(`${'['.repeat(2000)}${']'.repeat(2000)}`),
  JSON.parse('{"__proto__":{"version":1}}'),
];

type Holder = Record<string, unknown> | unknown[];
/** A place in a record: what holds it, and under which name or number. */
type Place = readonly [holder: Holder, key: string];

/** Ways to spoil a record that stays JSON, so that it is its sense which is wrong; half of them with digests made anew. */
export const RECORDS: Readonly<Record<string, Spoiler>> = {
  'a value of a record replaced': record(([holder, key], random) => put(holder, key, random.of(VALUES))),
  'three values of a record replaced': record((place, random, places) => {
    for (const [holder, key] of [place, random.of(places), random.of(places)])
      put(holder, key, random.of(VALUES));
  }),
  'a value of a record in the place of another': record(([holder, key], random, places) => {
    const [from, name] = random.of(places);
    put(holder, key, structuredClone((from as Record<string, unknown>)[name]));
  }),
  'a field of a record gone': record(([holder, key]) => {
    if (Array.isArray(holder)) holder.splice(Number(key), 1);
    else delete holder[key];
  }),
  'a field more in a record': record(([holder], random) =>
    put(holder, random.of(['x', '', '__proto__', 'toString', 'version', 'digest']), random.of(VALUES)),
  ),
  'a part of a record very often': record(([holder, key]) => {
    const part = (holder as Record<string, unknown>)[key];
    if (Array.isArray(holder)) for (let time = 0; time < 300; time += 1) holder.push(structuredClone(part));
    else for (let time = 0; time < 300; time += 1) put(holder, `${key}-${time}`, structuredClone(part));
  }),
};

function record(spoil: (place: Place, random: Seeded, places: readonly Place[]) => void): Spoiler {
  return (bytes, random) => {
    const root = JSON.parse(bytes.toString('utf8')) as Record<string, unknown>;
    const places = placesIn(root);
    spoil(random.of(places), random, places);
    if (random.below(2) === 0) {
      reseal(root.acceptance);
      if (root.kind !== 'accepted') reseal(root);
    }
    return Buffer.from(JSON.stringify(root, null, 2));
  };
}

function placesIn(value: unknown): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Holder;
  return Object.entries(holder).flatMap(([key, each]) => [[holder, key] as const, ...placesIn(each)]);
}

/** As a field of its own, also where the name is one that every object has. */
function put(holder: Holder, key: string, value: unknown): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
}

/** With its own digest made anew; where nobody can make one, as of half a sign, with the old one. */
function reseal(value: unknown): void {
  if (typeof value !== 'object' || value === null || !('digest' in value)) return;
  try {
    value.digest = digestOfRecord(value);
  } catch {
    // It keeps the one it has.
  }
}
