import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkMark } from '../../../src/book/read/mark-form.ts';
import { asPublished } from '../../../src/build/page-html.ts';
import { iconPath } from '../../../src/views/brand/icon.ts';
import { markFiles, markPath } from '../../../src/views/brand/mark-files.ts';

const drawing = (inside: string, attributes = 'viewBox="0 0 64 32"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>${inside}</svg>`;
const told = (text: string) =>
  checkMark('brand/mark.svg', text).findings.map(
    ({ code, place, what }) => `${place.line}:${place.column} ${code} ${what}`,
  );

describe('a kitchen’s mark', () => {
  test('is a drawing of shapes and fills, in its own proportions', () => {
    const text = drawing(
      `<title>A &amp; B</title><!-- <script> in words --><defs><linearGradient id="g"><stop offset="1" stop-color='#fff'/>
      </linearGradient></defs><g style="fill:url(#g)"><path d="M0 0h9z" fill="url('#g')"/><use xlink:href="#p"/></g>`,
    );
    expect(checkMark('brand/mark.svg', text)).toEqual({
      mark: { svg: text, width: 64, height: 32 },
      findings: [],
    });
  });

  test.each([
    ['<script>alert(1)</script>', 'a mark can’t contain <script>'],
    ['<foreignObject><b/></foreignObject>', 'a mark can’t contain <foreignObject>'],
    ['<style>@import "//x"</style>', 'a mark can’t contain <style>'],
    ['<image href="https://x.example/a.png"/>', 'a mark can’t contain <image>'],
    ['<a href="#x"><path/></a>', 'a mark can’t contain <a>'],
    ['<text>Q</text>', 'a mark can’t contain <text>'],
    ['<animate attributeName="href" to="javascript:0"/>', 'a mark can’t contain <animate>'],
    ['<set attributeName="onload" to="0"/>', 'a mark can’t contain <set>'],
    ['<svg:script/>', 'a mark can’t contain <svg:script>'],
    ['<g onload="x()"/>', '“onload="x()"” would run a script'],
    ['<g ONCLICK="x()"/>', '“ONCLICK="x()"” would run a script'],
    ['<use href="other.svg#a"/>', '“href="other.svg#a"” points outside the drawing'],
    [
      '<use xlink:href="data:image/svg+xml,x"/>',
      '“xlink:href="data:image/svg+xml,x"” points outside the drawing',
    ],
    ['<g fill="url(https://x.example/#a)"/>', 'could load something'],
    ['<g style="fill:u\\72l(//x)"/>', 'could load something'],
    ['<g style="background:image-set(\'x\' 1x)"/>', 'could load something'],
    ['<g style="fill:&#117;rl(x)"/>', 'could load something'],
    ['<g xml:base="https://x.example/"/>', 'could load something'],
    ['<g xmlns="http://www.w3.org/1999/xhtml"/>', 'does not belong in a drawing'],
    ['<g xmlns:h="http://www.w3.org/1999/xhtml"><h:script/></g>', 'does not belong in a drawing'],
    ['<g ónload="x()"/>', 'does not belong in a drawing'],
    ['<scrípt/>', 'a mark can’t contain <scrípt>'],
    ['<g __proto__="url(x)"/>', 'could load something'],
  ])('%s does more than draw', (inside, what) => {
    const { mark, findings } = checkMark('brand/mark.svg', drawing(`\n${inside}`));
    expect(mark).toBeUndefined();
    expect(findings[0]).toMatchObject({
      code: 'mark-unsafe',
      place: { file: 'brand/mark.svg', line: 2, column: 1 },
    });
    expect(findings[0]?.what).toContain(what);
  });

  test.each([
    ['<!DOCTYPE svg [<!ENTITY a "b">]><svg/>', '1:1 mark-form a mark can’t contain document types'],
    [drawing('<![CDATA[<script/>]]>'), 'processing instructions or CDATA'],
    [drawing('<?xml-stylesheet href="x"?>'), 'instructions'],
    [drawing('\n<g>'), '2:4 mark-form this is not well-formed XML (Missing end tag for element g)'],
    [drawing('').replace('</svg>', ''), 'not well-formed XML (Missing end tag for element svg)'],
    [drawing('\n😀<g a="1" a="2"/>'), '2:17 mark-form this is not well-formed XML (Duplicate attribute: a)'],
    [drawing('<g a=1/>'), 'not well-formed XML (Attribute value expected)'],
    [drawing('<g a/>'), 'not well-formed XML (Attribute value expected)'],
    [drawing('<g a="1"b="2"/>'), 'not well-formed XML (Unclosed start tag for element `g`)'],
    [drawing('<g a="<"/>'), 'not well-formed XML (Unescaped `<` is not allowed in an attribute value)'],
    [drawing('<g a="&nbsp;"/>'), "not well-formed XML (Named entity isn't defined: &nbsp;)"],
    [drawing('A & B'), 'not well-formed XML (Unterminated reference (a reference must end with `;`))'],
    [drawing('&#xD800;'), 'not well-formed XML (Character reference resolves to an invalid character)'],
    [drawing('&#1;'), 'not well-formed XML (Character reference resolves to an invalid character)'],
    [drawing('<!-- &#10; --><g a="M0&#xA;0"/>'), 'a tab or line break is written as an escape'],
    [drawing('<!-- a -- b -->'), "not well-formed XML (The string `--` isn't allowed inside a comment)"],
    [drawing('9 ]]> 8'), 'not well-formed XML (Element content may not contain'],
    [drawing('<g>'.repeat(201) + '</g>'.repeat(201)), 'groups stand in groups more than 200 deep'],
    [drawing('<g>'.repeat(9000) + '</g>'.repeat(9000)), 'groups stand in groups more than 200 deep'],
    [`${drawing('')}<svg/>`, 'not well-formed XML (Extra content at the end of the document)'],
    [`${drawing('')}words`, 'not well-formed XML (Extra content at the end of the document)'],
    [`words ${drawing('')}`, 'not well-formed XML (Root element is missing or invalid)'],
    ['<html/>', 'this is not an SVG drawing'],
    [drawing('', ''), 'does not state its size'],
    [drawing('', 'viewBox="0 0 90 10"'), 'does not state its size'],
    [drawing('', 'viewBox="0 0 1e3 9"'), 'does not state its size'],
    [drawing('\u0000'), 'control-character'],
    [drawing(`<path d="${'M0 0'.repeat(17_000)}"/>`), 'the drawing has 68,'],
  ])('%s cannot be shown', (text, what) => {
    expect(checkMark('brand/mark.svg', text).mark).toBeUndefined();
    expect(told(text).join()).toContain(what);
  });

  test('whatever stands in the file, reading it ends in a mark or in findings', () => {
    const pieces = fc.constantFrom(
      '<svg ',
      '<',
      '>',
      '/>',
      '</g>',
      '&#1;',
      '&amp;',
      '"',
      "'",
      '=',
      ' a',
      '<!--',
      '-->',
      ']]>',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(pieces, fc.string({ maxLength: 3 })), { maxLength: 30 }), (parts) => {
        const { mark, findings } = checkMark('m.svg', drawing(parts.join('')));
        expect(mark === undefined).toBe(findings.length > 0);
      }),
      { numRuns: 500 },
    );
  });

  test('is served under its digest on the sides that show it, and is the icon where it is about square', () => {
    const mark = { svg: drawing('<path/>'), width: 64, height: 32 };
    const [file] = markFiles(mark, ['private']);
    expect(file).toEqual({ file: `private${markPath(mark)}`, content: mark.svg });
    expect(markPath({ svg: `${mark.svg} ` })).not.toBe(markPath(mark));
    expect(markFiles(undefined, ['public'])).toEqual([]);
    const accent = '#7a4a2b';
    expect(iconPath({ accent, mark: { path: '/m.svg', width: 64, height: 32 } })).toBe('/brand-7a4a2b.svg');
    expect(iconPath({ accent, mark: { path: '/m.svg', width: 32, height: 32 } })).toBe('/m.svg');
  });

  test('a page that stays as it was keeps the files of the brand that it names', () => {
    const html =
      '<link href="/brand-1.css"><link href="/brand-1.svg"><img src="/mark-2.svg"><a href="/brand-x/">b</a>';
    expect(asPublished(html, 'public/index.html').brandFiles).toEqual([
      '/brand-1.css',
      '/brand-1.svg',
      '/mark-2.svg',
    ]);
  });

  test('the demo’s own is one', () => {
    const file = fileURLToPath(new URL('../../../content/brand/mark.svg', import.meta.url));
    expect(checkMark('brand/mark.svg', readFileSync(file, 'utf8')).mark).toMatchObject({
      width: 96,
      height: 96,
    });
  });
});
