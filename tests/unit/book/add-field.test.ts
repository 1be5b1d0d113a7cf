import { describe, expect, test } from 'vitest';
import { withField } from '../../../src/book/files/add-field.ts';
import { must } from '../plan/builders.ts';

const FILE = `# What we buy by the jar.
relish:   # from the market
  name: Onion relish   # as guests know it

  from: plant
  parts: |
    onion, sugar
    vinegar

# Never without its label.
paste: { from: 'plant', yields: { drained: 60 % } }
empty:
last:
    contains: none # sure`;

describe('a field added to an ingredients file', () => {
  test('is a line below the entry’s last, and all else stays to the letter', () => {
    expect(must(withField(FILE, 'relish', 'contains', 'none'))).toBe(
      FILE.replace('    vinegar\n', '    vinegar\n  contains: none\n'),
    );
  });

  test('goes into braces where the entry is in braces', () => {
    expect(must(withField(FILE, 'paste', 'contains', 'soy, wheat'))).toBe(
      FILE.replace('{ drained: 60 % } }', '{ drained: 60 % }, contains: soy, wheat }').replace(
        'contains: soy, wheat',
        'contains: "soy, wheat"',
      ),
    );
  });

  test('begins an entry of which only the name is written', () => {
    expect(must(withField(FILE, 'empty', 'from', 'plant'))).toBe(
      FILE.replace('empty:\n', 'empty:\n  from: plant\n'),
    );
  });

  test('keeps the indent and the comment of the last line, and ends a file that had no end', () => {
    expect(must(withField(FILE, 'last', 'from', 'fish'))).toBe(`${FILE}\n    from: fish\n`);
  });

  test('is an entry of its own where there is none, in a file that may be empty', () => {
    expect(must(withField('', 'salt', 'contains', 'none'))).toBe('salt:\n  contains: none\n');
    expect(must(withField('a:\r\n  from: plant\r\n', 'b', 'parts', 'sugar: much # so'))).toBe(
      'a:\r\n  from: plant\r\nb:\r\n  parts: "sugar: much # so"\r\n',
    );
  });

  test('is refused where the entry says it already, is no mapping, or the file is broken', () => {
    expect(withField(FILE, 'relish', 'from', 'milk').ok).toBe(false);
    expect(withField('relish: good\n', 'relish', 'from', 'milk').ok).toBe(false);
    expect(withField('relish: [\n', 'relish', 'from', 'milk').ok).toBe(false);
  });
});
