import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { text } from './text.ts';

export const returnLineSchema = z
  .object({
    group: z
      .enum(['containers', 'carriers', 'service ware', 'equipment', 'kit', 'add-ons', 'drinks'])
      .describe('What it is; `drinks` for bottles and cans that may come back unopened.'),
    item: text('Name of the container, thing or drink.'),
    count: z.number().describe('How many went out.'),
    unit: text('What is counted.'),
    hiredFrom: text('Whom it is hired from; empty for the kitchen’s own.'),
    by: text('ISO 8601: the day by which it is back with them; empty where nobody has stated one.'),
    byText: text('The same in words.'),
    washed: z
      .enum(['kitchen', 'hirer', 'place', ''])
      .describe('Who washes it; empty for what is not washed.'),
  })
  .meta({ id: 'return-line', description: 'What went out and is counted back in.' });

/** What went out and is counted back in. */
export type ReturnLine = Fixed<z.infer<typeof returnLineSchema>>;
