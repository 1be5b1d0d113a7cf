import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { type MailDraft, mailDraft } from '../../../src/mail/mail-draft.ts';
import { readMail } from './read-mail.ts';

/** Bytes of every value, so that a wrong encoding shows. */
const pdf = Uint8Array.from({ length: 100_000 }, (_, index) => (index * 7919 + (index >> 8)) % 256);

function draft(change: Partial<MailDraft> = {}): MailDraft {
  return {
    from: { name: 'Strand Kitchen', address: 'hello@strand.example' },
    to: { name: 'Aine Trask', address: 'aine@lifeboat.example' },
    subject: 'Our proposal: Crew evening',
    text: 'Dear crew,\n\nsee you.\n',
    attachment: { name: 'crew-evening-r1.pdf', pdf },
    day: '2027-04-26' as Day,
    id: 'crew-evening-r1-3f9a02c471be@strand.example',
    ...change,
  };
}

const headersOf = async (change: Partial<MailDraft>) =>
  Object.fromEntries(readMail(await mailDraft(draft(change))).headers);

describe('a mail draft', () => {
  test('opens unsent, with its letter and the PDF byte for byte', async () => {
    const bytes = await mailDraft(draft());
    expect(bytes.toString('latin1').startsWith('X-Unsent: 1\r\n')).toBe(true);
    const { headers, parts } = readMail(bytes);
    expect(Object.fromEntries(headers)).toMatchObject({
      'x-unsent': '1',
      from: 'Strand Kitchen <hello@strand.example>',
      to: 'Aine Trask <aine@lifeboat.example>',
      subject: 'Our proposal: Crew evening',
      date: 'Mon, 26 Apr 2027 12:00:00 +0000',
      'mime-version': '1.0',
    });
    const [letter, paper] = parts;
    expect(Buffer.from(letter?.body ?? []).toString('utf8')).toBe('Dear crew,\r\n\r\nsee you.\r\n');
    expect(Object.fromEntries(paper?.headers ?? [])).toMatchObject({
      'content-type': expect.stringMatching(/^application\/pdf; name=/),
      'content-disposition': expect.stringMatching(/^attachment; filename=crew-evening-r1\.pdf$/),
    });
    expect(Buffer.compare(Buffer.from(paper?.body ?? []), Buffer.from(pdf))).toBe(0);
  });

  test('is the same bytes whenever it is made', async () => {
    const first = await mailDraft(draft());
    await new Promise((done) => setTimeout(done, 1100));
    expect(Buffer.compare(await mailDraft(draft()), first)).toBe(0);
  });

  test('without a PDF is one plain letter', async () => {
    const { parts, body } = readMail(await mailDraft(draft({ attachment: undefined })));
    expect([parts.length, Buffer.from(body).toString('utf8')]).toEqual([0, 'Dear crew,\r\n\r\nsee you.\r\n']);
  });

  test('keeps quotes, commas, other scripts and long words in names, subject and letter', async () => {
    const name = 'Ó Súilleabháin, “Áine” "the \\ Boat" <x@y.example> 灯台';
    const subject = `Fête ½ ${'größer '.repeat(30)}`.trim();
    const text = `Dear ${name},\n\n${'ä'.repeat(2000)}\n.\nFrom here\n--_NmP\n`;
    const change = { to: { name, address: 'aine@lifeboat.example' }, subject, text };
    const { headers, parts } = readMail(await mailDraft(draft(change)));
    const found = Object.fromEntries(headers);
    expect(found.to?.replaceAll('\\', '')).toContain(name.replaceAll('\\', ''));
    expect(found.to).toMatch(/<aine@lifeboat\.example>$/);
    expect(found.subject).toBe(subject);
    expect(Buffer.from(parts[0]?.body ?? []).toString('utf8')).toBe(text.replaceAll('\n', '\r\n'));
  });

  test.each(['\n', '\r', '\r\n', '\r\n\r\n', '\u2028', '\u0085', '\0', '\v'])(
    'lets no %j in a name, an address or the subject become a header or another address',
    async (gap) => {
      const evil = `A${gap}Bcc: all@evil.example${gap}X-Evil: 1`;
      const headers = await headersOf({
        from: { name: evil, address: 'hello@strand.example' },
        to: { name: evil, address: `a@b.example${gap}bcc@evil.example` },
        subject: evil,
      });
      expect(Object.keys(headers).sort()).toEqual(
        ['content-type', 'date', 'from', 'message-id', 'mime-version', 'subject', 'to', 'x-unsent'].filter(
          (name) => name !== 'to' || headers.to !== undefined,
        ),
      );
      expect(headers.subject).toBe('A Bcc: all@evil.example X-Evil: 1');
      expect(headers.from).toMatch(/<hello@strand\.example>$/);
      expect(headers.to ?? '').not.toMatch(/<|a@b\.example/);
    },
  );

  test.each([
    'a@b.example, c@d.example',
    'a@b.example;c@d.example',
    '<a@b.example>',
    'a@b.example (x)',
    'no address',
  ])('is addressed to nobody where an address is not one: %s', async (address) => {
    const { to = '' } = await headersOf({ to: { name: 'Aine', address } });
    expect(to).not.toMatch(/@|</);
  });
});
