import type { Temperature } from '../measure/temperature.ts';

/** The weather that an event is planned for, as its proposal states it. Nothing is taken for granted where it is left out. */
export interface Weather {
  /** The warmest it is expected to be around the food and the guests. */
  readonly high?: Temperature;
  /** True: rain is planned for; false: it is known to stay dry, or all of it is indoors. */
  readonly rain?: boolean;
  /** True: strong wind is planned for. */
  readonly wind?: boolean;
}
