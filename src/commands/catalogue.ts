import type { Command } from './command.ts';

/** Every command by its name. Loaded only when called, so that one command never pays for another's libraries. */
export const catalogue: Record<string, () => Promise<{ command: Command }>> = {
  help: () => import('./help.ts'),
  setup: () => import('./setup.ts'),
};
