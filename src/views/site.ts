import type { ProposalPage } from './client/proposal-page.ts';
import type { KeptPlan } from './kitchen/kept-plan.ts';
import type { PageView } from './page-view.ts';

/** What is known of a page or document without making its view, which then is made only when it is asked for. */
export interface KnownBefore {
  /** All that the view is made from, as text. A build takes over what it made under an equal one. */
  cacheKey: string;
  /** The colour of the view's brand. */
  accent: string;
  /** What the proposal is for, and whom. */
  title: string;
  client: string;
}

/** One page to render. */
export interface SitePage {
  /** Where it goes under the output folder, beginning `public/` or `private/`, ending `index.html`. */
  file: string;
  /** The page that renders it, such as `/kitchen/events/<id>/`. */
  route: string;
  /** Made each time it is read where `known` stands. */
  view: PageView;
  known?: KnownBefore;
  /** What the view of a proposal is made from: plain data, so that another thread can make it. */
  source?: ProposalPage;
  /** Whose it is, where it stays once its day is over: the digests of the offers that its events have accepted. */
  of?: readonly string[];
}

/** One document to print. */
export interface PrintJob {
  /** Where the PDF goes under the output folder, beginning `public/` or `private/`. */
  file: string;
  /** The page that is printed, such as `/print/labels/<id>/`; it is published nowhere. */
  route: string;
  /** Made each time it is read where `known` stands. */
  view: PageView;
  known?: KnownBefore;
  title: string;
  author: string;
  /** A BCP 47 tag, such as `en-US`. */
  language: string;
  /** Whose it is, where it stays once its day is over: the digests of the offers that its events have accepted. */
  of?: readonly string[];
}

/** One file that is finished already. */
export interface SiteFile {
  /** Where it goes under the output folder, beginning `public/` or `private/`. */
  file: string;
  /** May be made each time it is read. */
  content: string | Uint8Array;
  /** All that the content is made from, as text, where that is known without making it; as of a page. */
  cacheKey?: string;
  /** Whose it is, where it stays once its day is over: the digests of the offers that its events have accepted. */
  of?: readonly string[];
}

/** Pages, documents and files. */
export interface SiteContent {
  pages: SitePage[];
  prints: PrintJob[];
  files: SiteFile[];
}

/** The kitchen's side: its pages need every plan, so that only planning tells which there are. */
export interface SitePart {
  /** All that it is made from, as text. A build takes the whole part over from the last under an equal one. Made when read. */
  readonly cacheKey: string;
  /** The colour of its brand. */
  accent: string;
  /** Plans, once however often it is asked. `between` is awaited between events, so that no request waits for seconds. */
  make(between?: () => Promise<void>): Promise<SiteContent>;
  /** The plans of coming events as `make` has made them, each made when it is asked for; none before. */
  plans?(): (() => KeptPlan)[];
}

/** Everything that both sites consist of, besides the styles and scripts that pages name. */
export interface Site extends SiteContent {
  part?: SitePart;
  /**
   * Which files of the last output stay though they are not made now: those of events whose day has passed. For such a
   * file the digests of offers, one of which its event must have accepted: another kitchen's event of the same name, once
   * built into the same folder, does not stay. Undefined for any other file.
   */
  stays?: (file: string) => Pick<ReadonlySet<string>, 'has'> | undefined;
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
