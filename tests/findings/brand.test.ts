import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

const kitchenWith = (line: string) => changed('kitchen.yaml', 'places:', `${line}\nplaces:`);
const mark = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h9v9z"/></svg>\n';
const storyWith = (text: string) => changed('packages/supper.mdx', 'A plain supper.', text);

/** A small content folder with a picture in it. */
async function withPicture(file: string, changes: Record<string, string>): Promise<string> {
  const dir = contentWith(changes);
  const picture = sharp({ create: { width: 9, height: 9, channels: 3, background: '#345' } });
  await mkdir(join(dir, 'packages/photos'), { recursive: true });
  await writeFile(join(dir, file), await picture.jpeg().toBuffer());
  return dir;
}

describe('the kitchen’s own brand: what check says', () => {
  test('nothing of a sound mark, and of a pair of typefaces that there is', async () => {
    const dir = contentWith({
      ...kitchenWith('mark: brand/mark.svg\nfonts: garamond'),
      'brand/mark.svg': mark,
    });
    const { book, findings } = await readBook(dir);
    expect(findings).toEqual([]);
    expect(book?.kitchen).toMatchObject({ fonts: 'garamond', mark: { svg: mark, width: 9, height: 9 } });
  });

  test('paper is by the locale, unless the kitchen says which', async () => {
    const paper = async (...lines: readonly string[]) => {
      const text = changed('kitchen.yaml', 'locale: en-US', lines.join('\n'));
      return (await readBook(contentWith(text))).book?.kitchen.paper;
    };
    expect(await paper('locale: en-US')).toBe('letter');
    expect(await paper('locale: en-IE')).toBe('a4');
    expect(await paper('locale: en-US', 'paper: a4')).toBe('a4');
    expect(await paper('locale: en-IE', 'paper: letter')).toBe('letter');
  });

  test('a mark that is not there, beside one that nobody names', async () => {
    expect(
      await foundIn(contentWith({ ...kitchenWith('mark: brand/marc.svg'), 'brand/mark.svg': mark })),
    ).toMatchInlineSnapshot(`
      "content/brand/mark.svg:1:1 note stray-file this drawing is not used — write mark: brand/mark.svg in kitchen.yaml, or delete it
      content/kitchen.yaml:6:7 error mark-missing there is no drawing “brand/marc.svg” — did you mean brand/mark.svg?"
    `);
  });

  test('a mark that runs a script holds back nothing but itself', async () => {
    const dir = contentWith({
      ...kitchenWith('mark: brand/mark.svg'),
      'brand/mark.svg': mark.replace('<path', '\n<path onload="alert(1)"'),
    });
    expect(await foundIn(dir)).toMatchInlineSnapshot(
      `"content/brand/mark.svg:2:1 error mark-unsafe “onload="alert(1)"” would run a script — remove it"`,
    );
    expect((await readBook(dir)).book?.kitchen.mark).toBeUndefined();
  });

  test('a pair of typefaces that there is not', async () => {
    expect(await foundIn(contentWith(kitchenWith('fonts: garamont')))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:6:8 error unknown-word “fonts” can’t be “garamont” — did you mean garamond?"`,
    );
  });
});

describe('pictures in texts: what check says', () => {
  test('nothing of one that is there and described', async () => {
    const dir = await withPicture('packages/photos/hall.jpg', storyWith('![The hall](photos/hall.jpg)'));
    const { book, findings } = await readBook(dir);
    expect(findings).toEqual([]);
    expect([...(book?.photos.keys() ?? [])]).toEqual(['packages/photos/hall.jpg']);
  });

  test('a picture without words', async () => {
    expect(
      await foundIn(await withPicture('packages/photos/hall.jpg', storyWith('![ ](photos/hall.jpg)'))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:13:1 error picture-undescribed a picture has no description for people who can’t see it — describe it in the square brackets, such as ![the hall at dusk](hall.jpg)"`,
    );
  });

  test('a picture that is none', async () => {
    expect(
      await foundIn(
        contentWith({ ...storyWith('![The hall](photos/hall.jpg)'), 'packages/photos/hall.jpg': 'words' }),
      ),
    ).toMatchInlineSnapshot(
      `"content/packages/photos/hall.jpg:1:1 error picture-form this picture is damaged, is a kind that pages can’t show, or has more than 100 million pixels — save it again as .jpg, .png, .webp or .avif, smaller if it is huge"`,
    );
  });
});
