import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { recordText } from '../../src/offers/write-once.ts';
import { accepted, offerOf, planOf, secondKitchen } from '../unit/offers/second-kitchen.ts';

/*
 * What was published once must come out the same again: an issued offer's digest hangs on every byte, and a plan's
 * figures are what a kitchen cooks from. A change here is either a mistake or meant. If it is meant, renew the files
 *
 *   SALVER_GOLDEN=write npx vitest run --config tests/vitest.config.ts tests/golden
 *
 * and read the difference line by line before it is kept. An offer's may only differ where its `version` rises too. Their
 * names end in .golden, so that no formatter takes them for source.
 */
function expectGolden(name: string, text: string): void {
  const file = fileURLToPath(new URL(name, import.meta.url));
  const { SALVER_GOLDEN: mode } = process.env;
  if (mode === 'write') {
    mkdirSync(new URL('.', import.meta.url), { recursive: true });
    writeFileSync(file, text);
  }
  expect(text).toBe(readFileSync(file, 'utf8'));
}

test('the second kitchen’s offer is the same to the byte', async () => {
  expectGolden('lifeboat-evening-r1.json.golden', recordText(offerOf(await secondKitchen())));
});

test('the second kitchen’s prep plan is the same to the byte', async () => {
  const plan = await planOf(accepted(await secondKitchen(), { addOns: { 'tea-table': 1 } }));
  expectGolden('lifeboat-evening-prep-plan.json.golden', recordText(plan));
});
