/** What the file with a client's acceptance is called, where the page makes it and where the owner is told to take it in. */
export function acceptanceFileName(proposal: string, revision: number): string {
  return `acceptance-${proposal}-r${revision}.json`;
}
