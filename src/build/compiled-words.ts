import { readFile } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import MessageFormat from '@messageformat/core';
import compileModule from '@messageformat/core/compile-module.js';

const QUERY = '?compiled';
const RUNTIME = '@messageformat/runtime';

/** What the bundler lends a plugin. */
interface Resolver {
  resolve(source: string, importer: string, options: { skipSelf: true }): Promise<{ id: string } | null>;
}

/**
 * Has a browser carry the messages of a catalogue as plain functions: `en-US/script.json?compiled`. The library that
 * reads messages is larger than the whole page may be.
 */
export function compiledWordsPlugin() {
  return {
    name: 'salver-compiled-words',
    enforce: 'pre' as const,
    // A copy for each catalogue: what two scripts share would become a file of its own, which a page opened as a file
    // cannot load.
    async resolveId(this: Resolver, source: string, importer: string | undefined) {
      if (source !== RUNTIME || !importer?.endsWith(`.json${QUERY}`)) return null;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found && `${found.id}?of=${basename(importer, `.json${QUERY}`)}`;
    },
    async load(id: string) {
      if (!id.endsWith(`.json${QUERY}`)) return null;
      const file = id.slice(0, -QUERY.length);
      // Arguments are held by the pages, which say the same messages; checking them again would weigh on each page.
      const format = new MessageFormat(basename(dirname(file)));
      return { code: compileModule(format, JSON.parse(await readFile(file, 'utf8'))), map: null };
    },
  };
}
