import { expect, test } from 'vitest';
import { printFindings } from '../../../src/book/findings/print-findings.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { contentWith, SMALL_CONTENT } from '../../findings/small-content.ts';

const withGear = (id: string, gear: string) =>
  contentWith({ 'kitchen.yaml': `${SMALL_CONTENT['kitchen.yaml']}equipment:\n  ${id}: ${gear}\n` });

test('what keeps food waiting says whether hot or cold and what it holds, and is counted once', async () => {
  const { book } = await readBook(withGear('warmer', '{ keeps: hot, holds: 6 tub }'));
  expect(book?.kitchen.equipment.get('warmer')).toMatchObject({ keeps: 'hot', station: undefined });
  const told = async (gear: string, id = 'warmer') =>
    printFindings((await readBook(withGear(id, gear))).findings, 'content');
  expect(await told('{ keeps: hot, holds: 6 tub }')).not.toContain('keeps');
  expect(await told('{ keeps: hot }')).toContain('“keeps” is stated, but “holds” names no container');
  expect(await told('{ keeps: warm, holds: 6 tub }')).toContain('warm');
  expect(await told('{ keeps: cold, holds: 6 tub }', 'cold-room')).toContain(
    '“keeps” is stated for cold-room, which each day’s page counts by the day already',
  );
  expect(await told('{ keeps: cold, chills: 90 min, holds: 6 tub }')).toContain(
    '“keeps” and “chills” are both stated, so one pan would be counted twice',
  );
});
