import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { compiledWordsPlugin } from '../src/build/compiled-words.ts';
import { HOOK_TIME, LONG_TEST_TIME, PATIENCE, TEST_TIME } from './patience.ts';

/**
 * Tests of what keeps nothing between calls: their files run in one process one after another, so that each need not
 * load the engine, the forms and the words anew, which took more than the tests. What starts processes, sets a signal
 * or watches memory has a process of its own.
 */
const SHARING = [
  'unit/{calendar,course,food,kitchen,measure,menu,money,odds,offers,plan,purchase,quote,safety,schema,text,words}',
  'unit/{book,client,commands,components,demo,events,exports,learning,solver,store-room,views}',
  'findings',
  'property',
  'reference',
]
  .map((folder) => `tests/${folder}/**/*.test.ts`)
  .concat('tests/commands/!(build|process|terminal).test.ts');

/** What measures how long a page works, and would measure other tests as well. */
const ALONE = 'tests/browser/slider.test.ts';

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
    projects: [
      {
        extends: true,
        test: { name: 'plain', include: ['tests/**/*.test.ts'], exclude: [...SHARING, ALONE] },
      },
      { extends: true, test: { name: 'sharing', include: SHARING, isolate: false } },
      { extends: true, test: { name: 'alone', include: [ALONE], sequence: { groupOrder: 1 } } },
    ],
  },
});
