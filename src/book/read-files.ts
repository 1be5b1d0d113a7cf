import type { Finding } from './finding.ts';

/** The kinds of content files. */
export type Collection =
  | 'kitchen'
  | 'suppliers'
  | 'stock'
  | 'ingredients'
  | 'prices'
  | 'recipes'
  | 'packages'
  | 'proposals'
  | 'offers'
  | 'events';

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
  readonly findings: Finding[];
}

export function listContent(dir: string): ContentFolder {
  throw new Error(dir);
}

/** The text of a file, UTF-8, without byte order mark and with plain line feeds; without text there is a finding. */
export function readText(path: string, file: string): { text: string | undefined; findings: Finding[] } {
  throw new Error(`${path} ${file}`);
}
