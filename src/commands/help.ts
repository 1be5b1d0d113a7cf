import { nearest } from '../book/findings/nearest.ts';
import type { Command, CommandOption } from './call/command.ts';
import { sharedOptions } from './call/shared-options.ts';
import { catalogue } from './catalogue.ts';

export const command: Command = {
  summary: 'list the commands, or show how to use one',
  usage: '[COMMAND]',
  options: {},
  async run(call) {
    const name = call.args[0];
    if (name === undefined) {
      call.write(call.json ? asJson(await overviewData()) : await overview());
      return 0;
    }
    const load = Object.hasOwn(catalogue, name) ? catalogue[name] : undefined;
    if (!load) {
      call.complain(unknownCommand(name));
      return 2;
    }
    const { command: asked } = await load();
    call.write(manual(name, asked, call.json));
    return 0;
  },
};

/** All commands, one line each, with the flags that every one takes. */
export async function overview(): Promise<string> {
  const rows: [string, string][] = [];
  for (const [name, load] of Object.entries(catalogue)) {
    rows.push([name, (await load()).command.summary]);
  }
  return [
    'Usage: npm run -s salver -- COMMAND [flags]',
    '',
    table(rows),
    '',
    'Flags of every command:',
    flagTable(sharedOptions),
    '',
    'Help on one command: npm run -s salver -- help COMMAND',
  ].join('\n');
}

/** How one command is used: its line, what it does, its flags; in words or as data. */
export function manual(name: string, { summary, usage, options }: Command, json: boolean): string {
  if (json)
    return asJson({ command: name, summary, usage, flags: flagsData({ ...options, ...sharedOptions }) });
  return [
    `Usage: npm run -s salver -- ${name} ${usage}`.trimEnd(),
    '',
    `  ${summary}`,
    '',
    flagTable({ ...options, ...sharedOptions }),
  ].join('\n');
}

async function overviewData(): Promise<object> {
  const commands: object[] = [];
  for (const [name, load] of Object.entries(catalogue))
    commands.push({ command: name, summary: (await load()).command.summary });
  return { commands, flags: flagsData(sharedOptions) };
}

function flagsData(options: Record<string, CommandOption>): object[] {
  return Object.entries(options).map(([flag, { type, value, summary, multiple = false }]) => ({
    flag,
    summary,
    value: type === 'string' ? (value ?? 'TEXT') : null,
    multiple,
  }));
}

function asJson(data: object): string {
  return JSON.stringify(data, null, 2);
}

/** The sentence for a command that does not exist, with the nearest that does. */
export function unknownCommand(name: string): string {
  const near = nearest(name, Object.keys(catalogue));
  return `There is no command '${name}'${near ? `; did you mean '${near}'?` : '; `help` lists all.'}`;
}

function flagTable(options: Record<string, CommandOption>): string {
  return table(
    Object.entries(options).map(([flag, { type, value, summary }]) => [
      `--${flag}${type === 'string' ? ` ${value ?? 'TEXT'}` : ''}`,
      summary,
    ]),
  );
}

function table(rows: [string, string][]): string {
  const width = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`).join('\n');
}
