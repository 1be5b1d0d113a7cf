import { CURRENT_FILE, type CurrentFile } from '../views/client/current-file.ts';
import { say } from './words.ts';

/**
 * Why the offer that a page shows can no longer be accepted from it, by what the site says by now in the file beside
 * the page: it was replaced, withdrawn or accepted. Undefined where it stands, and where nobody can tell: without a
 * connection, or for a page that was kept as a file. The day is not asked for here: the page knows it by itself.
 */
export async function closedSince(digest: string, fetchIt: typeof fetch): Promise<string | undefined> {
  try {
    const answer = await fetchIt(CURRENT_FILE, {
      cache: 'no-store',
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
    });
    const said = (await answer.json()) as Partial<Record<keyof CurrentFile, unknown>> | null;
    if (!answer.ok || said?.version !== 1 || typeof said.offer !== 'string') return undefined;
    if (said.offer !== digest) return say('closed.replaced');
    if (said.state === 'withdrawn') return say('closed.withdrawn');
    return said.state === 'accepted' ? say('closed.accepted') : undefined;
  } catch {
    return undefined;
  }
}
