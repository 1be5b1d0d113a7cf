import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFrontMatter } from '../../../src/book/bodies/front-matter.ts';
import type { Source } from '../../../src/book/files/place-of.ts';
import { readYaml } from '../../../src/book/files/yaml-source.ts';

function source(text: string): Source {
  const read = readYaml('x.yaml', text);
  if (!read.source) throw new Error(JSON.stringify(read.findings));
  return read.source;
}

/** The first finding, as `line:column code`. */
function first(text: string): string {
  const [found] = readYaml('x.yaml', text).findings;
  return found ? `${found.place.line}:${found.place.column} ${found.code}` : 'nothing';
}

const lineAndColumn = ({ line, column }: { line: number; column: number }) => `${line}:${column}`;

describe('values', () => {
  test('every scalar stays the text that was written', () => {
    const text = 'a: 1_000\nb: 0o14\nc: 1.50\nd: yes\ne: null\nf: ~\ng: 2026-11-25\nh: ½ lb\ni: ""';
    expect(source(text).data).toEqual({
      a: '1_000',
      b: '0o14',
      c: '1.50',
      d: 'yes',
      e: 'null',
      f: '~',
      g: '2026-11-25',
      h: '½ lb',
      i: '',
    });
  });

  test('lists and mappings nest, blocks and quotation marks read as YAML says', () => {
    expect(source('a: [x, "y, z"]\nb:\n  - c: d\n    e: |\n      f\n      g\n').data).toEqual({
      a: ['x', 'y, z'],
      b: [{ c: 'd', e: 'f\ng\n' }],
    });
  });

  test('no key reaches the prototype of the data', () => {
    const { data } = source('constructor: 2 lb');
    expect(Object.getPrototypeOf(data)).toBeNull();
    expect(first('a: 1\n__proto__: { polluted: yes }')).toBe('2:1 key-form');
  });

  test('a file with nothing in it is a mapping without keys', () => {
    expect(source('# nothing yet\n').data).toEqual({});
  });
});

describe('places', () => {
  const { placeOf } = source(
    'name: Stew\ningredients:\n  potato, peeled: 14 lb\nsteps:\n  - do: Boil\n    when: x\n',
  );
  test.each([
    [['name'], 'key', '1:1'],
    [['name'], 'value', '1:7'],
    [['ingredients', 'potato, peeled'], 'key', '3:3'],
    [['ingredients', 'potato, peeled'], 'value', '3:19'],
    [['steps', 0, 'when'], 'key', '6:5'],
  ] as const)('%j %s', (path, part, expected) => {
    expect(lineAndColumn(placeOf(path, part))).toBe(expected);
  });

  test('what is missing is placed at the key that should hold it', () => {
    expect(lineAndColumn(placeOf(['ingredients', 'salt']))).toBe('2:1');
    expect(lineAndColumn(placeOf(['steps', 0, 'station']))).toBe('5:5');
    expect(lineAndColumn(placeOf(['makes']))).toBe('1:1');
  });

  test('what lies inside a text is placed at the text', () => {
    expect(lineAndColumn(placeOf(['ingredients', 'potato, peeled', 'amount']))).toBe('3:19');
  });

  test('lines count from where the data stands in its file, whatever the line ends and byte order mark', () => {
    const { source: read, body } = readFrontMatter(
      'x.mdx',
      '\uFEFF---\r\nname: Stew\r\nkeeps: 3 days\r\n---\r\nStir.\r\n',
    );
    expect(read && lineAndColumn(read.placeOf(['keeps']))).toBe('3:8');
    expect(body).toEqual({ text: 'Stir.\n', line: 5 });
  });
});

describe('slips', () => {
  test.each([
    ['name: "Stew\nmakes: 50\nkeeps: "3 days"', '1:7 yaml-syntax'],
    ['name: [a, b\nmakes: 50', '1:7 yaml-syntax'],
    ['a: 1\nb 2\nc: 3', '2:1 yaml-syntax'],
    ['a:\n\tb: 1', '2:1 yaml-syntax'],
    ['accent: #7a4a2b', '1:1 no-value'],
    ['a: &x 1', '1:7 yaml-alias'],
    ['<<: { a: 1 }', '1:1 yaml-alias'],
    ['%YAML 1.2\n---\na: 1', '1:1 yaml-documents'],
    ['a: "\\0"', '1:4 control-character'],
    ['a:\n  - x\n  -\n', '3:4 no-value'],
    ['- '.repeat(40), '1:25 yaml-too-deep'],
  ])('%j is placed where the author has to look', (text, expected) => {
    expect(first(text)).toBe(expected);
  });

  test('all slips of a file are told in one run, and the rest of it is read', () => {
    const { source: read, findings } = readYaml('x.yaml', 'a:\nb: *x\nb: 2\nc: 3\nd: !t 4');
    expect(findings.map(({ place, code }) => `${place.line} ${code}`)).toEqual([
      '1 no-value',
      '2 yaml-alias',
      '3 duplicate-key',
      '5 yaml-tag',
    ]);
    expect(read?.data).toEqual({ c: '3' });
    expect(['a', 'b', 'c', 'd', 'e'].map((key) => read?.isReported([key]))).toEqual([
      true,
      true,
      false,
      true,
      false,
    ]);
    expect(read?.isReported(['b', 'amount'])).toBe(true);
  });

  test('a comma in braces is explained by what was probably meant', () => {
    expect(readYaml('x.yaml', 'a: { rate: 20 %, on: food, drink }').findings[0]?.wayOut).toBe(
      'write on: "food, drink"',
    );
    expect(readYaml('x.yaml', 'accent: #7a4a2b').findings[0]?.wayOut).toBe('write accent: "#7a4a2b"');
  });

  test('a list with a hole is no list', () => {
    const { source: read } = readYaml('x.yaml', 'payments: [30 %, *x, balance]');
    expect(read?.data).toEqual({});
    expect(read?.isReported(['payments'])).toBe(true);
  });
});

describe('hostile files', () => {
  test('aliases that would grow without end are never followed', () => {
    const laughs = Array.from(
      { length: 9 },
      (_, n) => `k${n + 1}: &k${n + 1} [${`*k${n}, `.repeat(9)}]`,
    ).join('\n');
    const { findings } = readYaml('x.yaml', `k0: &k0 lol\n${laughs}`);
    expect(findings.every(({ code }) => code === 'yaml-alias')).toBe(true);
    expect(findings).toHaveLength(10);
  });

  test('any text is read or refused with places inside of it, and nothing throws', () => {
    const marks = fc.constantFrom(
      ...'[]{}:,-?&*!|>\'"%@`#~ \t\n',
      'a',
      'b: ',
      '- ',
      '\n  ',
      '---\n',
      '<<: ',
      '\0',
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(marks, { maxLength: 60 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(text, (written) => {
        const lines = written.split(/\r\n?|\n/).length;
        const read = readYaml('x.yaml', written);
        expect(read.source !== undefined || read.findings.length > 0).toBe(true);
        for (const { place } of read.findings) {
          expect(place.line).toBeGreaterThanOrEqual(1);
          expect(place.line).toBeLessThanOrEqual(lines);
          expect(place.column).toBeGreaterThanOrEqual(1);
        }
      }),
      { numRuns: 500 },
    );
  });
});
