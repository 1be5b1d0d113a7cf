import { fileURLToPath } from 'node:url';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { compiledWordsPlugin } from './src/build/compiled-words.ts';
import { leanDecimalPlugin } from './src/build/lean-decimal.ts';
import { salverAdapter } from './src/build/salver-adapter.ts';

// The site is compiled once as an on-demand app and asked for every page: see src/build/compile-app.ts, which
// sets SALVER_CACHE so that nothing an earlier compile stored is ever served again.
const { SALVER_CACHE } = process.env;

export default defineConfig({
  output: 'server',
  adapter: salverAdapter(),
  integrations: [mdx()],
  ...(SALVER_CACHE ? { cacheDir: SALVER_CACHE } : {}),
  trailingSlash: 'always',
  // The other setting eats the space between inline elements on lines of their own.
  compressHTML: true,
  build: { inlineStylesheets: 'never' },
  vite: { plugins: [leanDecimalPlugin(), compiledWordsPlugin()] },
  markdown: {
    syntaxHighlight: false,
    processor: satteri({ features: { smartPunctuation: false } }),
  },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "img-src 'self'",
        "font-src 'self'",
        "connect-src 'self'",
        "base-uri 'none'",
        "form-action 'self'",
      ],
    },
  },
  image: { service: { entrypoint: fileURLToPath(new URL('./src/build/photo-service.ts', import.meta.url)) } },
  devToolbar: { enabled: false },
});
