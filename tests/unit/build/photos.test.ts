import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { withPhotos } from '../../../src/book/bodies/photos.ts';
import type { Photo } from '../../../src/book/photo.ts';
import { readPhotos } from '../../../src/book/read/photos.ts';
import { readClientAssets } from '../../../src/build/client-assets.ts';
import { mirrorBodies } from '../../../src/build/mirror-bodies.ts';
import { asPublished } from '../../../src/build/page-html.ts';
import { photoName, photoPath, photosNamedIn } from '../../../src/build/photo-name.ts';
import { withLargestPhotos } from '../../../src/print/print-html.ts';

/** A picture as a camera writes it: on its side, with where, by whom and with what it was taken. */
function cameraPicture(colour: string): Promise<Buffer> {
  return sharp({ create: { width: 900, height: 600, channels: 3, background: colour } })
    .withExif({
      IFD0: { Artist: 'Someone at home', Model: 'Field camera' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '51/1 30/1 0/1',
        GPSLongitudeRef: 'W',
        GPSLongitude: '0/1 7/1 0/1',
      },
    })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
}

let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'salver-photos-'));
});
afterAll(() => rm(dir, { recursive: true, force: true }));

describe('a photo that is published', () => {
  test('is upright and smaller, and says nothing of where and with what it was taken', async () => {
    const original = await cameraPicture('#8899aa');
    const before = await sharp(original).metadata();
    expect(before.exif?.toString('latin1')).toContain('Someone at home');
    // GPSLatitudeRef is tag 1 of the directory that tag 0x8825 points to (Exif 2.32, 4.6.6): big or little end first.
    expect(before.exif?.toString('hex')).toMatch(/8825|2588/);
    const app = join(dir, 'app');
    await mkdir(join(app, 'client', '_astro'), { recursive: true });
    await writeFile(join(app, 'client', '_astro', '3f2a.DxYz-_12.jpg'), original);
    const assets = await readClientAssets(app);
    const name = photoPath('3f2a.DxYz-_12.jpg', 300);

    const bytes = Buffer.from((await assets.read(name))!);
    const after = await sharp(bytes).metadata();
    expect(after).toMatchObject({ format: 'webp', width: 300, height: 450 });
    expect([after.exif, after.xmp, after.iptc, after.orientation]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(bytes.toString('latin1')).not.toMatch(/Someone|Field camera|EXIF/);
    expect(Buffer.from((await assets.read(name))!).equals(bytes)).toBe(true);
  });

  test('is asked for by the page in its widths, and the author’s own file never is', async () => {
    const assets = await readClientAssets(join(dir, 'app'));
    const html =
      '<img src="/_astro/3f2a.DxYz-_12.900w.webp" srcset="/_astro/3f2a.DxYz-_12.480w.webp 480w" alt="">';
    expect(assets.neededBy(html)).toEqual(['3f2a.DxYz-_12.480w.webp', '3f2a.DxYz-_12.900w.webp']);
    expect(assets.neededBy('<img src="/_astro/3f2a.DxYz-_12.jpg">')).toEqual([]);
    expect(await assets.read('3f2a.DxYz-_12.jpg')).toBeUndefined();
    expect(await assets.read('other.DxYz.480w.webp')).toBeUndefined();
  });

  test('has one name for one picture and width, which no picture’s own name can be taken for', () => {
    expect(photoName(photoPath('a.b-640w.jpeg', 480))).toEqual({ stem: 'a.b-640w', width: 480 });
    expect(photoName('3f2a.640w-abc.webp')).toBeUndefined();
    expect(photosNamedIn('/_astro/a.b.480w.webp 1x, /_astro/a.b.480w.webp')).toEqual(['a.b.480w.webp']);
  });

  test('is found from the page’s own folder in every width, and printed in its largest', () => {
    const html =
      '<img src="/_astro/a.9w.webp" srcset="/_astro/a.4w.webp 4w, /_astro/a.9w.webp 9w" sizes="9px" alt="x">';
    expect(asPublished(html, 'public/proposals/one/index.html').html).toBe(
      '<img src="../../_astro/a.9w.webp" srcset="../../_astro/a.4w.webp 4w, ../../_astro/a.9w.webp 9w" sizes="9px" alt="x">',
    );
    expect(withLargestPhotos(`<p>srcset="x"</p>${html}`)).toBe(
      '<p>srcset="x"</p><img src="/_astro/a.9w.webp" alt="x">',
    );
  });
});

describe('the pictures of a content folder', () => {
  test('are known by what they hold, whatever they are called, and what cannot be shown is told', async () => {
    const content = join(dir, 'content');
    await mkdir(content, { recursive: true });
    const whole = await cameraPicture('#aa8866');
    const files: Record<string, Buffer | string> = {
      'hall.png': whole,
      'again.jpg': whole,
      'river.avif': await sharp(whole).resize(32).avif().toBuffer(),
      'cut.jpg': whole.subarray(0, whole.length / 2),
      'drawing.png': '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" width="9" height="9"/>',
      'words.webp': 'no picture at all',
    };
    for (const [name, bytes] of Object.entries(files)) await writeFile(join(content, name), bytes);
    const { photos, findings } = await readPhotos(content, new Set([...Object.keys(files), 'gone.jpg']));
    const names = [...photos].map(([file, { name }]) => [file, name.replace(/^[0-9a-f]{16}\./, '')]);
    expect(names).toEqual([
      ['again.jpg', 'jpg'],
      ['hall.png', 'jpg'],
      ['river.avif', 'avif'],
    ]);
    expect(photos.get('again.jpg')?.name).toBe(photos.get('hall.png')?.name);
    expect(findings.map(({ code, place }) => `${place.file} ${code}`)).toEqual([
      'cut.jpg picture-form',
      'drawing.png picture-form',
      'gone.jpg unreadable-file',
      'words.webp picture-form',
    ]);
  });

  test('one that is larger than a camera writes is not even read', async () => {
    await writeFile(join(dir, 'huge.jpg'), Buffer.alloc(20 * 1024 * 1024 + 1));
    const { findings } = await readPhotos(dir, new Set(['huge.jpg']));
    expect(findings.map(({ code, what }) => `${code}: ${what}`)).toEqual([
      'file-too-large: the picture has 20,971,521 bytes',
    ]);
  });
});

describe('a text with photos', () => {
  const photo: Photo = { path: '/somewhere/hall.jpg', name: '0123456789abcdef.jpg' };
  const known = new Map([['packages/photos/hall.jpg', photo]]);

  test('names them by their digests, and stands alone without those that are gone', () => {
    const text = 'Come in.\n\n![The {hall} at *dusk*](photos/hall.jpg)\n\nAnd ![gone](photos/gone.jpg)out.\n';
    expect(withPhotos(text, 'packages', known)).toEqual({
      text: 'Come in.\n\n![The \\{hall\\} at dusk](./0123456789abcdef.jpg)\n\nAnd out.\n',
      photos: [photo],
    });
    const code = 'Write `![a](photos/hall.jpg)` for a picture.\n';
    expect(withPhotos(code, 'packages', known)).toEqual({ text: code, photos: [] });
    expect(withPhotos('![a](../../hall.jpg)', 'packages', known)).toEqual({
      text: '![a](../../hall.jpg)',
      photos: [],
    });
  });

  test('is another text for the compiler when a picture is another, and has its picture beside it', async () => {
    const digests: string[] = [];
    for (const colour of ['#111111', '#222222']) {
      const content = join(dir, 'story');
      await mkdir(join(content, 'packages'), { recursive: true });
      await writeFile(join(content, 'packages/hall.jpg'), await cameraPicture(colour));
      const { photos } = await readPhotos(content, new Set(['packages/hall.jpg']));
      const made = withPhotos('![The hall](hall.jpg)\n', 'packages', photos);
      const body = { collection: 'packages' as const, id: 'story', ...made };
      const mirrored = await mirrorBodies(dir, [body]);
      digests.push(mirrored.digest);
      const [name = ''] = made.photos.map((each) => each.name);
      expect((await readdir(join(mirrored.dir, 'packages'))).sort()).toEqual([name, 'story.mdx'].sort());
      expect(await readFile(join(mirrored.dir, 'packages/story.mdx'), 'utf8')).toBe(
        `![The hall](./${name})\n`,
      );
    }
    expect(new Set(digests).size).toBe(2);
  });
});
