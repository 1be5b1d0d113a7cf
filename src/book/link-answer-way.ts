import { z } from 'zod';
import { type AnswerWay, DEFAULT_ANSWER_WAY } from '../engine/kitchen/answer-way.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import type { KitchenText } from '../schema/kitchen.ts';
import type { Reading } from './reading.ts';

/**
 * Reads how acceptances come back. Mail goes to the kitchen's own address and a post to the site's /acceptances
 * where nothing else is said; without either the author is asked for one.
 */
export function linkAnswerWay(reading: Reading, text: KitchenText, site: string | undefined): AnswerWay {
  const { acceptances } = text;
  switch (acceptances?.by) {
    case undefined:
      return DEFAULT_ANSWER_WAY;
    case 'download':
      if (acceptances.to !== undefined)
        reading.say(
          'not-understood',
          ['acceptances', 'to'],
          'a download is sent nowhere',
          'leave `to` out, or write `by: mail` or `by: post`',
        );
      return DEFAULT_ANSWER_WAY;
    case 'mail': {
      const to = destination(reading, acceptances, ['e-mail'], text['e-mail'], parseMailAddress);
      return to === undefined ? DEFAULT_ANSWER_WAY : { by: 'mail', to };
    }
    case 'post': {
      const own = site === undefined ? undefined : `${site}/acceptances`;
      const to = destination(reading, acceptances, ['acceptances'], own, parsePostAddress);
      return to === undefined ? DEFAULT_ANSWER_WAY : { by: 'post', to };
    }
  }
}

function destination(
  reading: Reading,
  { by, to }: NonNullable<KitchenText['acceptances']>,
  defaultPath: readonly string[],
  byDefault: string | undefined,
  grammar: (text: string) => Parsed<string>,
): string | undefined {
  if (to !== undefined) return reading.understand(['acceptances', 'to'], to, grammar);
  if (byDefault !== undefined) return reading.understand(defaultPath, byDefault, grammar);
  const wayOut = `write “acceptances: { by: ${by}, to: ${EXAMPLES[by]} }”`;
  reading.say('missing-field', ['acceptances'], 'nothing says where acceptances go', wayOut);
  return undefined;
}

const EXAMPLES = {
  download: '',
  mail: 'hello@quillwater.example',
  post: 'https://quillwater.example/acceptances',
} as const;

/** One mail address, as HTML's `type=email` takes it. */
function parseMailAddress(text: string): Parsed<string> {
  const address = z.email().max(254).safeParse(text.trim());
  return address.success
    ? parsed(address.data)
    : notParsed(`“${text.slice(0, 60)}” is no mail address`, `write it as ${EXAMPLES.mail}`);
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
        `“${text.slice(0, 60)}” is no address that acceptances can be posted to`,
        `write it as ${EXAMPLES.post}`,
      );
}
