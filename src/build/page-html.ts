import { sideOf } from './site.ts';

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
const startTag = /<[a-z][^\s<>/]*(?:\s+[^\s<>="']+(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s"'<>=]+))?)*\s*\/?>/gi;
/** Whether a tag may name an address from the root at all; most do not. */
const rooted = /["'\s,]\/(?!\/)/;
const ownPictures = /(\ssrcset\s*=\s*)(["'])([^"']*)\2/gi;
const ownAddress = /(\s(?:href|src|poster|action|data)\s*=\s*)(["'])\/(?!\/)([^"']*)\2/gi;

/**
 * Turns the page's addresses that begin at the site's root into ones that begin at the page, so that it works
 * from a folder of any host and, on the kitchen's side, opened as a file without any server.
 */
export function withRelativeAddresses(html: string, file: string): string {
  const up = '../'.repeat(file.split('/').length - 2) || './';
  const opensAsFile = sideOf(file) === 'private';
  return html.replace(startTag, (tag) => {
    if (!rooted.test(tag)) return tag;
    return tag
      .replace(ownPictures, (_, before: string, quote: string, list: string) => {
        return `${before}${quote}${list.replace(/(^|,\s*)\/(?!\/)/g, `$1${up}`)}${quote}`;
      })
      .replace(ownAddress, (_, before: string, quote: string, path: string) => {
        const target = opensAsFile ? path.replace(/(^|\/)(?=$|[?#])/, '$1index.html') : path;
        return `${before}${quote}${up}${target}${quote}`;
      });
  });
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
