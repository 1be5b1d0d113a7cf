import type { CommandOption } from './command.ts';

/** The flags that every command takes. */
export const sharedOptions: Record<string, CommandOption> = {
  content: { type: 'string', value: 'DIR', summary: 'a caterer’s files (default: this project’s content/)' },
  out: { type: 'string', value: 'DIR', summary: 'where the sites go (default: this project’s dist/)' },
  today: {
    type: 'string',
    value: 'DATE',
    summary: 'the date to work from, such as 2027-04-26 (default: today where the kitchen is)',
  },
  json: { type: 'boolean', summary: 'data and findings as JSON' },
  help: { type: 'boolean', summary: 'show how to use the command' },
};
