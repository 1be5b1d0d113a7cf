import { withFact } from '../offers/event/current-event.ts';
import type { DishDifference } from '../offers/event/dish-difference.ts';
import { type Substitution, substitution } from '../offers/event/substitute.ts';
import { type Call, type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';
import { changeOf } from './text/change-of.ts';

/** Shows what a swap of a dish or an ingredient would change for one event, and records it where told to. */
export const command: Command = {
  summary: 'swap a dish or an ingredient for one event; shows the difference first',
  usage: 'EVENT OLD NEW [--amount "1 piece per guest"] [--yes]',
  options: {
    amount: { type: 'string', summary: 'how much of the new dish each guest gets', value: 'AMOUNT' },
    yes: { type: 'boolean', summary: 'record the swap; without this flag it is only shown' },
  },
  async run(call) {
    const [event, from, to, ...more] = call.args;
    if (event === undefined || from === undefined || to === undefined || more.length > 0)
      return wrongCall(call, 'Name one event, what goes out and what comes in: substitute EVENT OLD NEW.');
    const open = await openBook(call);
    if (!open) return 1;
    const { amount, yes } = call.flags;
    const asked = { from, to, ...(typeof amount === 'string' ? { amount } : {}) };
    const shownOnly = substitution(open.book, event, asked, open.today);
    if (!shownOnly.ok) return refused(call, shownOnly);
    if (yes !== true)
      return show(call, shownOnly.value, withFact(open.book, event, shownOnly.value.fact), event, open.today);
    let made = shownOnly.value;
    const done = await recordInto(call, open, event, (book) => {
      const next = substitution(book, event, asked, open.today);
      if (next.ok) made = next.value;
      return next;
    });
    if (!done.ok) return refused(call, done);
    return show(call, made, done.value.after, event, open.today, true);
  },
};

async function show(
  call: Call,
  made: Substitution,
  book: Parameters<typeof changeOf>[0],
  event: string,
  today: Parameters<typeof changeOf>[2],
  recorded = false,
): Promise<number> {
  const change = await changeOf(book, event, today);
  const { fact, dishes, needs, names } = made;
  if (call.json) {
    call.write(JSON.stringify({ recorded, fact, dishes, needs, change: change.data }, null, 2));
    return 0;
  }
  const tell =
    fact.tell.length > 0 ? fact.tell : ['Nothing: no allergen added, no diet lost, no dish replaced.'];
  call.write(
    `${recorded ? 'Substituted' : 'Not recorded yet'}: ${names.to} instead of ${names.from}, for ${event} only.`,
  );
  call.write(`\nAllergens and diets\n${dishes.flatMap(differenceLines).join('\n')}`);
  if (needs.length > 0) call.write(`\nGuests affected\n${needs.map((text) => `  ${text}`).join('\n')}`);
  call.write(`\nTell the client\n${tell.map((text) => `  ${text}`).join('\n')}`);
  call.write(`\n${change.text}`);
  if (!recorded) call.write('\nTo record it, run this command again with --yes.');
  return 0;
}

function differenceLines(dish: DishDifference): string[] {
  const said = [
    dish.contains.length > 0 ? `NOW CONTAINS ${dish.contains.join(', ').toUpperCase()}` : '',
    dish.mayContain.length > 0 ? `now may contain ${dish.mayContain.join(', ')}` : '',
    dish.without.length > 0 ? `no longer contains ${dish.without.join(', ')}` : '',
    dish.dietsLost.length > 0 ? `no longer ${dish.dietsLost.join(', ')}` : '',
    dish.dietsGained.length > 0 ? `now ${dish.dietsGained.join(', ')}` : '',
  ].filter((text) => text !== '');
  return [`  ${dish.dish}: ${said.length > 0 ? said.join('; ') : 'no difference'}`];
}
