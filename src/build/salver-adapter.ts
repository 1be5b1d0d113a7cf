import type { AstroIntegration } from 'astro';

/** Makes Astro's compiled app a module that this process asks for one page at a time. */
export function salverAdapter(): AstroIntegration {
  return {
    name: 'salver',
    hooks: {
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
