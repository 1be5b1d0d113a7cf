import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { command as accept } from '../../src/commands/accept.ts';
import { command as build } from '../../src/commands/build.ts';
import type { Command } from '../../src/commands/call/command.ts';
import { command as confirm } from '../../src/commands/confirm.ts';
import { command as issue } from '../../src/commands/issue.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import type { Offer } from '../../src/schema/offer.ts';

const fixture = fileURLToPath(new URL('../fixtures/second-kitchen', import.meta.url));

/** A second client's proposal, made from the fixture's own. */
const otherProposal: [from: string, to: string][] = [
  ['oyx6usbuof2ek2zoccd4j5hh5o', 'b2q7harbourwall4t5x6y7z2m3'],
  ['Dunmarrow Lifeboat Crew', 'Skerrivane Rowing Club'],
  ['crew@lifeboat.example', 'oars@skerrivane.example'],
  ['Crew evening', 'Regatta lunch'],
  ['2027-05-21', '2027-06-12'],
  ['2027-05-10', '2027-05-30'],
];

/** What a command answered. */
export interface Answer {
  code: number;
  said: string;
  complained: string;
}

/**
 * A copy of the second kitchen with an accepted and confirmed event (`lifeboat-evening`) and an open offer to another
 * client (`regatta-lunch`), both made by the product's own commands.
 */
export interface SecondKitchen {
  /** Holds the content and the output. */
  folder: string;
  content: string;
  out: string;
  /** Builds on the day given, the kitchen's own where none is. */
  build(flags?: Record<string, boolean>, today?: string): Promise<Answer>;
  /** Replaces text in a content file, as `replaceIn` does. */
  edit(file: string, from: string, to: string): Promise<void>;
  offer(proposal: string): Promise<Offer>;
  plan(): Promise<PrepPlanDocument>;
  /** Text of a file of the output. */
  text(file: string): Promise<string>;
  remove(): Promise<void>;
}

export async function secondKitchen(
  prepare: (content: string) => Promise<void> = async () => undefined,
): Promise<SecondKitchen> {
  const kitchen = kitchenIn(await mkdtemp(join(tmpdir(), 'salver-')));
  const { content, edit } = kitchen;
  async function must(command: Command, args: string[], flags: Record<string, string | boolean> = {}) {
    const { code, said, complained } = await runIn(kitchen, command, args, flags);
    if (code !== 0) throw new Error(`the test's kitchen could not be made: ${said}${complained}`);
  }
  await cp(fixture, content, { recursive: true });
  await cp(join(content, 'proposals', 'lifeboat-evening.md'), join(content, 'proposals', 'regatta-lunch.md'));
  for (const [from, to] of otherProposal) await edit('proposals/regatta-lunch.md', from, to);
  await prepare(content);
  await must(issue, ['lifeboat-evening']);
  await must(issue, ['regatta-lunch']);
  const signature = { signed: 'lifeboat-evening', name: 'Ebba Skarn', email: 'ebba@lifeboat.example' };
  await must(accept, [], { ...signature, package: 'storm-supper' });
  await must(confirm, ['lifeboat-evening'], { method: 'transfer' });
  return kitchen;
}

/** The kitchen that a folder holds. */
export function kitchenIn(folder: string): SecondKitchen {
  const content = join(folder, 'content');
  const out = join(folder, 'out');
  const text = (file: string) => readFile(join(out, file), 'utf8');
  return {
    folder,
    content,
    out,
    build: (flags = { 'no-pdf': true }, today) => runIn({ content, out }, build, [], flags, today),
    edit: (file, from, to) => replaceIn(join(content, file), from, to),
    offer: async (proposal) =>
      JSON.parse(await readFile(join(content, 'offers', `${proposal}-r1.json`), 'utf8')) as Offer,
    plan: async () => JSON.parse(await text(`${eventFolder}/prep-plan.json`)) as PrepPlanDocument,
    text,
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}

async function runIn(
  { content, out }: Pick<SecondKitchen, 'content' | 'out'>,
  { run: work }: Command,
  args: string[],
  flags: Record<string, string | boolean> = {},
  today = '2027-04-26',
): Promise<Answer> {
  const answer: Answer = { code: 0, said: '', complained: '' };
  answer.code = await work({
    args,
    flags,
    contentDir: content,
    outDir: out,
    today: today as Day,
    json: false,
    write: (line) => {
      answer.said += `${line}\n`;
    },
    complain: (line) => {
      answer.complained += `${line}\n`;
    },
  });
  return answer;
}

/** Replaces text in a file; fails where it is not there, so that no test passes on an edit that was not made. */
export async function replaceIn(path: string, from: string, to: string): Promise<void> {
  const before = await readFile(path, 'utf8');
  if (!before.includes(from)) throw new Error(`${path} does not say '${from}'`);
  await writeFile(path, before.replaceAll(from, to));
}

/** Where the output has the event. */
export const eventFolder = 'private/kitchen/events/lifeboat-evening';

/** Where the output has each proposal. */
export const crewFolder = 'public/proposals/oyx6usbuof2ek2zoccd4j5hh5o';
export const clubFolder = 'public/proposals/b2q7harbourwall4t5x6y7z2m3';
