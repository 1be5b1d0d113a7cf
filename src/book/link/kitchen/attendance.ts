import Fraction from 'fraction.js';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import type { StatedAttendance } from '../../../engine/odds/attendance.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

/** The fields in which a kitchen or a proposal says how guests come. */
interface AttendanceText {
  readonly 'no-shows'?: string | undefined;
  readonly 'parties of'?: string | undefined;
}

/** How guests come, each of its two figures over the usual; undefined where no no-shows are stated. */
export function linkAttendance(
  reading: Reading,
  text: AttendanceText,
  usual: StatedAttendance | undefined,
): StatedAttendance | undefined {
  const { 'no-shows': fail, 'parties of': parties } = text;
  if (fail === undefined && parties === undefined) return usual;
  const failToCome =
    fail === undefined ? usual?.failToCome : reading.understand(['no-shows'], fail, parseFailing);
  const partyOf =
    parties === undefined
      ? (usual?.partyOf ?? 1)
      : reading.understand(['parties of'], parties, wholeNumber(1, 100));
  return { failToCome: failToCome ?? new Fraction(0n), partyOf: partyOf ?? 1 };
}

function parseFailing(text: string): Parsed<Fraction> {
  const share = parseShare(text);
  if (!share.ok || share.value.lt(1n)) return share.ok ? parsed(share.value) : share;
  return notParsed(
    `with “${text.slice(0, 40)}” nobody would come`,
    'write a percentage below 100 %, such as 3 %',
  );
}
