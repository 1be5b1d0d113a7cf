import { sideOf } from '../views/site.ts';

/** Writes the security policy, which the app answers as a header, into the page, ahead of all it governs. */
export function withPolicy(html: string, policy: string): string {
  const content = policy.replaceAll('&', '&amp;').replaceAll('"', '&quot;');
  const meta = `<meta http-equiv="content-security-policy" content="${content}">`;
  // The character set has to stand within the first kilobyte; a policy alone can fill that.
  const head = /<head[^>]*>\s*(?:<meta charset="[^"]*"\s*\/?>)?/i;
  if (!head.test(html)) throw new Error('the page has no <head>');
  return html.replace(head, (start) => start + meta);
}

/** A start tag with all its attributes; text never matches, since its `<` is always written `&lt;`. */
const startTag = /<[a-z][^\s<>/]*(?:\s+[^\s<>="']+(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s"'<>=]+))?)*\s*\/?>/iy;
/** Where an address from the root may begin; most tags have none, so it is these that are looked for. */
const rooted = /["'\s,]\/(?![/>])/g;
/** How far before its address a tag may begin. */
const LONGEST_TAG = 8192;
const ownPictures = /(\ssrcset\s*=\s*)(["'])([^"']*)\2/gi;
const ownAddress = /(\s(?:href|src|poster|action|data)\s*=\s*)(["'])\/(?!\/)([^"']*)\2/gi;

/**
 * Turns the page's addresses that begin at the site's root into ones that begin at the page, so that it works
 * from a folder of any host and, on the kitchen's side, opened as a file without any server.
 */
export function withRelativeAddresses(html: string, file: string): string {
  const up = '../'.repeat(file.split('/').length - 2) || './';
  const opensAsFile = sideOf(file) === 'private';
  let made = '';
  let done = 0;
  for (const { index } of html.matchAll(rooted)) {
    if (index < done) continue;
    const tag = tagAround(html, index, done);
    if (tag === undefined) continue;
    made += html.slice(done, tag.from) + relative(tag.text);
    done = tag.from + tag.text.length;
  }
  return made + html.slice(done);

  function relative(tag: string): string {
    return tag
      .replace(ownPictures, (_, before: string, quote: string, list: string) => {
        return `${before}${quote}${list.replace(/(^|,\s*)\/(?!\/)/g, `$1${up}`)}${quote}`;
      })
      .replace(ownAddress, (_, before: string, quote: string, path: string) => {
        const target = opensAsFile ? path.replace(/(^|\/)(?=$|[?#])/, '$1index.html') : path;
        return `${before}${quote}${up}${target}${quote}`;
      });
  }
}

/** The start tag that holds the sign at `at` and begins no earlier than `after`; undefined where the sign is text. */
function tagAround(html: string, at: number, after: number): { from: number; text: string } | undefined {
  const first = Math.max(after, at - LONGEST_TAG);
  // An attribute before it may hold a `<` of its own.
  for (let from = html.lastIndexOf('<', at); from >= first; from = html.lastIndexOf('<', from - 1)) {
    startTag.lastIndex = from;
    const text = startTag.exec(html)?.[0];
    if (text !== undefined && from + text.length > at) return { from, text };
    if (from === 0) break;
  }
  return undefined;
}

/** Names of the compiled styles, scripts and pictures that a page asks for: all from the folder they stand in. */
export function assetsNamedIn(html: string): string[] {
  return [...new Set([...html.matchAll(/\/_astro\/([\w.@~-]+)/g)].map(([, name]) => name!))];
}

/** Paths from the site's root of the brand's files that a page asks for: its stylesheet, icon and mark. */
export function brandFilesNamedIn(html: string): string[] {
  const named = html.matchAll(/\s(?:href|src)="(\/(?:brand|mark)-[\w.-]+)"/g);
  return [...new Set([...named].map(([, path]) => path!))].sort();
}
