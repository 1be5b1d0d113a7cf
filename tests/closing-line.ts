import type { Reporter, TestModule } from 'vitest/node';

/** How many test cases ended in each way. */
export interface Tally {
  passed: number;
  failed: number;
  skipped: number;
}

/**
 * The run's last line: `Tests: N passed, N failed`, and `, N skipped` where some were.
 */
export function closingLine({ passed, failed, skipped }: Tally): string {
  return `Tests: ${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

/**
 * Counts every test case. What broke outside a case (a file that does not load, an error nobody caught)
 * counts as one failure each, so that the line never says 0 failed for a run that did not succeed.
 */
export function tally(modules: readonly TestModule[], strayErrors: number): Tally {
  const counts = { passed: 0, failed: strayErrors, skipped: 0 };
  for (const module of modules) {
    counts.failed += module.errors().length;
    for (const suite of module.children.allSuites()) counts.failed += suite.errors().length;
    for (const test of module.children.allTests()) {
      const { state } = test.result();
      if (state === 'passed' || state === 'failed') counts[state] += 1;
      else counts.skipped += 1;
    }
  }
  return counts;
}

/** Writes the closing line alone on its line, after everything else that was reported. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    process.stdout.write(`\n${closingLine(tally(modules, errors.length))}\n`);
  }
}
