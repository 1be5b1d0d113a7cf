import { describe, expect, test } from 'vitest';
import { pictureFile } from '../../../src/book/bodies/links.ts';
import { checkBody } from '../../../src/book/bodies/source.ts';

const check = (text: string, kind: 'markdown' | 'mdx') =>
  checkBody('x.md', { text, line: 1 }, kind, ['WatchOut', 'CooksNote']);
const told = (text: string, kind: 'markdown' | 'mdx') =>
  check(text, kind).findings.map(({ place, code }) => `${place.line}:${place.column} ${code}`);

describe('what may stand in a text', () => {
  test.each(['markdown', 'mdx'] as const)('plain %s with links and pictures of its own', (kind) => {
    const text = [
      '# To start',
      '*Warm* **bread**, ~~butter~~ 5 < 6 & `<b>{x}</b>`\\',
      '[site](https://quay.example/a?b=c#d)',
      '[mail](mailto:a@quay.example) [call](tel:+1-555-0142) [see](#to-start) www.quay.example',
      '- [ ] one\n  1. two',
      '> said\n\n---\n\n| a | b |\n|---|--:|\n| 1 | 2 |',
      '![hall](../pictures/hall.jpg)\n\n```\nimport { x } from "y"\n<script>{1}</script>\n```',
    ].join('\n\n');
    const { findings, links, pictures } = check(text, kind);
    expect(findings).toEqual([]);
    expect(links.map(({ to }) => to)).toEqual([
      'https://quay.example/a?b=c#d',
      'mailto:a@quay.example',
      'tel:+1-555-0142',
      '#to-start',
      'http://www.quay.example',
    ]);
    expect(pictures.map(({ to }) => to)).toEqual(['../pictures/hall.jpg']);
  });

  test('listed components with plain attributes, and braces that are written as signs', () => {
    expect(
      told(
        '<CooksNote title="Warm">\n\n- *a*\n\n</CooksNote>\n\nHot <WatchOut>now</WatchOut> \\{not code\\}',
        'mdx',
      ),
    ).toEqual([]);
  });

  test('components by their earlier names, with a note that tells the new one', () => {
    const text = '<Tip>Warm the plates.</Tip>\n\n<Caution title="Hot">\n\nGloves.\n\n</Caution>';
    expect(told(text, 'mdx')).toEqual(['1:1 body-component-renamed', '3:1 body-component-renamed']);
    expect(told('<Caution onclick="x">no</Caution>', 'mdx')).toEqual(['1:1 body-attribute']);
  });

  test('a picture means a file beside its text, never one outside of the folder', () => {
    expect(pictureFile('recipes/stew.mdx', '../pictures/hall.jpg')).toBe('pictures/hall.jpg');
    expect(pictureFile('recipes/stew.mdx', '../../hall.jpg')).toBeUndefined();
  });
});

describe('links in disguise', () => {
  test.each([
    '[a](javascript:alert%281%29)',
    '[a](JaVaScRiPt:x)',
    '[a](java&#115;cript:x)',
    '[a](&#x6A;avascript&colon;x)',
    '[a](javascript&Tab;:x)',
    '[a](<java&NewLine;script:x>)',
    '[a](\\javascript:x)',
    '<javascript:x>',
    '[a](data:text/html,x)',
    '[a](vbscript:x)',
    '[a](blob:https://x.example/1)',
    '[a](//x.example)',
    '[a](https:x.example)',
    '[a](https:/\\x.example)',
    '[a](https://)',
    '[a](hall.html)',
    '[a](/hall)',
    '[a](?x)',
    '[a](#)',
    '[a]()',
    '[a](mailto:)',
    '[a](tel:javascript)',
  ])('%s is refused', (text) => {
    expect(told(`b\n\n${text}`, 'markdown')).toEqual(['3:1 body-link']);
  });

  test.each([
    'data:image/png;base64,x',
    '//x.example/a.png',
    '/a.png',
    '..\\a.png',
    'a.png?x',
    'file:a.png',
    'a.svg',
  ])('the picture %s is refused', (address) =>
    expect(told(`![a](<${address}>)`, 'markdown')).toEqual(['1:1 body-picture']),
  );

  test('a definition is told even where nothing uses it', () => {
    expect(told('[a]: javascript:x', 'markdown')).toEqual(['1:1 body-form']);
  });
});

describe('program in a text', () => {
  test.each([
    ['<b>x</b>', '1:1 body-html'],
    ['<!-- x -->', '1:1 body-html'],
    ['<?php x ?>', '1:1 body-html'],
    ['</p>', '1:1 body-html'],
    ['a <img src=x onerror=x>', '1:3 body-html'],
  ])('HTML in a letter: %s', (text, expected) => {
    expect(told(text, 'markdown')).toEqual([expected]);
  });

  test.each([
    ['a {x}', '1:3 body-expression'],
    ['a \\\\{x}', '1:5 body-expression'],
    ['{/* note */}', '1:1 body-expression'],
    ['a {x', '1:3 body-expression'],
    ['export const x = 1', '1:1 body-import'],
    ['<CooksNote>\n\nimport x from "y"\n\n</CooksNote>', '3:1 body-import'],
    ['a <b>x</b>', '1:3 body-html'],
    ['<script>x</script>', '1:1 body-html'],
    ['<!-- x -->', '1:1 body-html'],
    ['<>x</>', '1:1 body-component'],
    ['<CooksNote.Deep />', '1:1 body-component'],
    ['<Photo />', '1:1 body-component'],
    ['<CooksNote a={x} />', '1:1 body-attribute'],
    ['<CooksNote {...x} />', '1:1 body-attribute'],
    ['<CooksNote client:load />', '1:1 body-attribute'],
    ['<CooksNote set:html="x" />', '1:1 body-attribute'],
    ['a <CooksNote', '1:3 body-syntax'],
    ['\n---\nname: x\n---', '2:1 body-form'],
    ['<https://quay.example>', '1:1 body-syntax'],
  ])('program in a recipe: %s', (text, expected) => {
    expect(told(text, 'mdx')).toEqual([expected]);
  });

  test('a line in the middle of a paragraph may begin with import', () => {
    expect(told('We do not\nimport what grows here', 'mdx')).toEqual([]);
  });

  test('all slips of a text are told in one run', () => {
    expect(told('a {x}\n\n<Photo />\n\n[b](c)\n\n*d* <u>e</u>', 'mdx').sort()).toEqual([
      '1:3 body-expression',
      '3:1 body-component',
      '5:1 body-link',
      '7:5 body-html',
    ]);
  });
});

describe('hostile texts', () => {
  // Each of these holds up the parser of components for longer than anybody waits, or ends the whole program.
  test.each([
    ['expressions that could be many things', 'mdx', '{b <b><T>[\n'.repeat(40), 'body-syntax'],
    [
      'modules that could be many things',
      'mdx',
      `export const a = ${'b <b><T>[\n'.repeat(40)}`,
      'body-syntax',
    ],
    ['braces that are never closed', 'mdx', '{'.repeat(200_000), 'body-form'],
    ['tags that are never closed', 'mdx', '<a>'.repeat(80_000), 'body-form'],
    ['quotations in quotations', 'markdown', '>'.repeat(200_000), 'body-too-deep'],
    ['lists in lists', 'markdown', '1. '.repeat(80_000), 'body-too-deep'],
    ['escapes without end', 'markdown', '&#0;'.repeat(60_000), 'body-form'],
    ['emphasis in emphasis', 'markdown', `${'*'.repeat(50_000)}a${'*'.repeat(50_000)}`, 'body-too-deep'],
  ] as const)('%s are refused', (_, kind, text, code) => {
    const codes = new Set(check(text, kind).findings.map((each) => each.code));
    expect(codes).toContain(code);
  });

  test('a rule drawn with many stars is a rule', () => {
    expect(told('* '.repeat(60), 'markdown')).toEqual([]);
  });
});
