import type { Day } from '../../engine/calendar/day.ts';

/** A flag of one command, beside those that every command takes. */
export interface CommandOption {
  type: 'string' | 'boolean';
  /** One line for `help`. */
  summary: string;
  /** What stands for the value in `help`, such as `COUNT`. For text flags only. */
  value?: string;
  /** Whether the flag may be given more than once; its value is then a list. */
  multiple?: boolean;
}

/** What a command is given: everything outside of it that it may use. */
export interface Call {
  /** The words after the command's name that are not flags. */
  args: string[];
  /** The command's own flags by name, without the dashes. Not given: missing. */
  flags: Record<string, string | boolean | string[] | undefined>;
  /** Absolute path of the caterer's files. */
  contentDir: string;
  /** Absolute path of the folder that `build` fills. */
  outDir: string;
  /** `--today`, checked; missing when not given. See `todayFor`. */
  today: Day | undefined;
  /** The kitchen's, once its content has been read: what is refused is told in its forms. */
  locale?: string;
  /** Whether data and findings are wanted as JSON. */
  json: boolean;
  /** Writes one line (or several) of result to standard output; ends it with a line break where it has none. */
  write(text: string): void;
  /** Writes one line to standard error: what is wrong with the call, or how the work goes on. */
  complain(text: string): void;
}

/** One command of the command line: the `command` that a file of this folder exports. */
export interface Command {
  /** One line for `help`. */
  summary: string;
  /** What follows the command's name, such as `EVENT [--guests N]`. */
  usage: string;
  options: Record<string, CommandOption>;
  /** The exit code: 0 done, 1 the content has errors or the work failed, 2 the call is wrong. */
  run(call: Call): Promise<number>;
}

/** Something wrong with the call itself: said in one sentence on standard error, exit code 2. */
export function wrongCall(call: Pick<Call, 'complain'>, sentence: string): 2 {
  call.complain(sentence);
  return 2;
}
