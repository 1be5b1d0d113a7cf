import type { Book } from '../book/book.ts';
import type { FindingCode } from '../book/findings/catalogue.ts';
import type { Finding } from '../book/findings/finding.ts';
import { sortFindings } from '../book/findings/print-findings.ts';
import { type KeptReading, keepReading } from '../book/kept-reading.ts';
import { findingsOn } from '../check/findings-on.ts';
import { readBook } from '../check/read-book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { offerProblem } from '../offers/check-offer.ts';
import { bodiesOf } from '../views/bodies-of.ts';
import type { Body } from '../views/body.ts';
import type { BannerView } from '../views/kitchen/view.ts';
import type { Site } from '../views/site.ts';
import { siteOf } from '../views/site-of.ts';
import { plansAtHand } from './kept-plans.ts';
import { projectDir } from './project-dir.ts';
import { type RememberedOffers, rememberedOffers } from './sound-offers.ts';

/** The content of a folder, and all that is shown of it. */
export interface ReadSite {
  findings: Finding[];
  /** Undefined where the kitchen itself cannot be read: then nothing can be shown. */
  shown: { book: Book; site: Site; bodies: Body[] } | undefined;
}

/** What a process keeps that reads the same folder again and again. */
export interface KeptBetween {
  sound: RememberedOffers;
  reading: KeptReading;
}

/** Nothing read yet, and the offers that earlier builds found sound. */
export async function keepBetween(): Promise<KeptBetween> {
  return { sound: await rememberedOffers(projectDir), reading: keepReading() };
}

/**
 * Reads a caterer's files and makes what both sites show of them on the day that `dayIn` gives for a time zone; with what
 * was kept from the last time, only what has changed is read again.
 */
export async function readSite(
  contentDir: string,
  dayIn: (zone: string) => Day,
  kept?: KeptBetween,
): Promise<ReadSite> {
  const sound = kept?.sound ?? (await rememberedOffers(projectDir));
  const { book, findings: ofFiles } = await readBook(contentDir, offerProblem, sound, kept?.reading);
  await sound.save();
  if (!book) return { findings: ofFiles, shown: undefined };
  const today = dayIn(book.kitchen.timeZone);
  const findings = [...ofFiles, ...findingsOn(book, today)];
  const plans = plansAtHand(contentDir, book, today);
  const site = siteOf(book, bannerOf(findings), today, plans);
  return { findings, shown: { book, site, bodies: bodiesOf(book, plans) } };
}

const WAITING: readonly FindingCode[] = ['acceptance-waiting', 'count-change-waiting', 'guest-list-waiting'];

/** What stands above the kitchen's pages: what is wrong, and what clients have sent that waits to be taken. */
function bannerOf(findings: readonly Finding[]): BannerView | null {
  const sorted = sortFindings(findings);
  const errors = sorted.filter(({ severity }) => severity === 'error');
  const waiting = sorted
    .filter(({ code }) => WAITING.includes(code))
    .map(({ what, wayOut }) => `${what} — ${wayOut}`);
  if (errors.length === 0 && waiting.length === 0) return null;
  const lines = errors.map(({ place, what, wayOut }) => `${place.file}:${place.line}: ${what} — ${wayOut}`);
  return { errors: errors.length, lines, waiting };
}
