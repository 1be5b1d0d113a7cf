import type { PageView } from '../views/page-view.ts';

/** One page to render. */
export interface SitePage {
  /** Where it goes under the output folder, beginning `public/` or `private/`, ending `index.html`. */
  file: string;
  /** The page that renders it, such as `/kitchen/events/<id>/`. */
  route: string;
  view: PageView;
}

/** One document to print. */
export interface PrintJob {
  /** Where the PDF goes under the output folder, beginning `public/` or `private/`. */
  file: string;
  /** The page that is printed, such as `/print/labels/<id>/`; it is published nowhere. */
  route: string;
  view: PageView;
  title: string;
  author: string;
  /** A BCP 47 tag, such as `en-US`. */
  language: string;
}

/** One file that is finished already. */
export interface SiteFile {
  /** Where it goes under the output folder, beginning `public/` or `private/`. */
  file: string;
  content: string | Uint8Array;
}

/** Everything that both sites consist of, besides the styles and scripts that pages name. */
export interface Site {
  pages: SitePage[];
  prints: PrintJob[];
  files: SiteFile[];
  /**
   * Whether a file of the last output that is not made now stays as it was, with all it needs: the plan of an event
   * whose day has passed. Without it nothing stays.
   */
  stays?: (file: string) => boolean;
}

/** The half of the output that a file belongs to: what is deployed, and what never is. */
export type Side = 'public' | 'private';

/** The side of a file of the output; fails for one that is on neither, or that climbs out. */
export function sideOf(file: string): Side {
  const [side, ...rest] = file.split('/');
  const strays = rest.length === 0 || rest.some((part) => part === '' || part === '.' || part === '..');
  if ((side !== 'public' && side !== 'private') || strays || file.includes('\\')) {
    throw new Error(`'${file}' is not a file under public/ or private/`);
  }
  return side;
}
