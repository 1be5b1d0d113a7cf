import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { text } from 'node:stream/consumers';
import { expect, test } from 'vitest';
import { askedFor } from '../../src/commands/ask-leftovers.ts';
import { sentOut } from '../../src/commands/call/kept-plan.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { bookOf, done, EVENT, supperKitchen } from '../unit/events/supper-kitchen.ts';

const OVER = '2027-05-16' as Day;

/** What a person is asked about the supper and says, a line an answer. */
async function asked(typed: readonly string[], { known = {}, served = false, breaksOff = false } = {}) {
  const dir = await supperKitchen();
  if (served) await done(dir, OVER, 'served', EVENT, '--adults', '80');
  const book = await bookOf(dir);
  const out = await sentOut(dir, join(dir, 'no-output'), book, EVENT, OVER);
  if (!out.ok) throw new Error(out.what);
  const [input, output] = [new PassThrough(), new PassThrough()];
  for (const line of typed) input.write(`${line}\n`);
  // Whoever breaks off closes the terminal.
  if (breaksOff) input.end();
  const said = await askedFor(book, EVENT, out.value, known, { input, output });
  output.end();
  if (said && !said.ok) throw new Error(said.what);
  return {
    came: said?.value.came,
    dishes: said?.value.dishes.map(({ dish, said: words, destiny }) => [
      dish.name,
      words,
      ...(destiny ? [destiny] : []),
    ]),
    shown: await text(output),
  };
}

test('who came is asked first, then every dish with what went out, in the kitchen’s own containers', async () => {
  const { came, dishes, shown } = await asked(['80', '2 trays and a third', 'ran out at 20:15', '']);
  expect(came).toEqual({ adults: 80 });
  expect(dishes).toEqual([
    ['Bean fritters', '2 trays and a third'],
    ['Lamb stew', 'ran out at 20:15'],
  ]);
  expect(shown).toMatch(/^How many adults came \[84\]: Bean fritters: 84 pieces? went out\. What came back/);
  expect(shown).toMatch(
    /Lamb stew: 70 servings? went out\. What came back, and was it thrown away, given away or brought home \(leave blank if not known\): /,
  );
});

test('an answer may end with where it went', async () => {
  const { dishes } = await asked(['80', '14 pieces, given away', 'nothing', '1 serving thrown away']);
  expect(dishes).toEqual([
    ['Bean fritters', '14 pieces', 'given away'],
    ['Lamb stew', 'nothing'],
    ['Pea pot', '1 serving', 'thrown away'],
  ]);
});

test('an answer that will not do is explained, and the same dish asked again; nothing said so far is lost', async () => {
  const { came, dishes, shown } = await asked([
    'many',
    '80',
    '6 trays',
    '2 buckets',
    '1 tray',
    '',
    '1 serving',
  ]);
  expect(came).toEqual({ adults: 80 });
  expect(dishes).toEqual([
    ['Bean fritters', '1 tray'],
    ['Pea pot', '1 serving'],
  ]);
  expect(shown).toContain('“6 trays” is 120 pieces, but only 84 pieces went out');
  expect(shown.match(/Bean fritters: 84 pieces? went out/g)).toHaveLength(3);
});

test('who came is not asked where it was said on the line, or is recorded already', async () => {
  for (const { shown, came } of [
    await asked(['', '', ''], { known: { adults: 80 } }),
    await asked(['', '', ''], { served: true }),
  ]) {
    expect(shown).toMatch(/^Bean fritters/);
    expect(came).toEqual({});
  }
});

test('who breaks off has said nothing', async () => {
  expect(await asked(['80', '1 tray'], { breaksOff: true })).toMatchObject({
    came: undefined,
    dishes: undefined,
  });
});
