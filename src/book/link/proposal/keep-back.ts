import Fraction from 'fraction.js';
import { parseClock } from '../../../engine/kitchen/parse-clock.ts';
import { parseGuestCount } from '../../../engine/measure/guest-count.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import type { KeepBack } from '../../../engine/menu/keep-back.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';

/** The most that is kept back of a dish: half of it. */
const MOST = new Fraction(1n, 2n);

/** Reads `5 %` or `5 % in addition`. */
export function parseKeepBack(text: string): Parsed<Pick<KeepBack, 'share' | 'inAddition'>> {
  const [, written = '', more] = /^(.+?)( in addition)?$/.exec(text.trim().toLowerCase()) ?? [];
  const share = parseShare(written);
  if (!share.ok) return share;
  return share.value.n === 0n || share.value.gt(MOST)
    ? notParsed(`${written} of each dish can’t be kept back`, 'write a share above 0 and up to 50 %')
    : parsed({ share: share.value, ...(more && { inAddition: true as const }) });
}

/** Reads `4 until 9:00 pm`. */
export function parseLateGuests(text: string): Parsed<NonNullable<KeepBack['late']>> {
  const [, count = '', time = ''] = /^(.+?) until (.+)$/.exec(text.trim()) ?? [];
  if (count === '')
    return notParsed(
      `“${text.slice(0, 40)}” does not say how many come late`,
      'write such as “4 until 9:00 pm”',
    );
  const guests = parseGuestCount(count);
  if (!guests.ok) return guests;
  const until = parseClock(time);
  return until.ok ? parsed({ guests: guests.value, until: until.value }) : until;
}
