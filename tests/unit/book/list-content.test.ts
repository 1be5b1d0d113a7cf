import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { listContent } from '../../../src/book/files/list-content.ts';
import { readText } from '../../../src/book/files/read-text.ts';

let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'salver-'));
});
afterEach(() => rmSync(dir, { recursive: true }));

function put(file: string, text: string | Uint8Array = ''): string {
  const path = join(dir, file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  return path;
}

const findings = () => listContent(dir).findings.map(({ place, code }) => `${place.file} ${code}`);

test('files are listed by collection and name, pictures apart, hidden files not at all', () => {
  for (const file of [
    'recipes/b.mdx',
    'recipes/a.mdx',
    'kitchen.yaml',
    'prices/quay.csv',
    'offers/supper-r1.json',
  ])
    put(file);
  for (const file of ['events/supper/002-confirmed.json', 'events/supper/001-accepted.json', 'stock.csv'])
    put(file);
  for (const file of ['.DS_Store', 'recipes/.a.mdx.swp', 'pictures/hall.jpg', 'recipes/stew.PNG']) put(file);
  const { files, pictures } = listContent(dir);
  expect(files.map(({ collection, id, file }) => `${collection} ${id} ${file}`)).toEqual([
    'kitchen kitchen kitchen.yaml',
    'stock stock stock.csv',
    'prices quay prices/quay.csv',
    'recipes a recipes/a.mdx',
    'recipes b recipes/b.mdx',
    'offers supper-r1 offers/supper-r1.json',
    'events supper events/supper/001-accepted.json',
    'events supper events/supper/002-confirmed.json',
  ]);
  expect([...pictures].sort()).toEqual(['pictures/hall.jpg', 'recipes/stew.PNG']);
  expect(findings()).toEqual([]);
});

test('what belongs nowhere is noted, and a name that is no id is an error', () => {
  for (const file of [
    'readme.txt',
    'recipes/deep/a.mdx',
    'prices/quay.xlsx',
    'menus/a.md',
    'events/001.json',
  ])
    put(file);
  for (const file of ['recipes/a b.mdx', `recipes/${'a'.repeat(61)}.mdx`, 'events/__proto__/001-x.json'])
    put(file);
  expect(findings()).toEqual([
    'events/001.json stray-file',
    'events/__proto__/001-x.json file-name',
    'menus/a.md stray-file',
    'prices/quay.xlsx stray-file',
    'readme.txt stray-file',
    'recipes/a b.mdx file-name',
    `recipes/${'a'.repeat(61)}.mdx file-name`,
    'recipes/deep/a.mdx stray-file',
  ]);
});

test('links are followed within the folder, and never out of it or in circles', () => {
  put('recipes/a.mdx', 'a');
  symlinkSync('a.mdx', join(dir, 'recipes/b.mdx'));
  symlinkSync(tmpdir(), join(dir, 'prices'));
  symlinkSync('/etc/hosts', join(dir, 'recipes/c.mdx'));
  symlinkSync('d.mdx', join(dir, 'recipes/d.mdx'));
  expect(listContent(dir).files.map(({ file }) => file)).toEqual(['recipes/a.mdx', 'recipes/b.mdx']);
  expect(findings()).toEqual([
    'prices outside-link',
    'recipes/c.mdx outside-link',
    'recipes/d.mdx unreadable-file',
  ]);
});

test.skipIf(process.platform === 'win32')('a pipe is refused, not waited for', () => {
  execFileSync('mkfifo', [join(dir, 'kitchen.yaml')]);
  expect(findings()).toEqual(['kitchen.yaml unreadable-file']);
  expect(readText(join(dir, 'kitchen.yaml'), 'kitchen.yaml').findings[0]?.code).toBe('unreadable-file');
});

test('text comes without byte order mark and with plain line feeds', () => {
  expect(readText(put('a', '\uFEFFa\r\nb\rc\n'), 'a').text).toBe('a\nb\nc\n');
});

test('a file in another encoding is refused where it stops being UTF-8', () => {
  const latin1 = Uint8Array.from([...new TextEncoder().encode('name: Café\nt: Z'), 0xfc, 0x72]);
  const { text, findings: found } = readText(put('a', latin1), 'a');
  expect(text).toBeUndefined();
  expect(found[0]).toMatchObject({ code: 'not-utf-8', place: { line: 2, column: 5 } });
});

test('a whole disk that holds no kitchen is told as one, and not walked through', () => {
  expect(listContent('/')).toMatchObject({
    files: [],
    findings: [
      { code: 'no-content-folder', what: '/ is a whole disk or a home folder and has no kitchen.yaml' },
    ],
  });
});
