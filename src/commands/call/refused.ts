import type { Call } from './command.ts';

/** Says why something was not done and what would get it done; exit code 1. */
export function refused(call: Call, { what, wayOut }: { readonly what: string; readonly wayOut: string }): 1 {
  if (call.json) call.write(JSON.stringify({ refused: what, wayOut }, null, 2));
  else call.complain(`Can’t do that: ${what} — ${wayOut}${wayOut.endsWith('?') ? '' : '.'}`);
  return 1;
}
