import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { command as accept } from '../../src/commands/accept.ts';
import { command as cancel } from '../../src/commands/cancel.ts';
import { command as confirm } from '../../src/commands/confirm.ts';
import { command as issue } from '../../src/commands/issue.ts';
import { command as postpone } from '../../src/commands/postpone.ts';
import { command as told } from '../../src/commands/told.ts';
import { clientKitchen, copyProposal, MORE_LINKS, runCommand } from './client-kitchen.ts';
import { replaceIn, type SecondKitchen } from './second-kitchen.ts';

/** Each event on a day of its own, so that no two are too much for the kitchen. */
const EVENTS = {
  accepted: '2027-06-14',
  moved: '2027-06-16',
  'put off': '2027-06-18',
  cancelled: '2027-06-20',
};

/** The client's kitchen with a proposal in every state, made by the product's own commands and built without PDFs. */
export async function clientStates(): Promise<SecondKitchen> {
  const kitchen = await clientKitchen();
  const { content } = kitchen;
  const run = (...call: [Parameters<typeof runCommand>[1], string[], Record<string, string>?, string?]) =>
    runCommand(content, ...call);
  await revise(content);
  await correct(content);
  for (const [state, date] of Object.entries(EVENTS)) {
    const id = `pier-${state.replace(' ', '-')}`;
    const link = MORE_LINKS[state as keyof typeof EVENTS];
    await copyProposal(content, id, link, [['2027-06-12', date]]);
    await run(issue, [id], {}, '2027-04-02');
    const signed = { name: 'Marit Skarn', email: 'marit@skerrivane.example', package: 'storm-supper' };
    await run(accept, [], { signed: id, ...signed });
  }
  await run(confirm, ['pier-moved'], { method: 'transfer' });
  await run(postpone, ['pier-moved'], { to: '2027-09-18' });
  await run(postpone, ['pier-put-off']);
  await run(cancel, ['pier-cancelled']);
  const { code, said, complained } = await kitchen.build();
  if (code !== 0) throw new Error(`the kitchen in every state could not be built: ${said}${complained}`);
  return kitchen;
}

/** A second revision, in which much has changed. */
async function revise(content: string): Promise<void> {
  const file = join(content, 'proposals', 'pier-revised.md');
  await copyProposal(content, 'pier-revised', MORE_LINKS.revised, []);
  await runCommand(content, issue, ['pier-revised'], {}, '2027-04-02');
  await replaceIn(file, 'serve at: 19:30', 'serve at: 20:00');
  await replaceIn(file, 'adults: 34', 'adults: 38');
  await replaceIn(file, 'haddock-chowder: 29', 'haddock-chowder: 33');
  await replaceIn(file, 'valid until: 2027-05-30', 'valid until: 2027-06-01');
  await replaceIn(file, 'add-ons: tea-table, extra-hour', 'add-ons: extra-hour');
  await runCommand(content, issue, ['pier-revised'], {}, '2027-04-20');
}

/** An offer of a dish, known to no other, that has butter in it since; the client was told. */
async function correct(content: string): Promise<void> {
  const recipe = join(content, 'recipes', 'pier-stew.mdx');
  await cp(join(content, 'recipes', 'bean-and-leek-stew.mdx'), recipe);
  await replaceIn(recipe, 'name: Butter bean and leek stew', 'name: Pier stew');
  const menu = join(content, 'packages', 'pier-supper.mdx');
  await cp(join(content, 'packages', 'storm-supper.mdx'), menu);
  await replaceIn(menu, 'name: Storm supper', 'name: Pier supper');
  await replaceIn(menu, 'bean-and-leek-stew', 'pier-stew');
  // Forty guests cost less in all than thirty-nine.
  await replaceIn(menu, 'price: 14.50', 'price:\n  10-39: 14.50\n  40+: 13.00');
  await copyProposal(content, 'pier-corrected', MORE_LINKS.corrected, [
    ['storm-supper', 'pier-supper'],
    ['bean-and-leek-stew: 9', 'pier-stew: 9'],
  ]);
  await runCommand(content, issue, ['pier-corrected'], {}, '2027-04-02');
  await replaceIn(recipe, '  olive-oil: 250 ml', '  olive-oil: 250 ml\n  butter: 200 g');
  await runCommand(content, told, ['pier-corrected'], { on: '2027-04-25' });
}
