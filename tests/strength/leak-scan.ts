import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { filesOf } from '../../src/files/digest.ts';
import { readableTexts } from './readable-texts.ts';

/** Something that nobody may read, or only in one folder. */
export interface Secret {
  /** What it is, `a supplier`; several words may share it. */
  readonly kind: string;
  /** Words that give it away, at least four characters, or a pattern in lower case. */
  readonly words: string | RegExp;
  /** A folder of the output, ending in `/`, where it is no secret. */
  readonly openIn?: string;
}

/** A secret that stands in a file. */
export interface Leak {
  readonly file: string;
  readonly kind: string;
  /** As it was found. */
  readonly words: string;
}

/** How many characters words are first looked up by. */
const HEAD = 4;

/** Before that, by a number made from them, which two heads may share: most places of a text begin no secret. */
const MARKS = 2 ** 16;

function markOf(text: string, at: number): number {
  const first = text.charCodeAt(at) * 31 + text.charCodeAt(at + 1);
  const last = text.charCodeAt(at + 2) * 31 + text.charCodeAt(at + 3);
  return ((first << 5) ^ last) & (MARKS - 1);
}

/** Every secret in every file below a folder, each named once a file. One pass over each text, however many secrets. */
export async function leaksIn(folder: string, secrets: readonly Secret[]): Promise<Leak[]> {
  const byHead = new Map<string, (Secret & { readonly words: string })[]>();
  const begins = new Uint8Array(MARKS);
  const patterns: (Secret & { readonly words: RegExp })[] = [];
  for (const secret of secrets) {
    if (typeof secret.words !== 'string') patterns.push({ ...secret, words: secret.words });
    else {
      const words = secret.words.toLowerCase().replace(/\s+/g, ' ');
      if (words.length < HEAD) throw new Error(`“${words}” is too short to be looked for`);
      const head = words.slice(0, HEAD);
      byHead.set(head, [...(byHead.get(head) ?? []), { ...secret, words }]);
      begins[markOf(head, 0)] = 1;
    }
  }
  const leaks: Leak[] = [];
  for (const file of await filesOf(folder)) {
    const found = new Map<string, Leak>();
    const tell = ({ kind, openIn }: Secret, words: string) => {
      if (openIn === undefined || !file.startsWith(openIn))
        found.set(`${kind} ${words}`, { file, kind, words });
    };
    for (const text of await readableTexts(file, await readFile(join(folder, file)))) {
      for (let at = 0; at + HEAD <= text.length; at += 1) {
        if (begins[markOf(text, at)] === 0) continue;
        for (const secret of byHead.get(text.slice(at, at + HEAD)) ?? [])
          if (text.startsWith(secret.words, at) && standsAlone(text, at, secret.words))
            tell(secret, secret.words);
      }
      for (const secret of patterns) for (const [words] of text.matchAll(secret.words)) tell(secret, words);
    }
    leaks.push(...found.values());
  }
  return leaks;
}

/** Whether the words are not the middle of longer ones: `food-12` is not in `food-120`. */
function standsAlone(text: string, at: number, words: string): boolean {
  const apart = (inner: string, outer: string) => !/[a-z\d]/.test(inner) || !/[a-z\d]/.test(outer);
  const end = at + words.length;
  return apart(words[0] ?? '', text[at - 1] ?? '') && apart(words[words.length - 1] ?? '', text[end] ?? '');
}
