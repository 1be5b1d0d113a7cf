/** Where a proposal's page is served: `site` is the public site's address without a slash at its end. */
export function proposalAddress(site: string, link: string): string {
  return `${site}/proposals/${link}/`;
}
