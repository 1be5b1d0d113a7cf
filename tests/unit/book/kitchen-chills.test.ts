import { expect, test } from 'vitest';
import { printFindings } from '../../../src/book/findings/print-findings.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { contentWith, SMALL_CONTENT } from '../../findings/small-content.ts';

const withChiller = (chiller: string) =>
  contentWith({ 'kitchen.yaml': `${SMALL_CONTENT['kitchen.yaml']}equipment:\n  chiller: ${chiller}\n` });

test('what chills food says how long that takes and what it holds', async () => {
  const { book } = await readBook(withChiller('{ chills: 1 h 30 min, holds: 6 tub }'));
  expect(book?.kitchen.equipment.get('chiller')).toMatchObject({ chills: 90 });
  const told = async (chiller: string) =>
    printFindings((await readBook(withChiller(chiller))).findings, 'content');
  expect(await told('{ chills: 90 min }')).toContain('“chills” is stated, but “holds” names no container');
  expect(await told('{ chills: soon, holds: 6 tub }')).toContain('"soon"');
});
