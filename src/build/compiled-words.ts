import { readFile } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import MessageFormat from '@messageformat/core';
import compileModule from '@messageformat/core/compile-module.js';

const QUERY = '?compiled';

/**
 * Has a browser carry the messages of a catalogue as plain functions: `en-US/script.json?compiled`. The library that
 * reads messages is larger than the whole page may be.
 */
export function compiledWordsPlugin() {
  return {
    name: 'salver-compiled-words',
    enforce: 'pre' as const,
    async load(id: string) {
      if (!id.endsWith(`.json${QUERY}`)) return null;
      const file = id.slice(0, -QUERY.length);
      // Arguments are held by the pages, which say the same messages; checking them again would weigh on each page.
      const format = new MessageFormat(basename(dirname(file)));
      return { code: compileModule(format, JSON.parse(await readFile(file, 'utf8'))), map: null };
    },
  };
}
