import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** The rooms whose sentences people read and that keep to the glossary of DEVELOPERS.md. */
const ROOMS =
  'src/{book,build,check,commands,engine,exports,mail,offers,print,schema,serve,solver,views/kitchen,components/kitchen}/**/*.ts';

/** The rooms of pages and papers, whose names are their own. */
const PAGES = 'src/{client,components,exports,layouts,pages,views}/**/*.{ts,astro}';

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
const pages = globSync(PAGES, { cwd: root }).map((file) => wordsOf(file.replaceAll('\\', '/')));

describe('the words of the glossary', () => {
  test.each(SENTENCES)('no sentence says %s, but %s', (banned) => {
    const found = [...words, ...pages].flatMap(({ texts }) => texts.filter(({ text }) => banned.test(text)));
    expect(found.map(({ at, text }) => `${at} ${text}`)).toEqual([]);
  });

  test.each(NAMES)('no name says %s, but %s', (banned) => {
    const found = words.flatMap(({ names }) => names.filter(({ text }) => banned.test(text)));
    expect([...new Set(found.map(({ at, text }) => `${at} ${text}`))]).toEqual([]);
  });

  test('many files are looked at', () => {
    expect(files.length).toBeGreaterThan(500);
    expect(words.flatMap(({ texts }) => texts).length).toBeGreaterThan(1500);
    expect(pages.length).toBeGreaterThan(300);
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

  test('the README and the developers’ words keep to it too', () => {
    const prose = ['README.md', 'docs/what-commands-print.md', 'docs/clock.md', 'docs/drinks.md'].map(
      (file) => readFileSync(join(root, file), 'utf8'),
    );
    for (const [banned] of SENTENCES) for (const text of prose) expect(text).not.toMatch(banned);
  });
});
