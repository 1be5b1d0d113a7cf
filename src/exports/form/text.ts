import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';

/** A text, with what it says. */
export const text = (says: string) => z.string().describe(says);

/** A list of texts, with what they are. */
export const texts = (are: string) => z.array(z.string()).describe(are);

/** A whole number. */
export const whole = (counts: string) => z.int().describe(counts);

/** Why a figure is what it is. */
export const why = () => texts('Why this much, a step of the calculation each.');

export const amountSchema = z
  .object({
    exact: text('The exact figure for programs, a fraction and its unit: `25/16 gal`.'),
    printed: text('The same as kitchens print it: `1 gal 2 qt 1 cup`.'),
  })
  .meta({ id: 'amount', description: 'A figure twice: exact for programs, printed for people.' });

/** A figure twice: exact for programs, printed for people. */
export type AmountText = Fixed<z.infer<typeof amountSchema>>;

export const figuresSchema = z
  .object({
    before: text('The figure as it was; empty for nothing.'),
    after: text('The figure as it is now; empty for nothing.'),
    by: text('The difference with its sign: `+2 lb`; empty where nothing changes.'),
  })
  .meta({ id: 'figures', description: 'A figure before and after a change.' });

/** A figure before and after, and the difference with its sign: `+2 lb`, `−3`. */
export type Figures = Fixed<z.infer<typeof figuresSchema>>;
