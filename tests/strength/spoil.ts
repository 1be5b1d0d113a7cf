import type { Seeded } from '../bench/seeded.ts';
import { RECORDS } from './spoil-record.ts';

/** A way to spoil a file: its bytes in, other bytes out. */
export type Spoiler = (bytes: Buffer, random: Seeded) => Buffer;

const text = (change: (text: string, random: Seeded) => string): Spoiler => {
  return (bytes, random) => Buffer.from(change(bytes.toString('utf8'), random));
};

const SCRAPS = [
  '\0',
  '{',
  '}',
  '[',
  ']',
  ': ',
  '- ',
  '\n---\n',
  '"',
  "'",
  '&a ',
  '*a',
  '<<: *a\n',
  '!!js/function ',
  '<x>',
  '{{',
  '%',
  '|',
  '>',
  '\uFFFD',
  '\uFEFF',
  '\u2028',
  '\u202E',
  '1e309',
  '-1',
  '0',
  'NaN',
  'Infinity',
  ',,,',
  '__proto__: ',
  'constructor: x\n',
  '\t',
  '\r',
  '\r\n',
  'null',
  'true',
  '0x10',
  '1_000',
  '½',
  '1/0',
  '99999999999999999999999999 lb',
  '-3 oz',
  '2027-02-30',
  '../../etc/passwd',
] as const;

const MARKDOWN = [
  '<script>1</script>',
  '{process.exit()}',
  'import x from "y"\n',
  'export const a = 1\n',
  '[a](javascript:1)',
  '![a](http://x.example/a.png)',
  '![a](../../kitchen.yaml)',
  '<img src=x onerror=1>',
  '<WatchOut',
  '</WatchOut>',
  '<CooksNote>{1}</CooksNote>',
  '[^1]: [^1]',
  '$$',
  '~~~',
  '```',
  '&#x0;',
  '<!-- ',
  '\n> '.repeat(40),
  '*'.repeat(400),
  '['.repeat(400),
  '`'.repeat(401),
  '_a'.repeat(300),
  '<a'.repeat(200),
  '| a '.repeat(300),
] as const;

const at = (value: string, random: Seeded) => random.below(value.length + 1);

/** A piece put in somewhere, some of what stood there cut out. */
const put = (value: string, piece: string, random: Seeded) => {
  const start = at(value, random);
  return value.slice(0, start) + piece + value.slice(start + random.below(30));
};

/** The everyday faults and the hostile ones; each is cheap. */
const SMALL: Record<string, Spoiler> = {
  'cut off': (bytes, random) => bytes.subarray(0, random.below(bytes.length)),
  'a scrap put in': text((value, random) => put(value, random.of(SCRAPS), random)),
  'three scraps put in': text((value, random) =>
    [1, 2, 3].reduce((each) => put(each, random.of(SCRAPS), random), value),
  ),
  'a byte changed': (bytes, random) => {
    const copy = Buffer.from(bytes);
    if (copy.length > 0) copy[random.below(copy.length)] = random.below(256);
    return copy;
  },
  'bytes of no encoding': (bytes, random) =>
    Buffer.concat([
      bytes.subarray(0, random.below(bytes.length)),
      Buffer.from([0xc3, 0x28, 0xff, 0xed, 0xa0, 0x80]),
    ]),
  'two-byte letters': (bytes) => Buffer.from(`\uFEFF${bytes.toString('utf8')}`, 'utf16le'),
  'a letter of another time': (bytes) => Buffer.from(bytes.toString('utf8'), 'latin1'),
  'a line twice': text((value, random) => {
    const lines = value.split('\n');
    const line = random.of(lines);
    lines.splice(random.below(lines.length + 1), 0, line);
    return lines.join('\n');
  }),
  'a line gone': text((value, random) => {
    const lines = value.split('\n');
    lines.splice(random.below(lines.length), 1);
    return lines.join('\n');
  }),
  'a line further in': text((value, random) => {
    const lines = value.split('\n');
    const line = random.below(lines.length);
    lines[line] = `${' '.repeat(1 + random.below(5))}${lines[line]}`;
    return lines.join('\n');
  }),
  'a value of another type': text((value, random) =>
    value.replace(new RegExp(`(?<=^(?:.*\\n){${random.below(20)}} *[\\w -]+: ).+`), () =>
      random.of(['[]', '{}', '[1, 2]', '{ a: b }', '', '~', '-1', '1e999', '"', '9'.repeat(300)]),
    ),
  ),
  'a figure beyond all measure': text((value, random) =>
    value.replace(/\d+/g, (digits) => (random.below(12) === 0 ? '9'.repeat(1 + random.below(400)) : digits)),
  ),
  'aliases and merge keys': text((value, random) =>
    put(value, '\na: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n<<: *c\n', random),
  ),
  'quoting of a spreadsheet gone wrong': text((value, random) =>
    put(value, random.of(['"', '""', '","', '"\n', '\n"', ';', '\t', '"a"b', ',"a', '=1+1']), random),
  ),
  'hostile words in the body': text(
    (value, random) => `${value}\n${random.of(MARKDOWN)}\n${random.of(MARKDOWN)}`,
  ),
  'hostile words anywhere': text((value, random) => put(value, random.of(MARKDOWN), random)),
  'nested sixty deep': text((value, random) =>
    put(value, `\nx: ${'['.repeat(60)}${']'.repeat(60)}\n`, random),
  ),
  'another file of the folder': (_, random) =>
    Buffer.from(random.of(['', '---\n---\n', '{}', '[]', 'x', '\n\n\n', '---', '"'])),
};

/** Faults of size; each costs, so that they come seldom. */
const LARGE: Record<string, Spoiler> = {
  'nested 20,000 deep': text((value) => `${value}\nx: ${'['.repeat(20_000)}`),
  'mappings nested 3,000 deep': text((value) => {
    const deep = Array.from({ length: 3000 }, (_, depth) => `${' '.repeat(depth)}k:`).join('\n');
    return `${value}\n${deep}`;
  }),
  '200,000 keys': text(
    (value) => `${value}\n${Array.from({ length: 200_000 }, (_, n) => `k${n}: v`).join('\n')}\n`,
  ),
  '200,000 keys in front': text(
    (value) => `---\n${Array.from({ length: 200_000 }, (_, n) => `k${n}: v`).join('\n')}\n${value}`,
  ),
  'a line of ten megabytes': text((value) => `${value}\n${'x'.repeat(10_000_000)}\n`),
  'an alias that doubles thirty times': text((value) => {
    const doubled = Array.from({ length: 30 }, (_, n) => `a${n + 1}: &a${n + 1} [*a${n}, *a${n}]`).join('\n');
    return `${value}\na0: &a0 [x]\n${doubled}\n`;
  }),
  'a hundred thousand stars': text((value) => `${value}\n${'*a'.repeat(50_000)}\n`),
  'a hundred thousand brackets': text((value) => `${value}\n${'['.repeat(100_000)}\n`),
  'quotes nested without end': text((value) => `${value}\n${'> '.repeat(20_000)}x\n`),
  'lists nested without end': text((value) => `${value}\n${'- '.repeat(20_000)}x\n`),
  'tags opened without end': text((value) => `${value}\n${'<CooksNote>'.repeat(5_000)}\n`),
  'a record of 200,000 fields': text((value) =>
    value.replace('{', () => `{${Array.from({ length: 200_000 }, (_, n) => `"k${n}":0`).join(',')},`),
  ),
  'lists nested 50,000 deep in a record': text((value) =>
    value.replace('{', () => `{"k":${'['.repeat(50_000)}${']'.repeat(50_000)},`),
  ),
  'rows without end': text((value) => `${value}\n${'food,1 lb,1.00,A,2026-01-01\n'.repeat(60_000)}`),
};

/** One file spoilt in one way. */
export interface Mutant {
  readonly file: string;
  readonly way: string;
  readonly bytes: Buffer;
}

/** One spoilt file out of a folder's; one in a hundred or so by its size. */
export function mutant(files: Readonly<Record<string, Buffer>>, random: Seeded): Mutant {
  const file = random.of(Object.keys(files));
  const small = file.endsWith('.json') && random.below(2) === 0 ? RECORDS : SMALL;
  const ways = random.below(120) === 0 ? LARGE : small;
  const way = random.of(Object.keys(ways));
  return { file, way, bytes: ways[way]!(files[file]!, random) };
}

/** What stands behind a record makes it none, whatever it is: of such faults a record has one, besides those in it. */
const IN_RECORDS = /in a record|record of|megabytes|20,000 deep/;

/** Every fault of size that a file can have, one after the other. */
export function largeMutants(file: string, bytes: Buffer, random: Seeded): Mutant[] {
  return Object.entries(LARGE)
    .filter(([way]) => !file.endsWith('.json') || IN_RECORDS.test(way))
    .map(([way, spoil]) => ({ file, way, bytes: spoil(bytes, random) }));
}
