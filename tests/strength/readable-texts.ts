import sharp from 'sharp';
import { type Run, sheetsOf, withPdf } from '../browser/read-pdf.ts';

const PICTURE = /\.(?:avif|gif|jpe?g|png|tiff?|webp)$/i;
const NO_BREAKS = /[\s\u00a0\u202f\u2007]+/g;

/**
 * All that somebody can read in a file who looks for it: its bytes, its text with entities, escapes and tags undone,
 * what is packed into data addresses, a PDF's words, facts, notes and links, and what stands beside a picture's
 * points. In lower case, every stretch of white space as one space.
 */
export async function readableTexts(file: string, bytes: Buffer): Promise<string[]> {
  const texts = [file];
  if (file.endsWith('.pdf')) texts.push(bytes.toString('latin1'), ...(await textsOfPdf(bytes)));
  else if (PICTURE.test(file)) texts.push(...(await textsOfPicture(bytes)));
  else if (bytes.includes(0)) texts.push(bytes.toString('latin1'));
  else texts.push(...textsOfText(bytes.toString('utf8')));
  return texts.map((text) => text.replace(NO_BREAKS, ' ').toLowerCase());
}

function textsOfText(text: string): string[] {
  const packed = [...text.matchAll(/data:[^,"'\s]{0,80};base64,([A-Za-z0-9+/=]+)/g)].flatMap(
    ([, data = '']) => {
      const bytes = Buffer.from(data, 'base64');
      return [bytes.toString('utf8'), bytes.toString('latin1')];
    },
  );
  return [...new Set([text, undone(text), undone(text.replace(/<\/?[a-z][^<>]*>/gi, ''))]), ...packed];
}

/** Without entities, escapes of JavaScript and of addresses. */
function undone(text: string): string {
  return text
    .replace(/&#x([\da-f]{1,6});/gi, (whole, code: string) => letter(Number.parseInt(code, 16), whole))
    .replace(/&#(\d{1,7});/g, (whole, code: string) => letter(Number(code), whole))
    .replace(/\\u\{?([\da-f]{4,6})\}?/gi, (whole, code: string) => letter(Number.parseInt(code, 16), whole))
    .replace(/(?:%[\da-f]{2})+/gi, (whole) => Buffer.from(whole.replaceAll('%', ''), 'hex').toString('utf8'))
    .replaceAll('&nbsp;', ' ')
    .replaceAll('&amp;', '&');
}

function letter(code: number, otherwise: string): string {
  return code <= 0x10ffff ? String.fromCodePoint(code) : otherwise;
}

async function textsOfPdf(bytes: Buffer): Promise<string[]> {
  return withPdf(bytes, async (pdf) => {
    const { info, metadata } = await pdf.getMetadata();
    const texts = [JSON.stringify(info), metadata?.getRaw() ?? ''].map(String);
    texts.push(JSON.stringify(await pdf.getOutline()), JSON.stringify(await pdf.getAttachments()));
    for (const { runs, text } of await sheetsOf(pdf)) texts.push(text, inLines(runs));
    for (let number = 1; number <= pdf.numPages; number += 1)
      texts.push(JSON.stringify(await (await pdf.getPage(number)).getAnnotations()));
    return texts.flatMap(textsOfText);
  });
}

/** Runs that touch are one word, as a word is that changes its type half-way. */
function inLines(runs: readonly Run[]): string {
  return runs
    .map(({ text, left, top }, index) => {
      const last = runs[index - 1];
      const touches = last && Math.abs(last.top - top) < 0.5 && Math.abs(last.right - left) < 0.2;
      return touches ? text : ` ${text}`;
    })
    .join('');
}

async function textsOfPicture(bytes: Buffer): Promise<string[]> {
  const { exif, iptc, xmp, comments } = await sharp(bytes).metadata();
  const beside = [exif, iptc, xmp].filter((each) => each !== undefined);
  return [
    bytes.toString('latin1'),
    ...beside.flatMap((each) => [each.toString('latin1'), each.toString('utf16le')]),
    ...(beside.length > 0 ? [BESIDE_A_PICTURE] : []),
    ...(comments ?? []).map(({ text }) => text),
  ];
}

/** Stands among a picture's texts where a camera or a program wrote anything beside the points. */
export const BESIDE_A_PICTURE = '[written beside the picture]';
