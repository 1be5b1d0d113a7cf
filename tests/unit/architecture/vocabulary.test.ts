import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** All code: its sentences and names keep to the glossary of DEVELOPERS.md. */
const ROOMS = 'src/**/*.{ts,astro}';

/** What no sentence says, each with what a cook would say. */
const SENTENCES: readonly [RegExp, instead: string][] = [
  [
    /\bunsaid\b|\bnot said\b|\bnobody has said\b|\bis said\b|\bare said\b|\bif not said\b/i,
    'not stated, unknown',
  ],
  [/\bapart\b|\bparted\b/i, 'made separately, separated'],
  [/\breckon\w*/i, 'calculate'],
  [/\bmend\w*\b/i, 'fix, correct'],
  [/\bby the head\b/i, 'per guest'],
  [/\bput off\b|\bcalled off\b/i, 'postponed, canceled'],
  [/\btaken in\b|\btake it in\b/i, 'recorded'],
  [/\banew\b/i, 'again'],
  [/\bby itself\b.*\beach\b|\beach\b.*\bby itself\b/i, 'separately'],
  [/(?<!there )\bis no (?:\w+ )?(?:address|unit|diet|currency|price|pack)\b/i, 'is not a …'],
  [/\bnot done:/i, 'can’t do that:'],
  [/\bcheque\b|\bcolour\b|\binstalment/i, 'check, color, installment'],
];

/** What no name says. The names of fields in published documents and in records of version 1 stay. */
const NAMES: readonly [RegExp, instead: string][] = [
  [/reckon/i, 'calculate'],
  [/^parted|Parted/, 'split'],
  [/^topped(?!Up)|Topped/, 'written'],
  [/^taking|Taking/, 'takeRate'],
  [/^standing|Standing/, 'current, timeOut, rulingOut: one name for each meaning'],
  [/^mend|Mend/, 'fix'],
];

/** Words of records that are read for ever. */
const RECORDED: ReadonlySet<string> = new Set(['made anew']);

interface Found {
  readonly at: string;
  readonly text: string;
}

/** Every text with a blank in it, a template's parts in one with “…” between them, and every name. */
function wordsOf(file: string): { readonly texts: Found[]; readonly names: Found[] } {
  const text = readFileSync(join(root, file), 'utf8');
  // Of an Astro file its code; what stands in its template comes from the catalogues.
  const code = file.endsWith('.astro') ? (/^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '') : text;
  const source = ts.createSourceFile(`${file}.ts`, code, ts.ScriptTarget.Latest, true);
  const texts: Found[] = [];
  const names: Found[] = [];
  const visit = (node: ts.Node): void => {
    const at = `${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
    if (ts.isIdentifier(node)) names.push({ at, text: node.text });
    else if (ts.isStringLiteralLike(node)) texts.push({ at, text: node.text });
    else if (ts.isTemplateExpression(node))
      texts.push({
        at,
        text: [node.head, ...node.templateSpans.map(({ literal }) => literal)]
          .map(({ text }) => text)
          .join('…'),
      });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return { texts: texts.filter(({ text }) => text.includes(' ') && !RECORDED.has(text)), names };
}

const files = globSync(ROOMS, { cwd: root })
  .map((file) => file.replaceAll('\\', '/'))
  .sort();
const words = files.map(wordsOf);

/** What the catalogues say, without the names of what a message speaks of. */
const messages: readonly Found[] = globSync('src/words/*/*.json', { cwd: root }).flatMap((file) =>
  Object.entries(JSON.parse(readFileSync(join(root, file), 'utf8')) as Record<string, string>).map(
    ([name, text]) => ({ at: `${file} ${name}`, text: text.replace(/\{\w+(?=[,}])/g, '{') }),
  ),
);

/** What a caterer or a developer reads, but for the table that names the banned words. */
const prose: readonly Found[] = [
  'README.md',
  'DEVELOPERS.md',
  ...globSync('docs/*.md', { cwd: root }),
].flatMap((file) =>
  readFileSync(join(root, file), 'utf8')
    .replace(/\n## Glossary\n[\s\S]*?(?=\n## )/, '')
    .split('\n')
    // What stands between backticks is a name or a word of a file.
    .map((line, index) => ({ at: `${file}:${index + 1}`, text: line.replace(/`[^`]*`/g, '') })),
);

describe('the words of the glossary', () => {
  test.each(SENTENCES)('no sentence says %s, but %s', (banned) => {
    const british = (at: string) => /\/en-GB\//.test(at) && banned.test('colour');
    const found = [...words.flatMap(({ texts }) => texts), ...messages, ...prose].filter(
      ({ at, text }) => banned.test(text) && !british(at),
    );
    expect(found.map(({ at, text }) => `${at} ${text}`)).toEqual([]);
  });

  test.each(NAMES)('no name says %s, but %s', (banned) => {
    const found = words.flatMap(({ names }) => names.filter(({ text }) => banned.test(text)));
    expect([...new Set(found.map(({ at, text }) => `${at} ${text}`))]).toEqual([]);
  });

  test('many files are looked at', () => {
    expect(files.length).toBeGreaterThan(500);
    expect(words.flatMap(({ texts }) => texts).length).toBeGreaterThan(1500);
    expect(messages.length).toBeGreaterThan(1500);
    expect(prose.length).toBeGreaterThan(700);
    expect(files.filter((file) => file.endsWith('.astro')).length).toBeGreaterThan(100);
  });

  test('a banned word would be found', () => {
    const [[unsaid] = [/$^/]] = SENTENCES;
    expect('what is in it is unsaid').toMatch(unsaid);
  });

  test('no comment says what no sentence says of facts and figures', () => {
    const banned =
      /\bunsaid\b|\bnot said\b|\bnobody has said\b|\breckon|\bmend\b|\bby the head\b|\bput off\b|\banew\b/i;
    const found = globSync('src/**/*.{ts,astro,css}', { cwd: root }).flatMap((file) => {
      const text = readFileSync(join(root, file), 'utf8');
      const comments = text.match(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/ .*/gm) ?? [];
      // What stands between backticks is a name or a word of a file.
      return comments
        .filter((each) => banned.test(each.replace(/`[^`]*`/g, '')))
        .map((each) => `${file} ${each}`);
    });
    expect(found).toEqual([]);
  });
});
