import type { AstroIntegration } from 'astro';

/**
 * Makes Astro's compiled app a module that this process asks for one page at a time, and the dev server reload
 * pages when the content changes.
 */
export function salverAdapter(): AstroIntegration {
  return {
    name: 'salver',
    hooks: {
      'astro:server:setup': ({ server }) => {
        const { SALVER_CONTENT } = process.env;
        if (!SALVER_CONTENT) return;
        // The content is read by us, not by the dev server, which therefore does not see it change.
        server.watcher.add(SALVER_CONTENT).on('all', (_, path) => {
          if (path.startsWith(SALVER_CONTENT)) server.hot.send({ type: 'full-reload' });
        });
      },
      'astro:config:done': ({ setAdapter }) => {
        setAdapter({
          name: 'salver',
          entrypointResolution: 'auto',
          serverEntrypoint: new URL('./server-entry.ts', import.meta.url),
          supportedAstroFeatures: { serverOutput: 'stable', sharpImageService: 'stable' },
        });
      },
    },
  };
}
