import { z } from 'zod';
import { acceptanceSchema } from './acceptance.ts';
import { countChangeSchema } from './count-change.ts';
import { guestListSchema } from './guest-list.ts';

/** Whatever a client's page makes for the kitchen, distinguished by `kind`. */
export const clientAnswerSchema = z.discriminatedUnion('kind', [
  acceptanceSchema,
  countChangeSchema,
  guestListSchema,
]);

/** An answer of a client's. */
export type ClientAnswer = z.infer<typeof clientAnswerSchema>;

/** The command that takes an answer in. */
export function takenBy({ kind }: Pick<ClientAnswer, 'kind'>, file: string): string {
  switch (kind) {
    case 'acceptance':
      return `accept ${file}`;
    case 'count change':
      return `guarantee --from ${file}`;
    case 'guest list':
      return `guests --from ${file}`;
  }
}
