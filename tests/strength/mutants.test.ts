import { expect, test } from 'vitest';
import { LONG } from './long.ts';
import { AREAS } from './mutants/areas.ts';
import { tryMutants } from './mutants/try-mutants.ts';

test.runIf(LONG).each(Object.entries(AREAS))(
  'small changes to %s are noticed by the tests nearest to it',
  (_, area) => {
    const { found, survivors } = tryMutants(area);
    expect(found, survivors.join('\n')).toBeGreaterThanOrEqual(area.found);
  },
);
