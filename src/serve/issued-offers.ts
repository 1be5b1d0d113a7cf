import { access, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { readFrontMatter } from '../book/bodies/front-matter.ts';
import { readJson } from '../book/files/read-json.ts';
import { readText } from '../book/files/read-text.ts';
import { offerProblem } from '../offers/check-offer.ts';
import { factFile } from '../offers/event/fact-file.ts';
import { type Offer, offerSchema } from '../schema/offer.ts';

/** An offer as it stands now, beside what makes it one that can no longer be accepted. */
export interface IssuedOffer {
  readonly offer: Offer;
  /** Whether a later revision was issued. */
  readonly replaced: boolean;
  /** Whether an event has begun with an acceptance of it. */
  readonly accepted: boolean;
  /** Whether its proposal says that it was taken back. */
  readonly withdrawn: boolean;
}

/** The offers of a content folder, found by digest. */
export interface IssuedOffers {
  /** The unaltered offer with a digest; undefined where none was issued with it. */
  find(digest: string): Promise<IssuedOffer | undefined>;
}

/** What is kept of each offer: of thousands only so much, since the whole is read when it is asked for. */
type Digests = Map<string, string | undefined>;

/** Offers that were read and found sound lately. One that is issued never changes, so it need not be read again. */
const MOST_KEPT = 16;

const OFFER_FILE = /^(?<proposal>[a-z0-9]+(?:-[a-z0-9]+)*)-r(?<revision>[1-9]\d{0,2})\.json$/;

/** Knows the offers of a content folder as they are whenever one is looked for: new files are read then, once each. */
export function issuedOffers(contentDir: string): IssuedOffers {
  const folder = join(contentDir, 'offers');
  const digests: Digests = new Map();
  const lately = new Map<string, Offer>();
  let listing: Promise<void> | undefined;

  async function list(): Promise<void> {
    const names = (await readdir(folder).catch(() => [])).filter((name) => OFFER_FILE.test(name));
    const there = new Set(names);
    for (const name of digests.keys()) if (!there.has(name)) digests.delete(name);
    for (const name of names) {
      if (digests.has(name)) continue;
      digests.set(name, digestIn(join(folder, name), name));
      // A year's offers take a moment to read, and others are served meanwhile.
      await new Promise(setImmediate);
    }
  }

  function read(name: string): Offer | undefined {
    const offer = lately.get(name) ?? readOffer(join(folder, name), name);
    lately.delete(name);
    if (offer) lately.set(name, offer);
    const [oldest] = lately.keys();
    if (lately.size > MOST_KEPT && oldest !== undefined) lately.delete(oldest);
    return offer;
  }

  return {
    async find(digest) {
      // Those who ask while the folder is being listed share the answer.
      listing ??= list().finally(() => {
        listing = undefined;
      });
      await listing;
      const name = [...digests].find(([, each]) => each === digest)?.[0];
      const offer = name === undefined ? undefined : read(name);
      if (!offer || offer.digest !== digest) return undefined;
      const { proposal, revision } = offer;
      const newest = Math.max(...[...digests.keys()].map((each) => revisionOf(each, proposal)));
      const accepted = await access(factFile(contentDir, proposal, 1, 'accepted')).then(
        () => true,
        () => false,
      );
      return { offer, replaced: newest > revision, accepted, withdrawn: isWithdrawn(contentDir, proposal) };
    },
  };
}

/**
 * Whether a proposal's own file says `withdrawn: yes`. A file that cannot be read says nothing: what a client has sent
 * is then kept, and `accept` says what stands against it.
 */
function isWithdrawn(contentDir: string, proposal: string): boolean {
  const name = `${proposal}.md`;
  const { text } = readText(join(contentDir, 'proposals', name), name);
  const data = text === undefined ? undefined : readFrontMatter(name, text).source?.data;
  return (data as { readonly withdrawn?: unknown } | null | undefined)?.withdrawn === 'yes';
}

function digestIn(path: string, name: string): string | undefined {
  const { text } = readText(path, name);
  try {
    const { digest } = JSON.parse(text ?? '') as { digest?: unknown };
    return typeof digest === 'string' ? digest : undefined;
  } catch {
    return undefined;
  }
}

function readOffer(path: string, name: string): Offer | undefined {
  const { text } = readText(path, name);
  const read = text === undefined ? undefined : readJson(name, text, offerSchema);
  if (!read || 'problem' in read) return undefined;
  const offer = read.value;
  const named = name === `${offer.proposal}-r${offer.revision}.json`;
  return named && !offerProblem(offer) ? offer : undefined;
}

/** The revision a file's name gives of a proposal; 0 for another's. */
function revisionOf(name: string, of: string): number {
  const { proposal, revision } = OFFER_FILE.exec(name)?.groups ?? {};
  return proposal === of ? Number(revision) : 0;
}
