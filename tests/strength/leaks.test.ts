import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filesOf } from '../../src/files/digest.ts';
import { LARGE_TODAY } from '../bench/large-kitchen.ts';
import { salver } from '../commands/run.ts';
import { leaksIn, type Secret } from './leak-scan.ts';
import { LONG } from './long.ts';
import { plant } from './planted.ts';
import { makeSecretKitchen, secretsOf } from './secret-kitchen.ts';

const SIZE = LONG
  ? { proposals: 1000, events: 100, recipes: 300, ingredients: 600, suppliers: 5 }
  : { proposals: 24, events: 4, recipes: 40, ingredients: 60, suppliers: 3 };

describe('what a large kitchen deploys', () => {
  let folder: string;
  let out: string;
  let secrets: Secret[];

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'salver-leaks-'));
    const content = join(folder, 'content');
    out = join(folder, 'dist');
    await makeSecretKitchen(content, SIZE);
    secrets = await secretsOf(content);
    const words = ['build', '--content', content, '--out', out, '--today', LARGE_TODAY];
    const { code, out: said, err } = await salver(words);
    expect(code, `${said}${err}`).toBe(0);
  });

  afterAll(() => rm(folder, { recursive: true, force: true }));

  test('has a page, a paper, data, a script and a picture to look through', async () => {
    const kinds = new Set((await filesOf(join(out, 'public'))).map((file) => file.replace(/^.*\./, '')));
    expect([...kinds]).toEqual(expect.arrayContaining(['html', 'pdf', 'json', 'js', 'css', 'webp']));
  });

  test('holds no secret, in any file, name, paper or picture', async () => {
    expect(await leaksIn(join(out, 'public'), secrets)).toEqual([]);
  });

  test('has each kind of secret on the kitchen’s side, or in the content, so that the search knows them as they are written', async () => {
    const kitchen = await leaksIn(join(out, 'private'), secrets);
    const content = await leaksIn(join(folder, 'content'), secrets);
    const seen = new Set([...kitchen, ...content].map(({ kind }) => kind));
    expect(kindsOf(secrets).filter((kind) => !seen.has(kind))).toEqual([]);
    expect(kindsOf(kitchen)).toEqual(
      expect.arrayContaining(['a cost', 'a margin', 'a supplier', 'an order code', 'a cook’s note']),
    );
  });

  const planting = async () => {
    const planted = join(folder, 'planted');
    const kinds = kindsOf(secrets);
    const files = await plant(
      planted,
      kinds.map((kind) => SPOKEN[kind] ?? wordsOf(secrets, kind)),
    );
    const leaks = new Set((await leaksIn(planted, secrets)).map(({ file, kind }) => `${kind} in ${file}`));
    const expected = files.map((file) => `${kinds[Number(file.split('/')[1])]} in ${file}`);
    expect(expected.filter((each) => !leaks.has(each))).toEqual([]);
    expect(leaks.size).toBeGreaterThanOrEqual(expected.length);
  };
  test('would be found out by each kind of secret in each kind of file', planting);
});

function kindsOf(named: readonly { readonly kind: string }[]): string[] {
  return [...new Set(named.map(({ kind }) => kind))];
}

/** Words that a pattern looks for. */
const SPOKEN: Readonly<Record<string, string>> = {
  'a cost': 'cost 1,270,004.95',
  'a margin': 'Margin −$46,287.20',
  'a recipe’s amount': '33 lb 4 oz',
};

function wordsOf(secrets: readonly Secret[], of: string): string {
  const words = secrets.find(({ kind }) => kind === of)?.words;
  if (typeof words !== 'string') throw new Error(`there are no words for ${of}`);
  return words;
}
