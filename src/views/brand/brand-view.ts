import type { FontPair } from '../../engine/kitchen/font-pair.ts';

/** A kitchen's mark as pages show it. */
export interface MarkView {
  /** Where it is served, from the site's root: named by its digest. */
  readonly path: string;
  /** In CSS pixels, in the drawing's own proportions. */
  readonly width: number;
  readonly height: number;
}

/** What every page and sheet needs to know of the caterer. */
export interface BrandView {
  readonly name: string;
  readonly town: string;
  readonly email: string;
  readonly phone: string;
  /** #rrggbb */
  readonly accent: string;
  /** The pair of typefaces. */
  readonly fonts: FontPair;
  /** The kitchen's own drawing; null where it has none. */
  readonly mark: MarkView | null;
  /** BCP 47 tag for the page's lang. */
  readonly language: string;
  /** Whose forms figures have: clocks, decimals, percent signs. */
  readonly locale: string;
  readonly paper: 'letter' | 'a4';
}
