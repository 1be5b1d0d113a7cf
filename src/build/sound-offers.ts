import { createHash, randomBytes } from 'node:crypto';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { SoundOffers } from '../book/read/offers.ts';
import { digestOf, digestOfFolder } from '../files/digest.ts';

/** What is remembered: the digests of offers' files that this very code has found sound. */
interface Record {
  version: 1;
  /** Of all that the check is made of; another code asks again. */
  code: string;
  /** The longest known first. */
  files: string[];
}

/** So many files are remembered; of more, the longest known are forgotten and checked again. */
const MOST = 50_000;

/** The code whose word is remembered: what reads an offer, prices it and digests it. */
const CODE = ['src/book', 'src/check', 'src/engine', 'src/offers', 'src/schema'];

/** Offers found sound, as a build remembers them; `save` writes down what is new. */
export interface RememberedOffers extends SoundOffers {
  save(): Promise<void>;
}

/**
 * Which files of offers were found sound before by the code as it is now, from `.salver/sound-offers.json`. A file is
 * known by the SHA-256 of its whole text, so one that was changed by a single sign is checked again, and only those
 * found sound are remembered. A record that is missing, damaged or of other code knows nothing; one that cannot be
 * written costs time alone.
 */
export async function rememberedOffers(projectDir: string): Promise<RememberedOffers> {
  const file = join(projectDir, '.salver', 'sound-offers.json');
  const code = await digestOfCode(projectDir);
  const known = new Set(await filesFoundSound(file, code));
  const met = new Set<string>();
  return {
    has(text) {
      const digest = digestOfText(text);
      if (known.has(digest)) met.add(digest);
      return known.has(digest);
    },
    add(text) {
      met.add(digestOfText(text));
    },
    async save() {
      if ([...met].every((digest) => known.has(digest))) return;
      const files = [...new Set([...known].filter((digest) => !met.has(digest))), ...met].slice(-MOST);
      const scratch = `${file}.${randomBytes(6).toString('hex')}`;
      try {
        await mkdir(dirname(file), { recursive: true });
        await writeFile(scratch, `${JSON.stringify({ version: 1, code, files } satisfies Record)}\n`);
        await rename(scratch, file);
      } catch {
        await rm(scratch, { force: true }).catch(() => undefined);
      }
    },
  };
}

async function filesFoundSound(file: string, code: string): Promise<string[]> {
  try {
    const record = JSON.parse(await readFile(file, 'utf8')) as Record;
    if (record.version === 1 && record.code === code && Array.isArray(record.files)) return record.files;
  } catch {
    // Missing or damaged: every offer is checked.
  }
  return [];
}

async function digestOfCode(projectDir: string): Promise<string> {
  const folders = await Promise.all(CODE.map((folder) => digestOfFolder(join(projectDir, folder))));
  const packages = await readFile(join(projectDir, 'package-lock.json'), 'utf8').catch(() => '');
  return digestOf(...folders, packages, process.version);
}

function digestOfText(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
