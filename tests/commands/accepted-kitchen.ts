import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished } from 'vitest';
import type { Day } from '../../src/engine/calendar/day.ts';
import type { Choice } from '../../src/engine/quote/choice.ts';
import { makeAcceptance } from '../../src/offers/answers/make-acceptance.ts';
import { digestOfRecord } from '../../src/offers/digest.ts';
import type { Acceptance } from '../../src/schema/acceptance.ts';
import { type Offer, offerSchema } from '../../src/schema/offer.ts';
import { type Change, copyOf, keptCopyOf, SECOND_KITCHEN } from './kitchen-copy.ts';
import { run } from './run.ts';

/** The days on which the second kitchen's evening is issued and accepted. */
export const ISSUED = '2027-04-26';
export const ACCEPTED = '2027-04-28';

/** The unchanged kitchen, issued and accepted once for all tests of a file; they work on copies of it. */
const made = new Map<'issued' | 'accepted', Promise<string>>();

function once(state: 'issued' | 'accepted', changes: readonly Change[]): Promise<string> {
  const makeIn = state === 'issued' ? issueIn : acceptIn;
  if (changes.length > 0) return makeIn(copyOf(SECOND_KITCHEN, changes));
  const known = made.get(state) ?? makeIn(keptCopyOf(SECOND_KITCHEN));
  made.set(state, known);
  return known.then((dir) => copyOf(dir));
}

/** A copy of the second kitchen whose evening has been issued. */
export function issuedKitchen(...changes: readonly Change[]): Promise<string> {
  return once('issued', changes);
}

/** The same, accepted as proposed. */
export function acceptedKitchen(...changes: readonly Change[]): Promise<string> {
  return once('accepted', changes);
}

async function issueIn(dir: string): Promise<string> {
  expect(await run(dir, 'issue', 'lifeboat-evening', '--today', ISSUED)).toMatchObject({ code: 0, err: '' });
  return dir;
}

async function acceptIn(dir: string): Promise<string> {
  await issueIn(dir);
  const file = fileWith(JSON.stringify(acceptanceOf(offerIn(dir))));
  expect(await run(dir, 'accept', file, '--today', ACCEPTED)).toMatchObject({ code: 0, err: '' });
  return dir;
}

/** A file with a text, outside the content, as it comes out of a mail. It goes with the test. */
export function fileWith(text: string): string {
  const dir = mkdtempSync(join(tmpdir(), 'salver-mail-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  writeFileSync(join(dir, 'acceptance.json'), text);
  return join(dir, 'acceptance.json');
}

export function offerIn(dir: string, revision = 1): Offer {
  const file = join(dir, 'offers', `lifeboat-evening-r${revision}.json`);
  return offerSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
}

/** What the client sends back: the proposed choice, or one of its own. */
export function acceptanceOf(offer: Offer, change: Partial<Choice> = {}): Acceptance {
  const signature = { name: 'Aine Trask', email: 'aine@lifeboat.example', note: 'See you there.' };
  const choice = { ...offer.proposed, ...change };
  return makeAcceptance(offer, choice, { ...signature, accepted: ACCEPTED as Day });
}

/** An acceptance changed by somebody who knows how its own digest is made. */
export function forged(acceptance: Acceptance, change: Readonly<Record<string, unknown>>): object {
  const record = { ...acceptance, ...change };
  return { ...record, digest: digestOfRecord(record) };
}
