import { join } from 'node:path';
import { parseDay } from '../engine/calendar/day.ts';
import { tell, toldFile } from '../offers/corrections/told.ts';
import { writeOnce } from '../offers/write-once.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';

/** Records that a client has been told of substitutions, and of food that is less safe than was offered. */
export const command: Command = {
  summary: 'record that a client was told of corrected allergens and substitutions',
  usage: 'PROPOSAL [--on DATE]',
  options: {
    on: { type: 'string', summary: 'the day the client was told (default: today)', value: 'DATE' },
  },
  async run(call) {
    const [proposal, ...more] = call.args;
    if (proposal === undefined || more.length > 0)
      return wrongCall(call, 'Name one proposal or event: told PROPOSAL.');
    const day = typeof call.flags.on === 'string' ? parseDay(call.flags.on) : undefined;
    if (day && !day.ok) return wrongCall(call, `--on: ${day.what}; ${day.wayOut}.`);
    const open = await openBook(call);
    if (!open) return 1;
    const { book, today } = open;
    const record = tell(book, proposal, day?.value ?? today, today);
    if (!record.ok) return refused(call, record);
    const number = (book.told.get(proposal)?.length ?? 0) + 1;
    const file = toldFile(proposal, number);
    if (!(await writeOnce(join(call.contentDir, file), record.value))) {
      const what = `${file} already exists, or someone has just written it`;
      return refused(call, { what, wayOut: 'run `check`, then this command again' });
    }
    if (call.json) {
      call.write(JSON.stringify({ told: record.value, file }, null, 2));
      return 0;
    }
    const { on, dishes, substitutions = [] } = record.value;
    const facts = book.events.get(proposal)?.facts ?? [];
    const swaps = substitutions.flatMap((each) => {
      const fact = facts[each - 1];
      return fact?.kind === 'substitution' ? [`${fact.name ?? fact.to} instead of ${fact.from}`] : [];
    });
    const client = book.offers.get(proposal)?.at(-1)?.client.name ?? proposal;
    call.write(
      `Recorded: ${client} was told on ${on} of ${[...swaps, ...dishes.map(({ dish }) => dish)].join(', ')}.`,
    );
    return 0;
  },
};
