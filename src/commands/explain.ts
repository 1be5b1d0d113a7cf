import { explain } from '../exports/explanation.ts';
import { allergenAsRead } from '../exports/words/allergen-as-read.ts';
import { textAsRead } from '../exports/words/text-as-read.ts';
import { explainedHours } from '../views/kitchen/explained-hours.ts';
import { plannedEvent } from '../views/kitchen/planned-event.ts';
import { wordsIn } from '../words/words-in.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';

/** Prints why a dish, a recipe, an ingredient, the ice, a rental, a fuel, a piece of kit or a carrier of a plan comes to what it does, down to the packs bought. */
export const command: Command = {
  summary: 'explain how a figure in a plan was calculated',
  usage: 'EVENT DISH|RECIPE|INGREDIENT|ice|RENTAL|FUEL|KIT|CARRIER',
  options: {},
  async run(call) {
    const [event, ...words] = call.args;
    if (event === undefined || words.length === 0)
      return wrongCall(call, 'Name an event and one of its dishes or ingredients: explain EVENT DISH.');
    const open = await openBook(call);
    if (!open) return 1;
    const { locale } = open.book.kitchen;
    const planned = await plannedEvent(open.book, event, open.today);
    if (!planned.ok) return refused(call, planned);
    const { plan } = planned.value;
    if (!plan.ok) return refused(call, plan);
    const steps = explain(
      plan.value,
      words.join(' '),
      wordsIn(locale),
      explainedHours(open.book, event, open.today),
    );
    if (!steps.ok) return refused(call, steps);
    if (call.json) call.write(JSON.stringify(steps.value, null, 2));
    else
      for (const { about, why } of steps.value)
        call.write([about, ...why.map((each) => `  ${each}`)].map((line) => asRead(line, locale)).join('\n'));
    return 0;
  },
};

function asRead(line: string, locale: string): string {
  return allergenAsRead(textAsRead(line, locale), locale);
}
