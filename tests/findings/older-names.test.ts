import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { run } from '../commands/run.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

/** The small kitchen with further lines at the top of kitchen.yaml. */
function kitchenWith(lines: string): string {
  return contentWith(changed('kitchen.yaml', 'name: Lantern Kitchen\n', `name: Lantern Kitchen\n${lines}`));
}

describe('a field under a name that it had before', () => {
  test('is read as under its name of today, and told as a note', async () => {
    const dir = kitchenWith('e-mail: hello@lantern.example\nfail to come: 3 %\n');
    expect(await foundIn(dir)).toMatchInlineSnapshot(`
      "content/kitchen.yaml:2:1 note older-name “e-mail” is now called “email” — check --rewrite changes it; the old name still works
      content/kitchen.yaml:3:1 note older-name “fail to come” is now called “no-shows” — check --rewrite changes it; the old name still works"
    `);
    const { book } = await readBook(dir);
    expect(book?.kitchen.email).toBe('hello@lantern.example');
    expect(book?.kitchen.attendance?.failToCome.toFraction()).toBe('3/100');
  });

  test('is an error beside the name of today: nobody can tell which counts', async () => {
    expect(
      await foundIn(kitchenWith('e-mail: hello@lantern.example\nemail: kitchen@lantern.example\n')),
    ).toMatchInlineSnapshot(
      `"content/kitchen.yaml:2:1 error duplicate-key “e-mail” is the old name of “email”, and both are here — keep one of them"`,
    );
  });

  test('whose value is missing is told under the name of today, once', async () => {
    expect(await foundIn(kitchenWith('e-mail:\n'))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:2:1 error no-value “e-mail” has no value — write it after the colon, or delete the key"`,
    );
  });
});

describe('check --rewrite', () => {
  test('writes the names of today and leaves all else to the letter', async () => {
    const dir = kitchenWith('# Email address for clients.\ne-mail:   hello@lantern.example # by day\n');
    const file = join(dir, 'kitchen.yaml');
    const before = readFileSync(file, 'utf8');
    const { code, out } = await run(dir, 'check', '--rewrite');
    expect(out).toMatchInlineSnapshot(`
      "kitchen.yaml: “e-mail” is now “email” (line 3)
      Nothing found.
      "
    `);
    expect(code).toBe(0);
    expect(readFileSync(file, 'utf8')).toBe(before.replace('e-mail:', 'email:'));
    expect(await foundIn(dir)).toBe('');
  });

  test('leaves a name in quotation marks to its author, and says so', async () => {
    const dir = kitchenWith('"e-mail": hello@lantern.example\n');
    const before = readFileSync(join(dir, 'kitchen.yaml'), 'utf8');
    expect((await run(dir, 'check', '--rewrite')).out).toContain('“e-mail” is now called “email”');
    expect(readFileSync(join(dir, 'kitchen.yaml'), 'utf8')).toBe(before);
  });

  test('keeps the line ends and the mark at the beginning of a file from another system', async () => {
    const dir = kitchenWith('');
    const file = join(dir, 'kitchen.yaml');
    const text = `\uFEFFe-mail: hello@lantern.example\n${readFileSync(file, 'utf8')}`.replaceAll(
      '\n',
      '\r\n',
    );
    writeFileSync(file, text);
    await run(dir, 'check', '--rewrite');
    expect(readFileSync(file, 'utf8')).toBe(text.replace('e-mail:', 'email:'));
  });
});
