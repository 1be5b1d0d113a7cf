import bitter from '../styles/fonts-bitter.css?url';
import garamond from '../styles/fonts-garamond.css?url';
import source from '../styles/fonts-source.css?url';
import type { BrandView } from '../views/brand/brand-view.ts';

/** Where each pair's stylesheet is served: a page names its own, and so only that one's fonts are published. */
export const fontStylesheets: Readonly<Record<BrandView['fonts'], string>> = { bitter, garamond, source };
