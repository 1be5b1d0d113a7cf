/**
 * How a client's acceptance comes back to the kitchen: as a file that the page hands to the client, as a mail
 * draft to an address, or posted to an address on the web.
 */
export type AnswerWay =
  | { readonly by: 'download' }
  | { readonly by: 'mail'; readonly to: string }
  /** Null: to /acceptances of whatever site serves the page, which `../../acceptances` is from a proposal's page. */
  | { readonly by: 'post'; readonly to: string | null };

/** What stands where a kitchen, or an older offer, says nothing: it needs no server and no mail program. */
export const DEFAULT_ANSWER_WAY: AnswerWay = { by: 'download' };
