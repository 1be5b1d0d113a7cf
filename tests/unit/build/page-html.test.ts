import { describe, expect, test } from 'vitest';
import { asPublished, withPolicy } from '../../../src/build/page-html.ts';

const published = (html: string, file: string) => asPublished(html, file).html;

describe('a page on its way out', () => {
  test('has its policy before everything but the character set', () => {
    const html = '<!doctype html><html><head><meta charset="utf-8"><link href="/a.css"></head></html>';
    expect(withPolicy(html, "default-src 'none'; img-src \"&")).toBe(
      '<!doctype html><html><head><meta charset="utf-8"><meta http-equiv="content-security-policy" content="default-src \'none\'; img-src &quot;&amp;"><link href="/a.css"></head></html>',
    );
  });

  test('a policy with signs that a replacement would read stays as it is', () => {
    expect(withPolicy('<head></head>', "'sha256-$1$$'")).toContain("'sha256-$1$$'");
  });

  test('addresses from the root begin at the page, at any depth', () => {
    expect(published('<a href="/x/">', 'public/index.html')).toBe('<a href="./x/">');
    expect(published('<img class=\'a > b\' src="/_astro/p.webp">', 'public/a/b/index.html')).toBe(
      '<img class=\'a > b\' src="../../_astro/p.webp">',
    );
  });

  test('an attribute with signs of a tag in it hides no address after it', () => {
    expect(published('<p>1 / 2</p><a title="1 < 2 / <b" href="/x/">', 'public/a/index.html')).toBe(
      '<p>1 / 2</p><a title="1 < 2 / <b" href="../x/">',
    );
  });

  test('links of the kitchen name the page itself, with what follows it', () => {
    const html =
      '<a href="/kitchen/"><a href="/kitchen/events/x/#monday"><a href="/kitchen/a.pdf"><a href="/">';
    expect(published(html, 'private/kitchen/index.html')).toBe(
      '<a href="../kitchen/index.html"><a href="../kitchen/events/x/index.html#monday"><a href="../kitchen/a.pdf"><a href="../index.html">',
    );
  });

  test('what only looks like a tag stays as written: in comments, scripts, styles and texts that are no markup', () => {
    const html =
      '<!-- <a href="/x/"> --><script>f(\'<a href="/x/">\')</script><style>a{content:\'<a href="/x/">\'}</style>' +
      '<textarea><a href="/x/"></textarea><title><a href="/x/"></title>';
    expect(published(html, 'public/a/index.html')).toBe(html);
    expect(published(`${html}<a href="/x/">`, 'public/a/index.html')).toBe(`${html}<a href="../x/">`);
  });

  test('a list of pictures begins at the page, address by address', () => {
    expect(published('<img srcset="/a.webp 1x, /b.webp 2x, //c/d 3x">', 'public/a/index.html')).toBe(
      '<img srcset="../a.webp 1x, ../b.webp 2x, //c/d 3x">',
    );
  });

  test('its scripts are plain ones, however their tags are written, and those within the page stay', () => {
    expect(
      published(
        '<script type="module" src="/a.js"></script><script src="/b.js" type=module></script><script type="module">f()</script>',
        'public/index.html',
      ),
    ).toBe(
      '<script defer src="./a.js"></script><script src="./b.js" defer></script><script type="module">f()</script>',
    );
  });

  test('words, other hosts and addresses within the page stay as written', () => {
    const html =
      '<p data-note="href=/x">say href="/x" &lt;a href="/x"></p><a href="https://a.example/x/"><a href="//b/"><a href="#c">';
    expect(published(html, 'public/a/index.html')).toBe(html);
  });
});
