import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { digestOf, sha256Of } from '../files/digest.ts';
import { type Side, type SiteContent, sideOf } from '../views/site.ts';
import {
  type FileRecord,
  knownOf,
  type LastOutput,
  type PartRecord,
  recordText,
  stateOf,
  unchanged,
} from './build-record.ts';
import type { Scratch } from './publish.ts';
import { Refusal } from './refusal.ts';

/** How much of the output was made, and how much was taken over from the last. */
export interface BuildReport {
  made: string[];
  kept: string[];
}

/** The content of a file, with what a page needs beside it. */
interface Made {
  content: string | Uint8Array;
  assets?: string[];
}

/** The output in the making: each file is made and written, or taken over from the last output, and entered in the record. */
export class Output {
  readonly report: BuildReport = { made: [], kept: [] };
  /** Files of the last output that somebody changed, and that were made again. */
  readonly changed: string[] = [];
  readonly #last: LastOutput;
  readonly #scratch: Scratch;
  readonly #files = new Map<string, FileRecord>();
  readonly #claimed = new Set<string>();
  readonly #owners = new Map<string, readonly string[]>();
  readonly #assets: Record<Side, Set<string>> = { public: new Set(), private: new Set() };
  readonly #assetNames = new Map<string, string>();

  constructor(last: LastOutput, scratch: Scratch) {
    this.#last = last;
    this.#scratch = scratch;
  }

  /** Notes whose each file is, where that is told. */
  noteOwners({ pages, prints, files }: SiteContent): void {
    for (const { file, of } of [...pages, ...prints, ...files]) if (of) this.#owners.set(file, of);
  }

  /**
   * Takes the file over if it was made under the same cache key, else makes it. `from`: the key of the step before, by
   * which the next build need not come this far.
   */
  async place(file: string, key: string, make: () => Promise<Made>, from?: string): Promise<void> {
    if (this.#claimed.has(file)) throw new Error(`two things want to be ${file}`);
    this.#claimed.add(file);
    const known = unchanged(this.#last, file, { key });
    if (known) {
      this.takeOver(file, { ...known, from, of: this.#ownersOf(file) });
      return;
    }
    if (stateOf(this.#last, file) === 'changed') this.changed.push(file);
    const { content, assets } = await make();
    const bytes = typeof content === 'string' ? Buffer.from(content) : content;
    this.#scratch.write(file, bytes);
    this.report.made.push(file);
    const size = bytes.byteLength;
    this.#enter(file, { key, from, size, sha256: sha256Of(bytes), assets, of: this.#ownersOf(file) });
  }

  /** The same for content that is there already: its digest is the key. */
  placeBytes(file: string, content: string | Uint8Array, from?: string): Promise<void> {
    return this.place(file, digestOf(content), async () => ({ content }), from);
  }

  /** Takes the file over, where that can be, by the cache key of its first step alone: not even its view is made then. */
  tookOver(file: string, from: string | undefined): boolean {
    if (from === undefined || this.#claimed.has(file)) return false;
    const known = unchanged(this.#last, file, { from });
    if (known) this.takeOver(file, known);
    return known !== undefined;
  }

  /** What is remembered of a file of the last output, if it still lies there as it was written. */
  stillThere(file: string): FileRecord | undefined {
    const key = knownOf(this.#last, file)?.key;
    return key === undefined ? undefined : unchanged(this.#last, file, { key });
  }

  /** Takes a file over that still lies in the last output. */
  takeOver(file: string, known: FileRecord): void {
    this.#claimed.add(file);
    this.#scratch.keep(file);
    this.report.kept.push(file);
    // An earlier Salver wrote down no SHA-256: from now on the file is held to what it is today.
    const sha256 = known.sha256 ?? sha256Of(readFileSync(join(this.#last.dir, file)));
    this.#enter(file, { ...known, sha256 });
  }

  /** Takes a file of the last output over as it is. One that was changed is lost to nobody: the build is refused. */
  keep(file: string, of?: string[]): void {
    if (this.#claimed.has(file)) return;
    if (stateOf(this.#last, file) === 'changed')
      throw new Refusal(
        `${join(this.#last.dir, file)} was changed after it was written and can’t be made again because its day is over`,
        'put the old file back, or delete it if no one needs it, then build again',
      );
    const known = this.stillThere(file);
    if (known) this.takeOver(file, of ? { ...known, of } : known);
  }

  /** What the pages of a side need beside them, by name. */
  assetsOf(side: Side): string[] {
    return [...this.#assets[side]].sort();
  }

  /** The record's text, by which the next build knows what it may take over. */
  record(part: PartRecord | undefined): string {
    return recordText(this.#files, part);
  }

  #ownersOf(file: string): string[] | undefined {
    const of = this.#owners.get(file);
    return of && [...of];
  }

  #enter(file: string, made: FileRecord): void {
    const assets = made.assets?.map((name) => this.#oneText(name));
    this.#files.set(file, assets ? { ...made, assets } : made);
    for (const name of assets ?? []) this.#assets[sideOf(file)].add(name);
  }

  /** The same text for the same name: one cut out of a page's text would keep that whole page in memory. */
  #oneText(name: string): string {
    const known = this.#assetNames.get(name) ?? name;
    this.#assetNames.set(known, known);
    return known;
  }
}
