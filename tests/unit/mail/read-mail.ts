/** A mail read back: what a mail program would show of it. */
export interface ReadMail {
  /** In the order they stand, names in lower case, unfolded, encoded words as their text. */
  readonly headers: readonly (readonly [name: string, value: string])[];
  readonly body: Uint8Array;
  readonly parts: readonly ReadMail[];
}

/**
 * Reads a message by the published rules and by nothing of what writes it: header folding (RFC 5322, 2.2.3), encoded
 * words (RFC 2047), multiparts (RFC 2046, 5.1.1), quoted-printable and base64 (RFC 2045, 6.7 and 6.8).
 */
export function readMail(bytes: Uint8Array): ReadMail {
  const text = Buffer.from(bytes).toString('latin1');
  if (/[^\r]\n|\r[^\n]/.test(text)) throw new Error('a line does not end in CR LF');
  const end = text.indexOf('\r\n\r\n');
  const head = text.slice(0, end).replace(/\r\n(?=[ \t])/g, '');
  const headers = head.split('\r\n').map((line) => {
    const [, name = '', value = ''] = /^([!-9;-~]+): ?(.*)$/.exec(line) ?? [];
    if (name === '') throw new Error(`no header: ${line}`);
    return [name.toLowerCase(), decodedWords(value)] as const;
  });
  const rest = text.slice(end + 4);
  const value = (name: string) => headers.find(([each]) => each === name)?.[1] ?? '';
  const boundary = /^multipart\/.*boundary="([^"]+)"/i.exec(value('content-type'))?.[1];
  const parts = boundary === undefined ? [] : partsOf(rest, boundary);
  return { headers, body: decodedBody(rest, value('content-transfer-encoding')), parts };
}

function partsOf(text: string, boundary: string): ReadMail[] {
  const pieces = `\r\n${text}`.split(`\r\n--${boundary}`);
  if (!/^--\s*$/.test(pieces.at(-1) ?? '')) throw new Error('the last part is not closed');
  return pieces.slice(1, -1).map((piece) => readMail(Buffer.from(piece.replace(/^\r\n/, ''), 'latin1')));
}

function decodedWords(value: string): string {
  return value.replace(/(\?=)[ \t]+(=\?)/g, '$1$2').replace(/(?:=\?utf-8\?[qb]\?[^?\s]*\?=)+/gi, (words) => {
    const bytes = [...words.matchAll(/=\?utf-8\?([qb])\?([^?]*)\?=/gi)].map(([, kind = '', word = '']) =>
      kind.toLowerCase() === 'b' ? Buffer.from(word, 'base64') : quotedPrintable(word.replaceAll('_', ' ')),
    );
    return Buffer.concat(bytes).toString('utf8');
  });
}

function decodedBody(text: string, encoding: string): Uint8Array {
  if (encoding === 'base64') return Buffer.from(text, 'base64');
  if (encoding === 'quoted-printable') return quotedPrintable(text.replace(/=\r\n/g, ''));
  return Buffer.from(text, 'latin1');
}

function quotedPrintable(text: string): Buffer {
  const plain = text.replace(/=([0-9a-f]{2})/gi, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
  return Buffer.from(plain, 'latin1');
}
