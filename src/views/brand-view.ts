/** What every page and sheet needs to know of the caterer. */
export interface BrandView {
  readonly name: string;
  readonly town: string;
  readonly email: string;
  readonly phone: string;
  /** #rrggbb */
  readonly accent: string;
  /** BCP 47 tag for the page's lang. */
  readonly language: string;
  readonly paper: 'letter' | 'a4';
}
