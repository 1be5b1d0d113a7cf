import { digestOf } from '../files/digest.ts';
import type { SiteContent, SitePart } from '../views/site.ts';
import type { PartRecord } from './build-record.ts';
import type { Output } from './output.ts';
import type { PagePlacer } from './page-placer.ts';

/** What became of the part: what the record remembers of it, and the papers and files that are still to be placed. */
export interface PlacedPart extends Pick<SiteContent, 'prints' | 'files'> {
  record: PartRecord;
}

/** What the part is placed with. `madeBy`: digests of the app, and of the printing or that there is none. */
interface Means {
  output: Output;
  pages: PagePlacer;
  /** The part of the last output, if it had one. */
  last: PartRecord | undefined;
  madeBy: readonly string[];
  prints: boolean;
}

/** Takes the part over whole if its cache key is the same; else plans it and places its pages. */
export async function placePart(part: SitePart, means: Means): Promise<PlacedPart> {
  const { output, pages, last, madeBy, prints } = means;
  const from = digestOf(...madeBy, part.cacheKey);
  const kept = last?.from === from ? last.files.map((file) => [file, output.stillThere(file)] as const) : [];
  if (last && kept.length > 0 && kept.every(([, known]) => known !== undefined)) {
    for (const [file, known] of kept) output.takeOver(file, known!);
    pages.hasTime = true;
    return { record: last, prints: [], files: [] };
  }
  const made = await part.make(() => new Promise((done) => setImmediate(done)));
  pages.hasTime = true;
  output.noteOwners(made);
  await pages.place(made.pages);
  const placed = [...made.pages, ...made.files, ...(prints ? made.prints : [])];
  return { ...made, record: { from, files: placed.map(({ file }) => file) } };
}
