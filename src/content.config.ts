import { defineCollection } from 'astro:content';
import { pathToFileURL } from 'node:url';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

// Bodies alone: their data is read, checked and linked by the Book. The folder is filled by
// src/build/mirror-bodies.ts; while developing it is kept up to date by src/build/dev-site.ts.
const { SALVER_BODIES = '.salver/bodies/dev' } = process.env;
const folder = pathToFileURL(`${SALVER_BODIES}/`);

function bodies(collection: string) {
  return defineCollection({
    loader: glob({ pattern: '*.mdx', base: new URL(`${collection}/`, folder) }),
    schema: z.strictObject({}),
  });
}

export const collections = { recipes: bodies('recipes'), packages: bodies('packages') };
