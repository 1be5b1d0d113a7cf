import type { Command } from './command.ts';

/** Every command by its name. Loaded only when called, so that one command never pays for another's libraries. */
export const catalogue: Record<string, () => Promise<{ command: Command }>> = {
  help: () => import('./help.ts'),
  setup: () => import('./setup.ts'),
  fill: () => import('./fill.ts'),
  check: () => import('./check.ts'),
  new: () => import('./new.ts'),
  quote: () => import('./quote.ts'),
  issue: () => import('./issue.ts'),
  accept: () => import('./accept.ts'),
  confirm: () => import('./confirm.ts'),
  guarantee: () => import('./guarantee.ts'),
  guests: () => import('./guests.ts'),
  substitute: () => import('./substitute.ts'),
  told: () => import('./told.ts'),
  postpone: () => import('./postpone.ts'),
  cancel: () => import('./cancel.ts'),
  served: () => import('./served.ts'),
  leftovers: () => import('./leftovers.ts'),
  payment: () => import('./payment.ts'),
  plan: () => import('./plan.ts'),
  explain: () => import('./explain.ts'),
  build: () => import('./build.ts'),
  send: () => import('./send.ts'),
  serve: () => import('./serve.ts'),
  dev: () => import('./dev.ts'),
};
