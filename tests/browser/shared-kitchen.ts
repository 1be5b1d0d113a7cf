import { existsSync } from 'node:fs';
import { cp, mkdtemp, rename, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inject } from 'vitest';
import { withLock } from '../../src/build/lock.ts';
import { HOOK_TIME, PATIENCE } from '../patience.ts';
import { clientKitchen } from './client-kitchen.ts';
import { clientStates } from './client-states.ts';
import { kitchenIn, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

const DEMO = fileURLToPath(new URL('../../content', import.meta.url));

/** Kitchens that several files read, each with all it takes to make it. */
const KITCHENS = {
  /** The second kitchen as it is, with all its papers. */
  plain: async () => {
    const kitchen = await secondKitchen();
    const { code, said, complained } = await kitchen.build({});
    if (code !== 0) throw new Error(`the second kitchen could not be built: ${said}${complained}`);
    return kitchen;
  },
  client: () => clientKitchen(),
  states: clientStates,
  /** The demo on the day of its README, without its papers. */
  demo: async () => {
    const kitchen = kitchenIn(await mkdtemp(join(tmpdir(), 'salver-')));
    await cp(DEMO, kitchen.content, { recursive: true });
    const { code, said, complained } = await kitchen.build();
    if (code !== 0) throw new Error(`the demo could not be built: ${said}${complained}`);
    return kitchen;
  },
} as const;

/**
 * A built kitchen that no test changes: made by the first file of a run that asks for it, and read by the others. It
 * goes with the run. Whoever changes content or output takes `ownCopy`.
 */
export async function sharedKitchen(name: keyof typeof KITCHENS): Promise<SecondKitchen> {
  const folder = join(inject('sharedFolder'), name);
  const wait = HOOK_TIME * PATIENCE;
  const refusal = `the ${name} kitchen, which another file is making, is not there yet`;
  await withLock(`${folder}.lock`, { wait, refusal }, async () => {
    if (existsSync(folder)) return;
    const made = await KITCHENS[name]();
    // All at once, so that another file never finds half of it.
    await cp(made.folder, `${folder}.next`, { recursive: true, preserveTimestamps: true });
    await rename(`${folder}.next`, folder);
    await made.remove();
  });
  return { ...kitchenIn(folder), remove: async () => undefined };
}

/** A copy of a shared kitchen, content and output, for a file that changes it. */
export async function ownCopy(name: keyof typeof KITCHENS): Promise<SecondKitchen> {
  const { folder } = await sharedKitchen(name);
  const own = await mkdtemp(join(tmpdir(), 'salver-'));
  await rm(own, { recursive: true });
  await cp(folder, own, { recursive: true, preserveTimestamps: true });
  return kitchenIn(own);
}
