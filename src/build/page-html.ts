import { edited, type HtmlAttribute, type HtmlEdit, type HtmlTag, tagsOf } from '../files/html-tags.ts';
import { sideOf } from '../views/site.ts';

/** Writes the security policy, which the app answers as a header, into the page, ahead of all it governs. */
export function withPolicy(html: string, policy: string): string {
  const content = policy.replaceAll('&', '&amp;').replaceAll('"', '&quot;');
  const tags = tagsOf(html.slice(0, html.indexOf('</head>') + 1));
  const head = tags.findIndex(({ name }) => name === 'head');
  if (head === -1) throw new Error('the page has no <head>');
  const next = tags[head + 1];
  // The character set has to stand within the first kilobyte; a policy alone can fill that.
  const isCharset = next?.name === 'meta' && next.attributes.some(({ name }) => name === 'charset');
  const at = (isCharset ? next : tags[head]!).to;
  const text = `<meta http-equiv="content-security-policy" content="${content}">`;
  return edited(html, [{ from: at, to: at, text }]);
}

/** A page as it lies in the output. */
export interface PublishedHtml {
  readonly html: string;
  /** Paths from the site's root of the brand's files that it asks for: its stylesheet, icon and mark. */
  readonly brandFiles: readonly string[];
}

/**
 * The page as it lies at `file` of the output: its scripts plain ones, and its addresses that begin at the site's root
 * made ones that begin at the page, so that it works from a folder of any host and, on the kitchen's side, opened as a
 * file without any server.
 */
export function asPublished(html: string, file: string): PublishedHtml {
  const up = '../'.repeat(file.split('/').length - 2) || './';
  const opensAsFile = sideOf(file) === 'private';
  const tags = tagsOf(html);
  const edits: HtmlEdit[] = [];
  for (const tag of tags) {
    for (const attribute of tag.attributes) {
      const edit = asPlainScript(tag, attribute) ?? fromPage(attribute, up, opensAsFile);
      if (edit) edits.push(edit);
    }
  }
  return { html: edited(html, edits), brandFiles: brandFilesOf(tags) };
}

/** A browser loads no module for a page opened as a file; the build makes each script one that runs without. */
function asPlainScript(tag: HtmlTag, { name, value, from, to }: HtmlAttribute): HtmlEdit | undefined {
  const isModule = tag.name === 'script' && name === 'type' && value === 'module';
  const isFile = isModule && tag.attributes.some((each) => each.name === 'src');
  return isFile ? { from, to, text: 'defer' } : undefined;
}

const ADDRESSES: ReadonlySet<string> = new Set(['href', 'src', 'poster', 'action', 'data']);

function fromPage(
  { name, value, valueFrom: from }: HtmlAttribute,
  up: string,
  opensAsFile: boolean,
): HtmlEdit | undefined {
  const to = from + value.length;
  if (name === 'srcset') return { from, to, text: value.replace(/(^|,\s*)\/(?!\/)/g, `$1${up}`) };
  if (!ADDRESSES.has(name) || !value.startsWith('/') || value.startsWith('//')) return undefined;
  const path = value.slice(1);
  const target = opensAsFile ? path.replace(/(^|\/)(?=$|[?#])/, '$1index.html') : path;
  return { from, to, text: up + target };
}

function brandFilesOf(tags: readonly HtmlTag[]): string[] {
  const named = tags.flatMap(({ attributes }) =>
    attributes.filter(
      ({ name, value }) => (name === 'href' || name === 'src') && /^\/(?:brand|mark)-[\w.-]+$/.test(value),
    ),
  );
  return [...new Set(named.map(({ value }) => value))].sort();
}

/**
 * Names of the compiled styles, scripts and pictures that a page asks for, all from the folder they stand in. Looked for in
 * all its text, since styles and scripts name them too; each is held against those that there are.
 */
export function assetsNamedIn(html: string): string[] {
  return [...new Set([...html.matchAll(/\/_astro\/([\w.@~-]+)/g)].map(([, name]) => name!))];
}
