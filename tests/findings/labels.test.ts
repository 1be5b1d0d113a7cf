import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

const withLabels = (labels: string) =>
  contentWith(changed('kitchen.yaml', 'allergens: us\n', `allergens: us\nlabels: ${labels}\n`));

describe('the sheet of labels: what check says', () => {
  test('of margins and a nudge that it can read, nothing, and takes each over the usual', async () => {
    const dir = withLabels('{ above: ½ in, beside: 4 mm, nudge right: 0.8 mm, nudge down: −1/32 in }');
    const { book, findings } = await readBook(dir);
    expect(findings).toEqual([]);
    const { above, beside, between, nudge } = book!.kitchen.labelSheet;
    // ½ in = 12.7 mm; 3/16 in = 4.7625 mm stays as it was; 1/32 in = 0.79375 mm.
    expect([above, beside, between, nudge.right, nudge.down].map((each) => each.toString())).toEqual([
      '12.7',
      '4',
      '4.7625',
      '0.8',
      '-0.79375',
    ]);
  });

  test('a nudge that is no length', async () => {
    expect(await foundIn(withLabels('{ nudge right: a little }'))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:6:24 error not-understood "a little" does not start with a number — write it as 0.8 mm, or -0.8 mm for the other way"`,
    );
  });

  test('a margin with a sign', async () => {
    expect(await foundIn(withLabels('{ above: -2 mm }'))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:6:18 error not-understood "-2" is negative — write it as 6 mm or 5/32 in"`,
    );
  });

  test('margins with which labels would run off the sheet', async () => {
    expect(await foundIn(withLabels('{ nudge right: 9 mm }'))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:6:9 warning labels-off-sheet with these margins, labels run off the Letter sheet, so the usual ones are used — measure the sheet again; if the printer prints too small, set it to 100 % instead of nudging"`,
    );
  });
});
