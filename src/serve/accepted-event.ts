import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type EventStatus, eventStatus } from '../offers/event/status.ts';
import { type EventFact, eventFactSchema } from '../schema/event-fact.ts';
import type { Offer } from '../schema/offer.ts';

/** An event as its facts have it now: the digest of the offer that began it, and where it stands if it is this one. */
export interface AcceptedEvent {
  readonly digest: string;
  readonly status: EventStatus;
}

const FACT_FILE = /^\d{3}-[a-z-]+\.json$/;

/**
 * The event that an offer's acceptance began, read from its folder alone; undefined where none has begun. Fails where a
 * fact cannot be read: then nobody can say what may still be changed.
 */
export async function acceptedEvent(contentDir: string, offer: Offer): Promise<AcceptedEvent | undefined> {
  const folder = join(contentDir, 'events', offer.proposal);
  const names = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    throw error;
  });
  const facts: EventFact[] = [];
  for (const name of names.filter((each) => FACT_FILE.test(each)).sort())
    facts.push(eventFactSchema.parse(JSON.parse(await readFile(join(folder, name), 'utf8'))));
  const [first] = facts;
  if (first?.kind !== 'accepted') return undefined;
  return { digest: first.digest, status: eventStatus(offer, facts) };
}
