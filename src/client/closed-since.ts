import { STANDING_FILE, type StandingFile } from '../views/client/standing-file.ts';

const REPLACED =
  'A newer revision of this offer has replaced the one shown here. Please load the page again: it shows the newest, and what has changed.';
const WITHDRAWN =
  'This offer was withdrawn and can no longer be accepted. Please write to us if you have questions.';
const ACCEPTED =
  'This offer has been accepted. Please load the page again: it shows what was accepted, and when.';

/**
 * Why the offer that a page shows can no longer be accepted from it, by what the site says by now in the file beside
 * the page: it was replaced, withdrawn or accepted. Undefined where it stands, and where nobody can tell: without a
 * connection, or for a page that was kept as a file. The day is not asked for here: the page knows it by itself.
 */
export async function closedSince(digest: string, fetchIt: typeof fetch): Promise<string | undefined> {
  try {
    const answer = await fetchIt(STANDING_FILE, {
      cache: 'no-store',
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
    });
    const said = (await answer.json()) as Partial<Record<keyof StandingFile, unknown>> | null;
    if (!answer.ok || said?.version !== 1 || typeof said.offer !== 'string') return undefined;
    if (said.offer !== digest) return REPLACED;
    if (said.state === 'withdrawn') return WITHDRAWN;
    return said.state === 'accepted' ? ACCEPTED : undefined;
  } catch {
    return undefined;
  }
}
