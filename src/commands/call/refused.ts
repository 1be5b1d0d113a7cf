import { findingAsRead, wayOutAsRead } from '../../exports/words/finding-as-read.ts';
import type { Call } from './command.ts';

/** Says why something was not done and what would get it done, in the forms of the kitchen's locale; exit code 1. */
export function refused(call: Call, { what, wayOut }: { readonly what: string; readonly wayOut: string }): 1 {
  if (call.json) call.write(JSON.stringify({ refused: what, wayOut }, null, 2));
  else {
    const { locale = 'en-US' } = call;
    const way = wayOutAsRead(wayOut, locale);
    call.complain(`Can’t do that: ${findingAsRead(what, locale)} — ${way}${way.endsWith('?') ? '' : '.'}`);
  }
  return 1;
}
