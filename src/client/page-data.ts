import type { ClientTerms } from '../views/client/terms.ts';

/** The id of the data block that the build writes into a proposal's page. */
const DATA_ID = 'proposal-data';

/** The terms that this page was made with; null where the page holds none, so that it stays as plain as it is. */
export function pageData(page: Document): ClientTerms | null {
  const text = page.getElementById(DATA_ID)?.textContent;
  const data = text ? (JSON.parse(text) as ClientTerms) : null;
  return data?.version === 1 ? data : null;
}
