import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** The rooms in which all that clients, guests and buyers read is put on page, paper and mail. */
const ROOMS = [
  'src/client/*.ts',
  'src/commands/text/*.ts',
  'src/components/*.{ts,astro}',
  'src/components/{client,kitchen,paper,proposal}/**/*.{ts,astro}',
  'src/engine/quote/*.ts',
  'src/exports/words/{billed-why,class-words,counted-text,line-label,line-words,open-payment-label,payment-label}.ts',
  'src/layouts/*.{ts,astro}',
  'src/mail/*.ts',
  'src/offers/{problem-words,text-refusal}.ts',
  'src/offers/answers/{accept,client-answer,read-answer,read-count-change,read-guest-list,refusal}.ts',
  'src/offers/guest-list/{differences,rows,tables}.ts',
  'src/offers/event/dish-difference.ts',
  'src/offers/issue/{notices,proposal-terms}.ts',
  'src/pages/**/*.astro',
  'src/serve/{judge-later-answer,new-server,own-name,plain-answers,receive}.ts',
  'src/views/*.ts',
  'src/views/{brand,client,kitchen}/**/*.ts',
];

/** English that stays in the code of these rooms, and why. */
const STAYS: readonly (readonly [where: RegExp, text: RegExp, because: string])[] = [
  [
    /engine\/quote\/(add-on-price|counts|guest-rate|tiers|from-food-cost|ratio)\.ts/,
    /./,
    'findings of `check`',
  ],
  [/engine\/quote\/counted-words\.ts/, /./, 'findings of `check`'],
  [/mail\/(built-page|to-be-sent|write-draft)\.ts/, /./, 'refusals of a command, for the caterer'],
  [/views\/client\/site\.ts/, /^User-agent: /, 'a file for robots'],
  [
    /components\/kitchen\/(day\/DayPicture\.astro|load-groups)|views\/kitchen\/day\/(containers|paper|pictures)-of/,
    /^(in the kitchen|at the place|service ware)$/,
    'kinds of the plan’s data',
  ],
  [/views\/kitchen\/hours-short-of\.ts/, /^… hours$/, 'what is to be written in a file'],
  [/layouts\//, /^noindex, nofollow$/, 'what robots are asked'],
  [/views\/client\/proposal-choice-linked-data\.ts/, /^[A-Z][A-Za-z]+$/, 'types of schema.org'],
  [/client\/kept-texts\.ts|client\/page-script\.ts|client\/steppers\.ts/, /^\w+( \w+)?$/, 'names of keys'],
  [/views\/brand\/(stylesheet|icon)\.ts/, /^[<:-]/, 'CSS and SVG'],
  [/offers\/answers\//, /^count change$/, 'a kind of record'],
  [/offers\/guest-list\/rows\.ts/, /^\w+ \w+$/, 'headers of columns, which are read'],
  [/serve\/plain-answers\.ts/, /charset=/, 'types of content'],
  [/serve\/new-server\.ts/, /^GET, HEAD$|^[A-Z][\w-]+: /, 'headers of HTTP'],
  [/client\/ticks\.ts/, /^salver tick$/, 'the names under which ticks are kept'],
  [/offers\/event\/dish-difference\.ts/, /no longer suits$/, 'what `substitute` tells the caterer'],
];

/** Attributes and calls whose texts are for programs. */
const FOR_PROGRAMS = new Set(
  'class class:list id for d sizes style rel type aria-labelledby aria-describedby className'.split(' '),
);
const SELECTS = /^(?:querySelector(?:All)?|closest|matches|elementIn)$/;

/** The words that data has for its own kinds, which are matched and never shown: every text that is a type. */
const DATA = new Set(
  globSync('src/**/*.ts', { cwd: root }).flatMap((file) => {
    const found: string[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isLiteralTypeNode(node) && ts.isStringLiteral(node.literal)) found.push(node.literal.text);
      if (ts.isAsExpression(node) && ts.isArrayLiteralExpression(node.expression))
        for (const each of node.expression.elements) if (ts.isStringLiteral(each)) found.push(each.text);
      ts.forEachChild(node, visit);
    };
    visit(sourceOf(file));
    return found;
  }),
);

/** A file's code; an Astro file’s frontmatter and its template, which is read as JSX. */
function sourceOf(file: string): ts.SourceFile {
  const text = readFileSync(join(root, file), 'utf8');
  if (!file.endsWith('.astro')) return ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const [, code = '', markup = text] = /^---\n([\s\S]*?)\n---\n?([\s\S]*)$/.exec(text) ?? [];
  const template = markup
    .replace(/<(style|script)\b[\s\S]*?<\/\1>/g, '')
    .replace(/<!--[\s\S]*?-->|<!doctype[^>]*>/gi, '');
  return ts.createSourceFile(
    `${file}.tsx`,
    `${code}\nconst template = <>${template}</>;`,
    ts.ScriptTarget.Latest,
    true,
    ts.ScriptKind.TSX,
  );
}

function isForPrograms(node: ts.Node): boolean {
  if (
    ts.isImportDeclaration(node) ||
    ts.isExportDeclaration(node) ||
    ts.isThrowStatement(node) ||
    ts.isTypeNode(node) ||
    ts.isRegularExpressionLiteral(node)
  )
    return true;
  if (ts.isJsxAttribute(node)) return FOR_PROGRAMS.has(node.name.getText());
  if (ts.isNewExpression(node)) return /Error$/.test(node.expression.getText());
  if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.EqualsToken)
    return ts.isPropertyAccessExpression(node.left) && FOR_PROGRAMS.has(node.left.name.text);
  return (
    ts.isCallExpression(node) &&
    SELECTS.test(
      ts.isPropertyAccessExpression(node.expression) ? node.expression.name.text : node.expression.getText(),
    )
  );
}

/** What reads like English: two words, a word that begins a sentence, or a plural made by hand. */
function readsLikeEnglish(text: string): boolean {
  return (
    /[A-Za-z’]{2,}[,.:;]? +(?:…|[A-Za-z“(]{2,})|… [a-z]{2,}/.test(text) ||
    /^[A-Z][a-z]+/.test(text.trim()) ||
    /…s\b/.test(text)
  );
}

/** The texts of a file that read like English, a template's parts in one with “…” between them. */
function englishIn(source: ts.SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isForPrograms(node)) return;
    const text =
      ts.isStringLiteralLike(node) || ts.isJsxText(node)
        ? node.text
        : ts.isTemplateExpression(node)
          ? [node.head, ...node.templateSpans.map(({ literal }) => literal)]
              .map((each) => each.text)
              .join('…')
          : undefined;
    if (text !== undefined && !DATA.has(text) && readsLikeEnglish(text)) found.push(text.trim());
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const files = ROOMS.flatMap((room) => globSync(room, { cwd: root }))
  .map((file) => file.replaceAll('\\', '/'))
  .sort();
const english = files.flatMap((file) => englishIn(sourceOf(file)).map((text) => ({ file, text })));
const stays = ({ file, text }: { file: string; text: string }) =>
  STAYS.some(([where, words]) => where.test(file) && words.test(text));

describe('what clients, guests and buyers read', () => {
  test('stands in no code: a sentence, a label or a plural is a message of the catalogues', () => {
    expect(files.length).toBeGreaterThan(150);
    expect(english.filter((each) => !stays(each)).map(({ file, text }) => `${file}: ${text}`)).toEqual([]);
  });

  test('would be found in code and in a template', () => {
    const code = (text: string, name = 'page.ts') =>
      ts.createSourceFile(
        name,
        text,
        ts.ScriptTarget.Latest,
        true,
        name.endsWith('x') ? ts.ScriptKind.TSX : undefined,
      );
    const found = (text: string, name?: string) => englishIn(code(text, name));
    expect(found("const said = 'Please write to us.';")).toEqual(['Please write to us.']);
    expect(found("const label = 'Total';")).toEqual(['Total']);
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the code that is looked through
    expect(found('const many = `${count} guest${count === 1 ? "" : "s"} at the table`;')).toHaveLength(1);
    expect(found('const part = <p class="one two">For {name}, with thanks</p>;', 'page.tsx')).toEqual([
      'For',
      ', with thanks',
    ]);
    expect(found("throw new Error('the page has no form');")).toEqual([]);
    expect(
      found("const id = 'menu-price'; import('./other-file.ts'); form.querySelector('.one .two');"),
    ).toEqual([]);
  });

  test('each exception is still needed', () => {
    const unused = STAYS.filter(
      ([where, words]) => !english.some(({ file, text }) => where.test(file) && words.test(text)),
    );
    expect(unused.map(([where]) => String(where))).toEqual([]);
  });
});
