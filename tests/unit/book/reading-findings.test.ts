import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readFrontMatter } from '../../../src/book/bodies/front-matter.ts';
import { checkBody } from '../../../src/book/bodies/source.ts';
import { readCsv } from '../../../src/book/files/csv-source.ts';
import { listContent } from '../../../src/book/files/list-content.ts';
import { readText } from '../../../src/book/files/read-text.ts';
import { readYaml } from '../../../src/book/files/yaml-source.ts';
import type { FindingCode } from '../../../src/book/findings/catalogue.ts';
import type { Finding } from '../../../src/book/findings/finding.ts';
import { printFindings } from '../../../src/book/findings/print-findings.ts';

let outside: string;
let content: string;
beforeAll(() => {
  outside = mkdtempSync(join(tmpdir(), 'salver-'));
  content = join(outside, 'content');
  mkdirSync(join(content, 'recipes'), { recursive: true });
});
afterAll(() => rmSync(outside, { recursive: true }));

/** The findings of a content folder that holds one more file, and of that file's text. */
function withFile(file: string, bytes: string | Uint8Array): Finding[] {
  const path = join(content, file);
  writeFileSync(path, bytes);
  try {
    const { files, findings } = listContent(content);
    return [...findings, ...files.flatMap((each) => readText(each.path, each.file).findings)];
  } finally {
    rmSync(path);
  }
}

function withLink(file: string, to: string): Finding[] {
  symlinkSync(to, join(content, file));
  try {
    return listContent(content).findings;
  } finally {
    rmSync(join(content, file));
  }
}

const yaml = (text: string): Finding[] => [...readYaml('kitchen.yaml', text).findings];
const csv = (text: string): Finding[] => readCsv('prices/quay.csv', text).findings;
const top = (text: string): Finding[] => [...readFrontMatter('recipes/stew.mdx', text).findings];
const mdx = (text: string): Finding[] =>
  checkBody('recipes/stew.mdx', { text, line: 9 }, 'mdx', ['WatchOut', 'CooksNote']).findings;
const letter = (text: string): Finding[] =>
  checkBody('proposals/supper.md', { text, line: 9 }, 'markdown', []).findings;

type ReadingCode =
  | Extract<FindingCode, `${'yaml' | 'csv' | 'body' | 'front-matter'}-${string}`>
  | 'no-content-folder'
  | 'unreadable-file'
  | 'outside-link'
  | 'file-too-large'
  | 'not-utf-8'
  | 'control-character'
  | 'file-name'
  | 'stray-file'
  | 'duplicate-key'
  | 'key-form'
  | 'no-value';

/** What makes each finding of the reader appear, and what the author is then told. */
const GOLDEN: Record<ReadingCode, [findings: () => Finding[], printed: string]> = {
  'no-content-folder': [
    () => listContent(join(outside, 'nowhere')).findings,
    'content/:1:1 error no-content-folder there is no such folder — give the folder that has kitchen.yaml in it',
  ],
  'unreadable-file': [
    () => withLink('kitchen.yaml', join(content, 'gone.yaml')),
    'content/kitchen.yaml:1:1 error unreadable-file it can’t be read (ENOENT) — check that it exists, that any link to it works, and that you have permission to read it',
  ],
  'outside-link': [
    () => withLink('kitchen.yaml', outside),
    'content/kitchen.yaml:1:1 error outside-link the link leads out of the content folder — put the file itself here',
  ],
  'file-too-large': [
    () => withFile('kitchen.yaml', '#'.repeat(4 * 1024 * 1024 + 1)),
    'content/kitchen.yaml:1:1 error file-too-large the file has 4,194,305 bytes — split it; 4,194,304 is the most',
  ],
  'not-utf-8': [
    () =>
      withFile('kitchen.yaml', Uint8Array.from([0x61, 0x3a, 0x20, 0x62, 0x0a, 0xc3, 0xa9, 0x3a, 0x20, 0xe9])),
    'content/kitchen.yaml:2:4 error not-utf-8 from here on the file is not text in UTF-8 — save it as UTF-8 (in a spreadsheet: CSV UTF-8)',
  ],
  'control-character': [
    () => yaml('name: Quay\ntown: Maren\u202e Falls'),
    'content/kitchen.yaml:2:12 error control-character the text has the invisible control character U+202E — delete it, or retype the text around it',
  ],
  'file-name': [
    () => withFile('recipes/Herb_Dressing.mdx', ''),
    'content/recipes/Herb_Dressing.mdx:1:1 error file-name “Herb_Dressing” can’t be an id — use lower-case words a–z and 0–9 joined by hyphens, at most 60 characters',
  ],
  'stray-file': [
    () => withFile('recipes/stew.md', ''),
    'content/recipes/stew.md:1:1 note stray-file this file is not used — name it recipes/<name>.mdx, or move it',
  ],
  'yaml-syntax': [
    () => yaml('name: Quay: the kitchen'),
    'content/kitchen.yaml:1:7 error yaml-syntax there is a second key inside a value — put text with a colon in quotation marks, or indent this key like the others',
  ],
  'yaml-alias': [
    () => yaml('name: *quay'),
    'content/kitchen.yaml:1:7 error yaml-alias “*quay” refers to another value — write the value out where it is used; text that starts this way needs quotation marks',
  ],
  'yaml-tag': [
    () => yaml('name: !quay x'),
    'content/kitchen.yaml:1:13 error yaml-tag the tag “!quay” comes before a value — write the value out where it is used; text that starts this way needs quotation marks',
  ],
  'yaml-documents': [
    () => yaml('name: Quay\n---\nname: Rope'),
    'content/kitchen.yaml:2:1 error yaml-documents a second document starts here — delete the line of hyphens or dots, or split the file',
  ],
  'yaml-too-deep': [
    () => yaml(`name: ${'['.repeat(13)}`),
    'content/kitchen.yaml:1:19 error yaml-too-deep lists and mappings are nested more than 12 deep — use fewer levels; text with brackets needs quotation marks',
  ],
  'yaml-too-many': [
    () => yaml(Array.from({ length: 90_000 }, (_, index) => `k${index}: 1`).join('\n')),
    'content/kitchen.yaml:42858:1 error yaml-too-many the file has more than about 40,000 keys and values — split it into several files',
  ],
  'duplicate-key': [
    () => yaml('places:\n  quay: { name: Quay }\n  rope: { name: Rope }\n  quay: { name: Old quay }'),
    'content/kitchen.yaml:4:3 error duplicate-key “quay” is there twice, first on line 2 — keep one of them',
  ],
  'key-form': [
    () => yaml('[a, b]: c'),
    'content/kitchen.yaml:1:1 error key-form a key is not a plain text — write a word or text before the colon',
  ],
  'no-value': [
    () => yaml('ingredients: { potatoes, peeled: 18 lb }'),
    'content/kitchen.yaml:1:16 error no-value “potatoes” has no value: inside braces a comma ends the value before it — write each line on its own, without braces: potatoes, peeled: 18 lb',
  ],
  'front-matter-missing': [
    () => top('name: Stew'),
    'content/recipes/stew.mdx:1:1 error front-matter-missing the file does not start with its data — write --- on the first line, the data below it, and --- again',
  ],
  'front-matter-unclosed': [
    () => top('---\nname: Stew\n'),
    'content/recipes/stew.mdx:1:1 error front-matter-unclosed the data that starts here has no end — write --- on its own line below the data',
  ],
  'csv-header': [
    () => csv('\n,,\npotato,50 lb,31.50'),
    'content/prices/quay.csv:2:1 error csv-header the first line has no column names — put the column names there',
  ],
  'csv-duplicate-header': [
    () => csv('ingredient,pack,Pack\n'),
    'content/prices/quay.csv:1:3 error csv-duplicate-header there are two columns called “Pack” — rename or delete one of them',
  ],
  'csv-quotes': [
    () => csv('ingredient,pack,price\npotato,"50 lb,31.50\n'),
    'content/prices/quay.csv:2:1 error csv-quotes a quotation mark that opens in this row is not closed on its line — close it at the end of its field, or delete it',
  ],
  'csv-fields': [
    () => csv('ingredient,pack,price\npotato,6 x 1 can, drained,31.50\n'),
    'content/prices/quay.csv:2:4 error csv-fields the row has 4 fields, but there are 3 columns — put a field with a comma in quotation marks, or name the column',
  ],
  'csv-too-many-rows': [
    () => csv(`ingredient\n${'potato\n'.repeat(20_001)}`),
    'content/prices/quay.csv:20002:1 error csv-too-many-rows the file has over 20,000 rows — delete old rows; rows from here on are not read',
  ],
  'body-too-large': [
    () => letter('a'.repeat(256 * 1024 + 1)),
    'content/proposals/supper.md:9:1 error body-too-large the text has 262,145 characters — shorten it; 262,144 is the most',
  ],
  'body-too-deep': [
    () => letter(`Dear\n\n${'> '.repeat(25)}client`),
    'content/proposals/supper.md:11:1 error body-too-deep a line has more than 24 quotation or list marks — use fewer levels',
  ],
  'body-html': [
    () => letter('Dear <b>client</b>'),
    'content/proposals/supper.md:9:6 error body-html a text can’t contain HTML: “<b>” — use Markdown such as **bold** or [text](address), or write \\< for the character itself',
  ],
  'body-expression': [
    () => mdx('Stir `{gently}`.\n\nServes {guests + 1}.'),
    'content/recipes/stew.mdx:11:8 error body-expression there is an expression in braces: “{guests + 1}” — delete the braces, or write \\{ for the character itself',
  ],
  'body-import': [
    () => mdx('Stir.\n\nimport Photo from "photo"'),
    'content/recipes/stew.mdx:11:1 error body-import a paragraph starts with import or export: “import Photo from "photo"” — delete it, or start the paragraph with another word',
  ],
  'body-component': [
    () => mdx('<Photo>It</Photo>'),
    'content/recipes/stew.mdx:9:1 error body-component there is no component called “<Photo>” — use one of these: <WatchOut>, <CooksNote>',
  ],
  'body-component-renamed': [
    () => mdx('Hot: <Caution>wear gloves</Caution>'),
    'content/recipes/stew.mdx:9:6 note body-component-renamed <Caution> is now called <WatchOut> — rename it in the text; the old name still works',
  ],
  'body-attribute': [
    () => mdx('Hot: <CooksNote onclick="x">it</CooksNote>'),
    'content/recipes/stew.mdx:9:6 error body-attribute “onclick” on <CooksNote> is not a plain attribute — write name="text", or delete it',
  ],
  'body-link': [
    () => letter('See [the hall](/hall)'),
    'content/proposals/supper.md:9:5 error body-link a link leads to another kind of address: “/hall” — write https://…, mailto:name@host, tel:+1-555-0142, or #heading for a heading on this page',
  ],
  'body-picture': [
    () => letter('![hall](https://hall.example/hall.jpg)'),
    'content/proposals/supper.md:9:1 error body-picture a picture is not in the content folder: “https://hall.example/hall.jpg” — save it there and write its path from this file, as in ../pictures/hall.jpg',
  ],
  'body-syntax': [
    () => mdx('Hot: <CooksNote>it\n\nand more'),
    'content/recipes/stew.mdx:9:6 error body-syntax <CooksNote> is not closed — close it in the same paragraph, or write each tag on its own line',
  ],
  'body-form': [
    () => letter('See [the hall][1]\n\n[1]: https://hall.example'),
    'content/proposals/supper.md:11:1 error body-form a link’s address is written somewhere else: “[1]” — write [text](address) where the link is',
  ],
};

describe('each finding of the reader', () => {
  test.each(Object.entries(GOLDEN))('%s', (code, [find, printed]) => {
    const findings = find();
    expect(findings.map((each) => each.code)).toEqual([code]);
    const ending = findings[0]?.severity === 'note' ? '1 note.' : '1 error.';
    expect(printFindings(findings, 'content')).toBe(`${printed}\n${ending}\n`);
  });
});
