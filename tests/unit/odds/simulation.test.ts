import { expect, test } from 'vitest';
import { demandOf } from '../../../src/engine/odds/demand.ts';
import { chanceOfShortage, leastHelpings } from '../../../src/engine/odds/shortage.ts';
import { seeded } from '../../bench/seeded.ts';

const EVENTS = 1_000_000;

/** The reckoned chances against as many events as it says, each guest and each party drawn for itself. */
test('the chances are those that a million events come to', () => {
  const appetite = Float64Array.of(0.35, 0.45, 0.2);
  const eaters = { sure: 2, free: 14 };
  const attendance = { failToCome: 0.08, partyOf: 2 };
  const random = seeded(20_270_426);
  const draw = () => random.below(1_000_000) / 1_000_000;
  const counted = new Float64Array(40);
  for (let event = 0; event < EVENTS; event += 1) {
    let eaten = 0;
    for (const [guests, sure] of [
      [eaters.sure, true],
      [eaters.free, false],
    ] as const)
      for (let seated = 0; seated < guests; seated += attendance.partyOf) {
        if (draw() < attendance.failToCome) continue;
        for (let guest = seated; guest < Math.min(guests, seated + attendance.partyOf); guest += 1) {
          const at = draw();
          const likes = at < 0.35 ? 0 : at < 0.8 ? 1 : 2;
          eaten += sure ? Math.max(1, likes) : likes;
        }
      }
    counted[eaten]! += 1;
  }
  const chances = demandOf(appetite, eaters, attendance);
  for (const [helpings, chance] of chances.entries()) {
    const deviation = Math.sqrt((chance * (1 - chance)) / EVENTS);
    expect(Math.abs(counted[helpings]! / EVENTS - chance), `${helpings} helpings`).toBeLessThanOrEqual(
      5 * deviation + 1e-9,
    );
  }
  const carried = leastHelpings(chances, 0.02);
  const short = counted.slice(carried + 1).reduce((sum, count) => sum + count, 0) / EVENTS;
  expect(short).toBeCloseTo(chanceOfShortage(chances, carried), 3);
});
