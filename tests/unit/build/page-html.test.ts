import { describe, expect, test } from 'vitest';
import { withPolicy, withRelativeAddresses } from '../../../src/build/page-html.ts';

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
    expect(withRelativeAddresses('<a href="/x/">', 'public/index.html')).toBe('<a href="./x/">');
    expect(withRelativeAddresses('<img class=\'a > b\' src="/_astro/p.webp">', 'public/a/b/index.html')).toBe(
      '<img class=\'a > b\' src="../../_astro/p.webp">',
    );
  });

  test('an attribute with signs of a tag in it hides no address after it', () => {
    expect(
      withRelativeAddresses('<p>1 / 2</p><a title="1 < 2 / <b" href="/x/">', 'public/a/index.html'),
    ).toBe('<p>1 / 2</p><a title="1 < 2 / <b" href="../x/">');
  });

  test('links of the kitchen name the page itself, with what follows it', () => {
    const html =
      '<a href="/kitchen/"><a href="/kitchen/events/x/#monday"><a href="/kitchen/a.pdf"><a href="/">';
    expect(withRelativeAddresses(html, 'private/kitchen/index.html')).toBe(
      '<a href="../kitchen/index.html"><a href="../kitchen/events/x/index.html#monday"><a href="../kitchen/a.pdf"><a href="../index.html">',
    );
  });

  test('words, other hosts and addresses within the page stay as written', () => {
    const html =
      '<p data-note="href=/x">say href="/x" &lt;a href="/x"></p><a href="https://a.example/x/"><a href="//b/"><a href="#c">';
    expect(withRelativeAddresses(html, 'public/a/index.html')).toBe(html);
  });
});
