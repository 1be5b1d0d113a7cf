import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse, type Token } from '@messageformat/parser';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { several, statement } from '../../../src/engine/text/statement.ts';
import { statementsIn } from '../../../src/exports/words/statement-text.ts';
import type { WordKey } from '../../../src/words/catalogues.ts';
import { messageIn } from '../../../src/words/words-in.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));

describe('a statement becomes words where it is shown', () => {
  test('with the figures, names and statements that it speaks of', () => {
    const guests = statement('why.guests', { n: 1, count: '1' });
    const said = statement('why.per-guest', { guests, amount: '2 fl oz', result: '= 2 fl oz' });
    expect(statementsIn('en-US')(said)).toBe('1 guest × 2 fl oz = 2 fl oz');
    expect(statementsIn('en-US')('as it was written')).toBe('as it was written');
  });

  test('with several things in a row as the language sets them', () => {
    const served = (...dishes: string[]) => statement('why.served-with', { dishes: several('and', dishes) });
    const three = served('tart', 'soup', 'bread');
    expect(['en-US', 'en-GB', 'de-DE'].map((locale) => statementsIn(locale)(three))).toEqual([
      'served with tart, soup, and bread',
      'served with tart, soup and bread',
      'served with tart, soup, and bread',
    ]);
    expect(statementsIn('en-GB')(served('tart'))).toBe('served with tart');
    const either = statement('found.unfed.take-more', { dishes: several('or', ['tart', 'soup']) });
    expect(statementsIn('en-US')(either)).toBe('ask the client to take more of tart or soup');
    const sum = statement('why.sum', { amounts: several('plus', ['1 lb', '2 lb']), result: '= 3 lb' });
    expect(statementsIn('en-US')(sum)).toBe('1 lb + 2 lb = 3 lb');
  });

  test('and fails loudly where no catalogue has it or a value is missing', () => {
    expect(() => statementsIn('en-US')(statement('why.nothing'))).toThrow('there are no words');
    expect(() => statementsIn('en-US')(statement('why.chosen'))).toThrow();
  });
});

interface Call {
  readonly at: string;
  readonly keys: readonly string[];
  /** The names of its values; undefined where they are put together elsewhere. */
  readonly values: readonly string[] | undefined;
}

/** Every `statement(…)` of the sources, with each key it may have. */
function callsOf(file: string): Call[] {
  const text = readFileSync(join(root, file), 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const calls: Call[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText() === 'statement') {
      const [key, values] = node.arguments;
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      calls.push({ at: `${file}:${line}`, keys: key ? keysIn(key) : [], values: namesIn(values) });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return calls;
}

function keysIn(node: ts.Expression): string[] {
  if (ts.isStringLiteral(node)) return [node.text];
  return ts.isConditionalExpression(node) ? [...keysIn(node.whenTrue), ...keysIn(node.whenFalse)] : [];
}

function namesIn(node: ts.Expression | undefined): string[] | undefined {
  if (node === undefined) return [];
  if (!ts.isObjectLiteralExpression(node)) return undefined;
  const names = node.properties.map((property) => property.name?.getText());
  return names.some((name) => name === undefined) ? undefined : (names as string[]);
}

function argumentsOf(tokens: readonly Token[]): string[] {
  return tokens.flatMap((token) => {
    if (token.type === 'content' || token.type === 'octothorpe') return [];
    const inside = 'cases' in token ? token.cases.flatMap(({ tokens: each }) => argumentsOf(each)) : [];
    return [token.arg, ...inside];
  });
}

describe('every statement of the sources', () => {
  const files = globSync('src/**/*.ts', { cwd: root }).map((file) => file.replaceAll('\\', '/'));
  const calls = files.flatMap(callsOf);

  test('is a message that speaks of just what it is given', () => {
    const checked = calls.filter(({ keys }) => keys.length > 0);
    expect(checked.length).toBeGreaterThan(90);
    for (const { at, keys, values } of checked)
      for (const key of keys) {
        const asked = [...new Set(argumentsOf(parse(messageIn('en-US', key as WordKey))))].sort();
        if (values) expect([at, [...values].sort()]).toEqual([at, asked]);
      }
  });
});
