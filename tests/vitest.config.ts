import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { compiledWordsPlugin } from '../src/build/compiled-words.ts';
import { HOOK_TIME, LONG_TEST_TIME, PATIENCE, TEST_TIME } from './patience.ts';

/** One run for all kinds of tests; the closing line is what a build server reads. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  plugins: [compiledWordsPlugin()],
  test: {
    reporters: ['default', './tests/closing-line.ts'],
    globalSetup: './tests/shared-folder.ts',
    testTimeout: (process.env.SALVER_LONG ? LONG_TEST_TIME : TEST_TIME) * PATIENCE,
    hookTimeout: HOOK_TIME * PATIENCE,
    teardownTimeout: TEST_TIME * PATIENCE,
    maxWorkers: 2,
    // The compiled site is run as the build runs it, not taken apart once more by the test runner.
    server: { deps: { external: [/\.salver\/.*\/server\//] } },
    // The browser's tests come last and one file at a time: some measure what a page costs, and would measure the
    // other tests as well.
    projects: [
      {
        extends: true,
        test: {
          name: 'plain',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
