import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { AREAS, type Area } from './areas.ts';

const require = createRequire(import.meta.url);
const root = fileURLToPath(new URL('../../..', import.meta.url));

/** How the mutants of an area fared. */
export interface Fared {
  /** In hundredths of all mutants. */
  readonly found: number;
  /** `src/engine/money/tax.ts:26 ConditionalExpression → false`, one for each that no test noticed. */
  readonly survivors: readonly string[];
}

interface Report {
  readonly files: Readonly<
    Record<
      string,
      {
        readonly mutants: readonly {
          readonly mutatorName: string;
          readonly replacement?: string;
          readonly status: string;
          readonly location: { readonly start: { readonly line: number } };
        }[];
      }
    >
  >;
}

/** Changes each of an area's files in every small way, one at a time, and runs the tests nearest to it. Takes minutes. */
export function tryMutants({ mutate, tests }: Area): Fared {
  const ran = spawnSync(
    process.execPath,
    [
      join(dirname(require.resolve('@stryker-mutator/core/package.json')), 'bin/stryker.js'),
      'run',
      'tests/strength/mutants/stryker.config.json',
      '--plugins',
      require.resolve('@stryker-mutator/vitest-runner'),
      '--mutate',
      mutate.join(','),
    ],
    { cwd: root, env: { ...process.env, SALVER_MUTANT_TESTS: tests.join(' ') }, encoding: 'utf8' },
  );
  if (ran.status !== 0) {
    const ended = ran.error?.message ?? (ran.signal ? `ended by ${ran.signal}` : `status ${ran.status}`);
    throw new Error(`${ended}\n${ran.stdout.slice(-4000)}\n${ran.stderr}`);
  }
  const { files } = JSON.parse(readFileSync(join(root, '.salver/mutants.json'), 'utf8')) as Report;
  const tried = Object.entries(files).flatMap(([file, { mutants }]) =>
    mutants
      .filter(({ status }) => status !== 'Ignored' && status !== 'CompileError')
      .map((mutant) => ({ file, ...mutant })),
  );
  const survivors = tried
    .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
    .map(
      ({ file, location, mutatorName, replacement }) =>
        `${file}:${location.start.line} ${mutatorName} → ${replacement?.slice(0, 80).replace(/\s+/g, ' ')}`,
    );
  return { found: (100 * (tried.length - survivors.length)) / tried.length, survivors };
}

// By hand: `node tests/strength/mutants/try-mutants.ts money`, or a file and its tests.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [area = '', ...tests] = process.argv.slice(2);
  const { found, survivors } = tryMutants(AREAS[area] ?? { mutate: [area], tests, found: 0 });
  process.stdout.write(`${survivors.join('\n')}\n${found.toFixed(1)} % found\n`);
}
