import { realpathSync } from 'node:fs';
import { join, sep } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

/**
 * Serves the files of one folder and nothing else: no listing, no names that begin with a dot, no source maps,
 * nothing that a symbolic link leads to outside of it.
 * The folder may be replaced while it is served, as `build` does; each request sees the one or the other.
 */
export async function serveFolder(app: FastifyInstance, folder: string): Promise<void> {
  await app.register(fastifyStatic, {
    root: folder,
    index: ['index.html'],
    // Pages name their files relative to themselves, so a folder's address has to end in a slash.
    redirect: true,
    list: false,
    dotfiles: 'ignore',
    allowedPath: (path) => !/\.map$/i.test(path) && isInside(folder, path),
    cacheControl: false,
    decorateReply: false,
    suppressWarning: true,
    setHeaders(reply, path) {
      // Files under _astro have the digest of their content in their name. Everything else may change with the next
      // build, a corrected allergen above all, so it is asked for again each time.
      const lasting = path.startsWith(join(folder, '_astro'));
      reply.header('cache-control', lasting ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  });
}

function isInside(folder: string, path: string): boolean {
  try {
    const root = realpathSync(folder);
    return realpathSync(join(root, path)).startsWith(root + sep);
  } catch {
    // What is not there is not served either.
    return false;
  }
}
