import { describe, expect, test } from 'vitest';
import { printFindings } from '../../../src/book/findings/print-findings.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { contentWith, SMALL_CONTENT } from '../../findings/small-content.ts';

/** The small kitchen with one carrier, and whatever else is said below it. */
function carrying(carrier: string, more = ''): string {
  const text = SMALL_CONTENT['kitchen.yaml'] ?? '';
  return contentWith({ 'kitchen.yaml': `${text}carriers:\n  box: ${carrier}\n${more}` });
}

const told = async (content: string) =>
  printFindings((await readBook(content)).findings, 'content')
    .split('\n')
    .slice(0, -1);

describe('carriers and vehicles', () => {
  test('are read with what they hold, weigh and lose, in exact metric figures', async () => {
    const { book } = await readBook(
      carrying(
        '{ for: cold, holds: 8 tub, size: 25 × 17 × 24 in, weighs: 10 kg, ice pack: 500 g, trial: { water: 20 kg, from: 75 °C, to: 65 °C, after: 4 hours, around: 20 °C } }',
        'vehicles: { van: { name: Van, payload: 900 kg, space: 300 × 140 × 150 cm } }\n',
      ),
    );
    const box = book?.kitchen.carriers?.get('box');
    expect(box).toMatchObject({
      name: 'Box',
      count: 1,
      for: ['cold'],
      holds: [{ count: 8, container: 'tub' }],
    });
    const { grams, icePackGrams, size, trial } = box ?? {};
    expect([grams, icePackGrams, size?.length, trial?.hours].map(String)).toEqual([
      '10000',
      '500',
      '635',
      '4',
    ]);
    const van = book?.kitchen.vehicles?.get('van');
    expect([van?.payloadGrams, van?.space?.height].map(String)).toEqual(['900000', '1500']);
  });

  test('that say what cannot be are told, with the way to write it', async () => {
    expect(await told(carrying('{ for: warm, holds: 8 tub }'))).toEqual([
      expect.stringMatching(
        /error unknown-word “warm” is not a way in which food travels — write hot, cold, frozen or room/,
      ),
      '1 error.',
    ]);
    const slips = [
      ['holds: eight tubs', 'does not give a number and a container'],
      ['holds: 8 pan', 'no container is called “pan”'],
      ['holds: 8 tub, size: big', '“big” is not the size of a box'],
      ['holds: 8 tub, weighs: 2 cups', '“2 cups” is not a weight'],
      [
        'holds: 8 tub, trial: { water: 20 kg, from: 65 °C, to: 75 °C, after: 4 hours, around: 20 °C }',
        'tells nothing of how a carrier keeps heat',
      ],
      [
        'holds: 8 tub, trial: { water: 20 kg, from: 75 °C, to: 15 °C, after: 4 hours, around: 20 °C }',
        'tells nothing of how a carrier keeps heat',
      ],
    ] as const;
    for (const [slip, what] of slips)
      expect((await told(carrying(`{ for: cold, ${slip} }`)))[0]).toContain(what);
  });
});
