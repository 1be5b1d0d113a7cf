import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { compiledWordsPlugin } from '../../../src/build/compiled-words.ts';

/** The tests that mutants of some files are tried against: those nearest to them, as `areas.ts` names them. */
export default defineConfig({
  root: fileURLToPath(new URL('../../..', import.meta.url)),
  plugins: [compiledWordsPlugin()],
  test: {
    testTimeout: 60_000,
    include: (process.env.SALVER_MUTANT_TESTS ?? '').split(' ').filter(Boolean),
  },
});
