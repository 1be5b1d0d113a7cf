import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** A folder that lives as long as the run, for what several files only read. */
    sharedFolder: string;
  }
}

/** Makes the folder that files of one run share, and takes it away when the run is over. */
export default async function setup({ provide }: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'salver-shared-'));
  provide('sharedFolder', folder);
  return () => rm(folder, { recursive: true, force: true });
}
