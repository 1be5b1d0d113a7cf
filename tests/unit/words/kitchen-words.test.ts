import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { LIMIT_KINDS } from '../../../src/engine/safety/limit.ts';
import { EDITIONS } from '../../../src/engine/safety/limits.ts';
import { CHECK_STAGES } from '../../../src/engine/safety/safety-check.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/**
 * What a crew reads is made of these. The forms of published documents describe fields for programmers, and one file lists
 * their names; the days of a plan still say their sentences themselves.
 */
const ROOMS = [
  'src/engine/{odds,plan,safety}/**/*.ts',
  'src/engine/food/{variant,swap-item,recipe-called}.ts',
  'src/exports/**/*.ts',
  'src/{views,components}/kitchen/**/*.ts',
];
const LEFT_OUT =
  /^src\/(?:exports\/form\/|engine\/plan\/(?:days|clock)\/|exports\/words\/clock-w(?:hy|ords)|exports\/words\/figures-as-read)/;

/** Words of two parts that data has: a kind of document, a state, a way of serving, a limit, a part of a day. */
const DATA: ReadonlySet<string> = new Set([
  ...['prep plan', 'owner money', 'buffet cards', 'place cards', 'service ware'],
  ...['every course', 'some courses', 'family style', 'date mark', 'set up', 'no gluten'],
  ...[
    'in the kitchen',
    'at the place',
    'cooked there',
    'served raw',
    'as purchased',
    'tax within',
    'on request',
  ],
  // A kind of document, and facts of a venue by the names that files give them.
  ...['site sheet', 'cold space', 'way in'],
  ...['TREAT AS RAW', 'NOT ALL KNOWN', '//Salver//Prep plan//EN'],
  // Names that records and documents know a payment and an allergen by.
  ...['to be paid back', 'sulphur dioxide and sulphites'],
  ...[
    'meals',
    'minimum guests',
    'smaller party',
    'flat price',
    'minimum spend',
    'service charge',
    'tax included',
  ],
  // What the food code's limits, stages and foods are called in data; the names of its editions.
  ...Object.keys(LIMIT_KINDS),
  ...CHECK_STAGES,
  ...EDITIONS.map(({ edition }) => edition),
  ...['cook to', 'in all', 'first stage', 'ready to eat', 'whole roast', 'to order', 'not stated'],
  ...['true true', 'true false', 'false true', 'false false'],
]);

interface Found {
  readonly at: string;
  readonly text: string;
}

/** Every text of two words or more that is neither a programmer's error nor why a command refuses. */
function sentencesOf(file: string): Found[] {
  const text = readFileSync(join(root, file), 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Found[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isThrowStatement(node)) return;
    if (ts.isCallExpression(node) && node.expression.getText() === 'notParsed') return;
    const parts = ts.isStringLiteralLike(node)
      ? [node.text]
      : ts.isTemplateExpression(node)
        ? [node.head, ...node.templateSpans.map(({ literal }) => literal)].map((part) => part.text)
        : [];
    const at = `${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
    for (const part of parts)
      if (/\p{L}{2,} \p{L}{2,}/u.test(part) && !DATA.has(part)) found.push({ at, text: part });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe('what a crew reads', () => {
  const files = ROOMS.flatMap((room) => globSync(room, { cwd: root }))
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => !LEFT_OUT.test(file));

  test('stands in the catalogues: no sentence is written in the code of a plan, its papers and its pages', () => {
    expect(files.length).toBeGreaterThan(120);
    expect(files.flatMap(sentencesOf).map(({ at, text }) => `${at} ${text}`)).toEqual([]);
  });

  test('a sentence in code would be found', () => {
    expect(sentencesOf('src/engine/parsed.ts')).toEqual([]);
    expect(sentencesOf('src/check/coverage.ts').length).toBeGreaterThan(1);
  });
});
