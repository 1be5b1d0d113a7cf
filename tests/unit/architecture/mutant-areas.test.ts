import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { AREAS, NOT_MEASURED } from '../../strength/mutants/areas.ts';

const cwd = fileURLToPath(new URL('../../..', import.meta.url));
const filesOf = (globs: readonly string[]) => globs.flatMap((glob) => globSync(glob, { cwd }));

/** False for a file of types alone: nothing of it is left to change. */
function runs(file: string): boolean {
  const { outputText } = ts.transpileModule(readFileSync(`${cwd}/${file}`, 'utf8'), {
    compilerOptions: { target: ts.ScriptTarget.ESNext, module: ts.ModuleKind.ESNext, removeComments: true },
  });
  return outputText.replaceAll(/^(import .*|export \{\s*\};)$/gm, '').trim() !== '';
}

describe('the files that are changed in small ways', () => {
  const measured = new Set(filesOf(Object.values(AREAS).flatMap(({ mutate }) => mutate)));
  const not = Object.values(NOT_MEASURED).flat();

  test('are all of the engine and the offers, but those that are named with a reason', () => {
    const missing = filesOf(['src/{engine,offers}/**/*.ts'])
      .filter((file) => !measured.has(file) && !not.includes(file))
      .filter(runs);
    expect(missing, 'give each an area or a reason in tests/strength/mutants/areas.ts').toEqual([]);
  });

  test('are not also named as those that are not, which are there', () => {
    expect(not.filter((file) => measured.has(file))).toEqual([]);
    expect(not.filter((file) => filesOf([file]).length === 0)).toEqual([]);
  });

  test.each(Object.entries(AREAS))('of %s are there, and so are their tests', (_, { mutate, tests }) => {
    expect([...mutate, ...tests].filter((glob) => filesOf([glob]).length === 0)).toEqual([]);
  });
});
