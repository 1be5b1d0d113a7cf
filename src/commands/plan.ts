import { plannedEvent } from '../views/kitchen/planned-event.ts';
import { planAsRead } from '../views/sums-as-read.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';
import { planText } from './text/plan-text.ts';

/** Prints the prep plan of an event. */
export const command: Command = {
  summary: 'print the prep plan of an event',
  usage: 'EVENT',
  options: {},
  async run(call) {
    const [event, ...more] = call.args;
    if (event === undefined || more.length > 0) return wrongCall(call, 'Name one event: plan EVENT.');
    const open = await openBook(call);
    if (!open) return 1;
    const planned = await plannedEvent(open.book, event, open.today);
    if (!planned.ok) return refused(call, planned);
    const { plan } = planned.value;
    if (!plan.ok) return refused(call, plan);
    call.write(
      call.json
        ? JSON.stringify(plan.value, null, 2)
        : planText(planAsRead(plan.value, open.book.kitchen.locale), open.book.kitchen.locale),
    );
    return 0;
  },
};
