import { type Finding, finding, type Place } from '../findings/finding.ts';
import { quoted } from '../findings/quoted.ts';
import { COLLECTIONS, type Collection, FOLDERS, SINGLE_FILES } from './collections.ts';
import { isId } from './is-id.ts';
import { PICTURE } from './picture-name.ts';
import { type FoundFile, walkFolder } from './walk-folder.ts';

/** A file of the content folder that belongs to a collection. */
export interface ContentFile {
  readonly collection: Collection;
  /** The file's name without ending; for a fact of an event the event's folder. */
  readonly id: string;
  /** Path relative to the content folder, forward slashes. */
  readonly file: string;
  /** Absolute. */
  readonly path: string;
}

/** What lies in a content folder. */
export interface ContentFolder {
  /** In the order of collection and path; the same on every machine. */
  readonly files: readonly ContentFile[];
  /** Pictures anywhere in the folder: paths relative to it. */
  readonly pictures: ReadonlySet<string>;
  /** SVG files anywhere in the folder: paths relative to it → absolute. */
  readonly drawings: ReadonlyMap<string, string>;
  /**
   * Files of ingredients under a name that is not read, `dairy.yml`: nothing of them is used, and what they say of a
   * food must not be taken for never said.
   */
  readonly misnamedFoods: readonly FoundFile[];
  readonly findings: Finding[];
}

/**
 * Lists a content folder by collection. Names that begin with a dot are passed over, as are the lock files of
 * office programs; what belongs nowhere is a note, a file name that is no id an error. Never throws.
 */
export function listContent(dir: string): ContentFolder {
  const { found, findings } = walkFolder(dir);
  const files: ContentFile[] = [];
  const pictures = new Set<string>();
  const drawings = new Map<string, string>();
  const misnamedFoods: FoundFile[] = [];
  for (const { file, path } of found) {
    if (PICTURE.test(file)) pictures.add(file);
    else if (/\.svg$/i.test(file)) drawings.set(file, path);
    else {
      const sorted = sortIn(file);
      if ('code' in sorted) {
        findings.push(sorted);
        if (sorted.code === 'file-name' && MISNAMED_FOODS.test(file)) misnamedFoods.push({ file, path });
      } else files.push({ ...sorted, file, path });
    }
  }
  // walkFolder lists by name, and sorting keeps that order within a collection.
  files.sort((one, other) => COLLECTIONS.indexOf(one.collection) - COLLECTIONS.indexOf(other.collection));
  return { files, pictures, drawings, misnamedFoods, findings };
}

const KEPT_PLAN = /^plan-\d{3}-[0-9a-f]{12}\.json$/;

const MISNAMED_FOODS = /^ingredients\/[^/]+\.ya?ml$/i;

/** The collection and id of a file by its path alone, or why it has none. */
function sortIn(file: string): Pick<ContentFile, 'collection' | 'id'> | Finding {
  const at: Place = { file, line: 1, column: 1 };
  const steps = file.split('/');
  const [top = ''] = steps;
  const name = steps.at(-1) ?? '';
  if (steps.length === 1) {
    const collection = Object.hasOwn(SINGLE_FILES, top) ? SINGLE_FILES[top] : undefined;
    if (collection) return { collection, id: collection };
    const known = Object.keys(SINGLE_FILES).join(', ');
    return finding(
      'stray-file',
      at,
      'this file is not used',
      `files here are called ${known}; move or delete it`,
    );
  }
  const known = [steps.slice(0, 2).join('/'), top].find((each) => Object.hasOwn(FOLDERS, each)) ?? '';
  const folder = FOLDERS[known];
  if (!folder) {
    const folders = Object.keys(FOLDERS).join(', ');
    return finding('stray-file', at, `the folder ${quoted(top)} is not used`, `folders are ${folders}`);
  }
  const { collection, ending } = folder;
  if (MISNAMED_FOODS.test(file) && !name.endsWith(ending)) {
    const what = `${quoted(name)} does not end in ${ending}, so nothing in it is read`;
    return finding(
      'file-name',
      at,
      what,
      `give it a name that ends in ${ending}, or move it out of the folder`,
    );
  }
  const inside = steps.slice(known.split('/').length);
  const depth = collection === 'events' ? 2 : 1;
  if (inside.length !== depth || !name.endsWith(ending)) {
    const form = collection === 'events' ? `events/<event>/<fact>${ending}` : `${known}/<name>${ending}`;
    return finding('stray-file', at, 'this file is not used', `name it ${form}, or move it`);
  }
  const base = name.slice(0, -ending.length);
  const id = collection === 'events' ? (inside[0] ?? '') : base;
  const isPlan = collection === 'events' && KEPT_PLAN.test(name);
  const named = collection !== 'inbox' && collection !== 'taken';
  const bad = named ? [id, base].find((each) => !isId(each)) : undefined;
  if (bad === undefined) return { collection: isPlan ? 'plans' : collection, id };
  const what = `${quoted(bad)} can’t be an id`;
  return finding(
    'file-name',
    at,
    what,
    'use lower-case words a–z and 0–9 joined by hyphens, at most 60 characters',
  );
}
