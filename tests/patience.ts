/**
 * How many times longer than on a quiet machine anything in a test may take. Tests are to fail for what they find and
 * not because a machine is busy, so that this is the one place where a limit by the clock is set. What is limited on
 * purpose (what a receiver cuts off, how long a lock is waited for) is the product's own and stands in its tests.
 */
export const PATIENCE = 15;

/** What one test, one of the long run, and what making ready for a file's tests, may take on a quiet machine, in milliseconds. */
export const TEST_TIME = 40_000;
export const LONG_TEST_TIME = 600_000;
export const HOOK_TIME = 60_000;

/** What a browser may take for one step, in milliseconds. */
export const STEP_TIME = 10_000;
