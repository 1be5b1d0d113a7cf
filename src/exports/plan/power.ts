import type { PoweredPiece, PowerPlan } from '../../engine/plan/load/power.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanPower } from '../form/power.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { clockOf } from '../words/clock-text.ts';
import { offText, wayOutText } from '../words/power-words.ts';

/** Circuits and what is plugged into them, for pages and papers. */
export function planPower(power: PowerPlan, say: Say): PlanPower {
  return {
    stated: power.stated,
    most: say('power.amperes', { n: String(power.most) }),
    circuits: power.circuits.map(({ amperes, pieces, most }, index) => ({
      name: say('power.circuit', { number: String(index + 1), carries: String(amperes) }),
      most: say('power.amperes', { n: String(most) }),
      pieces: pieces.map((piece) => pieceOf(piece, say)),
    })),
    off: power.off.map((piece) => pieceOf(piece, say)),
  };
}

function pieceOf({ name, amperes, from, until }: PoweredPiece, say: Say): PlanPower['off'][number] {
  return {
    item: name,
    amperes: say('power.amperes', { n: String(amperes) }),
    from: clockOf(from),
    until: clockOf(until),
  };
}

/** What does not fit on the venue’s circuits, what nobody has stated of them, and what loads one for hours. */
export function powerFindings(power: PowerPlan, say: Say): PrepPlanDocument['findings'] {
  const about = say('power.heading');
  if (!power.stated)
    return [
      {
        about,
        what: say('power.not-stated', { most: String(power.most) }),
        wayOut: say('power.not-stated.way'),
      },
    ];
  const lasting = power.circuits.flatMap(({ amperes, lasting }, index) =>
    lasting ? [say('power.circuit', { number: String(index + 1), carries: String(amperes) })] : [],
  );
  return [
    ...(power.off.length === 0 ? [] : [{ about, what: offText(power, say), wayOut: wayOutText(power, say) }]),
    ...(lasting.length === 0
      ? []
      : [
          {
            about,
            what: say('power.lasting', { circuits: lasting.join('; ') }),
            wayOut: say('power.lasting.way'),
          },
        ]),
  ];
}
