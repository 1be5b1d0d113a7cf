import { z } from 'zod';
import { type AnswerWay, DEFAULT_ANSWER_WAY } from '../../../engine/kitchen/answer-way.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import type { Reading } from '../grammar/reading.ts';

/**
 * Reads how acceptances come back. Mail goes to the kitchen's own address and a post to the site that serves the page
 * where nothing else is stated; a kitchen without an address is asked for one.
 */
export function linkAnswerWay(reading: Reading, text: KitchenText): AnswerWay {
  const { by, to } = text.acceptances ?? { by: 'download' };
  const toPath = ['acceptances', 'to'];
  switch (by) {
    case 'download':
      if (to !== undefined)
        reading.say(
          'not-understood',
          toPath,
          'a download has no address to go to',
          'leave `to` out, or write `by: mail` or `by: post`',
        );
      return DEFAULT_ANSWER_WAY;
    case 'mail': {
      const own = text.email;
      if (to === undefined && own === undefined)
        reading.say(
          'missing-field',
          ['acceptances'],
          'there is no address to email acceptances to',
          `write “acceptances: { by: mail, to: ${MAIL_EXAMPLE} }”, or the kitchen’s “email”`,
        );
      const path = to === undefined ? ['email'] : toPath;
      const address = reading.understand(path, to ?? own ?? MAIL_EXAMPLE, parseMailAddress);
      return address === undefined ? DEFAULT_ANSWER_WAY : { by, to: address };
    }
    case 'post': {
      if (to === undefined) return { by, to: null };
      return { by, to: reading.understand(toPath, to, parsePostAddress) ?? null };
    }
  }
}

const MAIL_EXAMPLE = 'hello@quillwater.example';

/** One mail address, as HTML's `type=email` takes it. */
function parseMailAddress(text: string): Parsed<string> {
  const address = z.email().max(254).safeParse(text.trim());
  return address.success
    ? parsed(address.data)
    : notParsed(`“${text.slice(0, 60)}” is not an email address`, `write it as ${MAIL_EXAMPLE}`);
}

/**
 * An address on the web that acceptances are posted to. They tell of allergies, so only this machine's own may go
 * without encryption.
 */
function parsePostAddress(text: string): Parsed<string> {
  const address = URL.canParse(text.trim()) ? new URL(text.trim()) : undefined;
  const plain = address && address.hash === '' && address.username === '' && address.password === '';
  const here = address && /^(?:localhost|127\.0\.0\.1|\[::1\])$/.test(address.hostname);
  return plain && (address.protocol === 'https:' || (here && address.protocol === 'http:'))
    ? parsed(address.href)
    : notParsed(
        `“${text.slice(0, 60)}” is not an address that acceptances can be posted to`,
        'write it as https://quillwater.example/acceptances',
      );
}
