import { expect, test } from 'vitest';
import { finding } from '../../../src/book/findings/finding.ts';
import { findingsJson, printFindings } from '../../../src/book/findings/print-findings.ts';

const at = (file: string, line: number, column: number) => ({ file, line, column });
const findings = [
  finding('stray-file', at('notes.txt', 1, 1), 'this file is not used', 'move it'),
  finding('unknown-id', at('recipes/b.mdx', 12, 3), 'no recipe is called “x”', 'did you mean y?'),
  finding('no-value', at('recipes/b.mdx', 2, 30), '“a” has no value', 'write it'),
  finding('no-value', at('recipes/b.mdx', 12, 1), '“b” has no value', 'write it'),
];

test('findings stand in the order of file, line and column, with a count at the end', () => {
  expect(printFindings(findings, '../mine/')).toBe(
    [
      '../mine/notes.txt:1:1 note stray-file this file is not used — move it',
      '../mine/recipes/b.mdx:2:30 error no-value “a” has no value — write it',
      '../mine/recipes/b.mdx:12:1 error no-value “b” has no value — write it',
      '../mine/recipes/b.mdx:12:3 error unknown-id no recipe is called “x” — did you mean y?',
      '3 errors, 1 note.\n',
    ].join('\n'),
  );
});

test('nothing found is said', () => {
  expect(printFindings([], 'content')).toBe('Nothing found.\n');
});

test('a file name or value never steers the terminal', () => {
  const nasty = finding('stray-file', at('a\u001b[2J\nb', 1, 1), 'x\u202ey', 'z');
  expect(printFindings([nasty], 'content')).toBe(
    'content/a\uFFFD[2J b:1:1 note stray-file x\uFFFDy — z\n1 note.\n',
  );
});

test('programs get the same findings in the same order', () => {
  const read = JSON.parse(findingsJson(findings));
  expect(read).toMatchObject({ errors: 3, warnings: 0, notes: 1 });
  expect(read.findings[1]).toEqual({
    severity: 'error',
    code: 'no-value',
    file: 'recipes/b.mdx',
    line: 2,
    column: 30,
    what: '“a” has no value',
    wayOut: 'write it',
  });
});
