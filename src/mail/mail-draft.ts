import MailComposer from 'nodemailer/lib/mail-composer';
import type { Day } from '../engine/calendar/day.ts';
import { textProblem, visibleLine } from '../engine/text/visible-text.ts';

/** A mail to be looked over and sent by hand. */
export interface MailDraft {
  readonly from: Mailbox | undefined;
  readonly to: Mailbox | undefined;
  readonly subject: string;
  /** Plain text, line feeds. */
  readonly text: string;
  readonly attachment: { readonly name: string; readonly pdf: Uint8Array } | undefined;
  /** The day it is drafted; a mail program puts in the moment of sending. */
  readonly day: Day;
  /** Unlike any other mail's: letters, digits and hyphens, and the host after an @. */
  readonly id: string;
}

/** Somebody's name and address. */
export interface Mailbox {
  readonly name: string;
  readonly address: string;
}

/** How a file of ours begins, so that it is told from other people's mails. */
export const DRAFT_BEGINS = 'X-Unsent: 1\r\n';

/**
 * A draft as an RFC 5322 message that mail programs open for sending (`X-Unsent`). The same draft gives the same
 * bytes. Names and subject are made one line first: nothing in them can become a header or a further address.
 */
export async function mailDraft(draft: MailDraft): Promise<Buffer> {
  const { from, to, subject, text, attachment, day, id } = draft;
  return new MailComposer({
    headers: { 'X-Unsent': '1' },
    ...(from && { from: mailbox(from) }),
    ...(to && { to: mailbox(to) }),
    subject: oneLine(subject),
    date: new Date(`${day}T12:00:00Z`),
    messageId: `<${id}>`,
    // Text in base64 goes out as it is, and has to have a mail's line ends there too (RFC 2049, 4).
    text: text.replace(/\r?\n/g, '\r\n'),
    attachments: attachment
      ? [{ filename: attachment.name, content: Buffer.from(attachment.pdf), contentType: 'application/pdf' }]
      : [],
    // What marks off the parts is random by default, and has to be found nowhere inside of them.
    baseBoundary: id.replace(/[^a-z0-9]/gi, ''),
    newline: 'windows',
    disableFileAccess: true,
    disableUrlAccess: true,
  })
    .compile()
    .build();
}

/** Whether a text is one address, without a name, a comment or a second address. */
export function isAddress(text: string): boolean {
  return /^[^\s"(),:;<>@[\\\]]+@[^\s"(),:;<>@[\\\]]+$/.test(text) && textProblem(text) === undefined;
}

/** The address is left out of the draft where it could be read as more than one. */
function mailbox({ name, address }: Mailbox): { name: string; address: string } {
  return { name: oneLine(name), address: isAddress(address) ? address : '' };
}

function oneLine(text: string): string {
  return visibleLine(text).slice(0, 300);
}
