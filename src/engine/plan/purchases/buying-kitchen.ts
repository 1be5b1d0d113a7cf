import type { Kitchen } from '../../kitchen/kitchen.ts';

/** What a kitchen says that purchases depend on. */
export type BuyingKitchen = Pick<Kitchen, 'currency' | 'locale'>;
