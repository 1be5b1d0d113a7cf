import { Decimal as General } from 'decimal.js';

/**
 * Exact decimals for money, in a configuration of our own so that no other use of the library can change it:
 * 40 significant digits, and a tie rounds half-up, away from zero. This is the only file that names the library.
 */
export const Decimal = General.clone({ precision: 40, rounding: General.ROUND_HALF_UP, defaults: true });

/** A value of that kind. */
export type Decimal = General;

/** Exactly nothing. */
export const ZERO: Decimal = new Decimal(0);
