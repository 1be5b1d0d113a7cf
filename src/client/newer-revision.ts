/**
 * Whether the site by now serves another revision of the offer than the page shows, by the digest in the `offer.json`
 * beside it. False where nobody can tell: without a connection, or for a page that was kept as a file.
 */
export async function isReplaced(digest: string, fetchIt: typeof fetch): Promise<boolean> {
  try {
    const answer = await fetchIt('offer.json', {
      cache: 'no-store',
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
    });
    const newest = (await answer.json()) as { readonly digest?: unknown } | null;
    return answer.ok && typeof newest?.digest === 'string' && newest.digest !== digest;
  } catch {
    return false;
  }
}

/** What is said of an offer that a newer revision has replaced while its page was open. */
export const REPLACED_WORDS =
  'A newer revision of this offer has replaced the one shown here. Please load the page again: it shows the newest, and what has changed.';
