import { describe, expect, test } from 'vitest';
import { letterHtml } from '../../../src/book/bodies/render-letter.ts';

describe('the HTML of a letter', () => {
  test('Markdown is rendered as it is written, with plain punctuation', () => {
    expect(letterHtml('# Dear all\r\n\r\nWe "hope" -- *truly*...\r\n')).toBe(
      '<h1>Dear all</h1>\n<p>We "hope" -- <em>truly</em>...</p>\n',
    );
  });

  test('links out of the page say nothing of where they come from', () => {
    expect(letterHtml('[a](https://quay.example) [b](#here)')).toBe(
      '<p><a href="https://quay.example" rel="noopener noreferrer nofollow">a</a> <a href="#here">b</a></p>\n',
    );
  });

  test('a picture is shown where it is served, else told', () => {
    expect(letterHtml('![the hall](hall.jpg)', (path) => `/p/${path}`)).toBe(
      '<p><img src="/p/hall.jpg" alt="the hall"></p>\n',
    );
    expect(letterHtml('![the hall](hall.jpg)')).toBe('<p>the hall</p>\n');
  });

  test.each([
    ['<script>alert(1)</script>', /<script/i],
    ['a <img src=x onerror=alert(1)>', /<img/i],
    ['<!-- --!><b>x', /<b>|<!--/],
    ['[a](javascript:alert(1))', /<a|javascript/],
    ['[a][r]\n\n[r]: java&#115;cript:x', /<a|javascript/],
    ['<javascript:x>', /<a/],
    ['![a](https://x.example/a.png)', /<img|x\.example/],
    ['![a](https://x.example/a.png "t")', /<img|x\.example/],
  ])('%s does nothing even where nobody checked it', (markdown, harm) => {
    expect(letterHtml(markdown, (path) => path)).not.toMatch(harm);
  });
});
