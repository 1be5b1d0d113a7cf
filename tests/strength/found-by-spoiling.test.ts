import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readSite } from '../../src/build/read-site.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { whole } from '../unit/views/whole-site.ts';
import { everyKind } from './every-kind.ts';

// What once ended a reading, so that it is tried by name, whatever the mutants of a run are.

const LEFT = 'events/harbour-watch/010-leftovers.json';
const PHOTO = 'packages/photos/table.jpg';

/** What is said of one file; every page that can be shown is made. */
async function saidOf(content: string, file: string): Promise<string[]> {
  const { findings, shown } = await readSite(content, () => '2027-05-04' as Day);
  for (const page of shown ? (await whole(shown.site)).pages : []) void page.view;
  return findings
    .filter(({ place, severity }) => place.file === file && severity !== 'note')
    .map(({ code, what }) => `${code}: ${what}`);
}

test('the unspoilt kitchen has nothing to say of either file', async () => {
  const content = await everyKind();
  expect(await saidOf(content, LEFT)).toEqual([]);
  expect(await saidOf(content, PHOTO)).toEqual([]);
});

test('an empty picture is told as none', async () => {
  const content = await everyKind();
  writeFileSync(join(content, PHOTO), '');
  expect(await saidOf(content, PHOTO)).toEqual([
    expect.stringMatching(/^picture-form: this picture is damaged/),
  ]);
});

test('an amount left over that no floating-point number can hold is told at its place', async () => {
  const content = await everyKind();
  const text = readFileSync(join(content, LEFT), 'utf8');
  writeFileSync(
    join(content, LEFT),
    text.replace('"back": "2 serving"', `"back": "${'9'.repeat(400)} serving"`),
  );
  expect(await saidOf(content, LEFT)).toEqual([expect.stringMatching(/^record-form: .*exact amount/)]);
});
