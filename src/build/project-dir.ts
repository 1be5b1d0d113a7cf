import { fileURLToPath } from 'node:url';

/** The folder of Salver itself, where its sources, packages and kept work lie. */
export const projectDir = fileURLToPath(new URL('../../', import.meta.url)).replace(/[\\/]$/, '');
