import { describe, expect, test } from 'vitest';
import { closingLine, tally } from '../../closing-line.ts';

type Modules = Parameters<typeof tally>[0];

const moduleOf = (states: string[], errors = 0, suiteErrors = 0) =>
  ({
    errors: () => Array.from({ length: errors }),
    children: {
      allSuites: () => [{ errors: () => Array.from({ length: suiteErrors }) }],
      allTests: () => states.map((state) => ({ result: () => ({ state }) })),
    },
  }) as unknown as Modules[number];

describe('the closing line', () => {
  test('counts cases, and whatever broke outside of them as failed', () => {
    const modules = [moduleOf(['passed', 'failed', 'skipped', 'pending']), moduleOf(['passed'], 1, 1)];
    expect(tally(modules, 1)).toEqual({ passed: 2, failed: 4, skipped: 2 });
  });

  test('names skipped cases only where there are some', () => {
    expect(closingLine({ passed: 3, failed: 0, skipped: 0 })).toBe('Tests: 3 passed, 0 failed');
    expect(closingLine({ passed: 3, failed: 1, skipped: 2 })).toBe('Tests: 3 passed, 1 failed, 2 skipped');
  });
});
