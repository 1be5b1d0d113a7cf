import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { linesOfStep } from '../../src/engine/food/step-lines.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

const SOUP = 'recipes/lentil-soup.mdx';
const STEP = '  - do: Simmer until soft.\n    station: stove\n    cook to: 165 °F\n';

/** The small kitchen whose soup has other steps. */
function cooking(steps: string, lines = ''): string {
  const text = changed(SOUP, STEP, steps)[SOUP] ?? '';
  return contentWith({ [SOUP]: text.replace('  lentils: 4 lb\n', `  lentils: 4 lb\n${lines}`) });
}

const BOILED = '  - { do: Simmer., station: stove, cook to: 165 °F }\n';

describe('where and when a step is done: what check says', () => {
  test('nothing of steps that say it all', async () => {
    const steps =
      '  - { do: Soak., when: the day before, station: stove, at: kitchen, rest: 8 h, use within: 24 h, uses: lentils }\n' +
      '  - { do: "Simmer in {2} pots with {1½ gal} of water.", station: stove, at: place, cook to: 165 °F, rest: 10 min }\n' +
      '  - { do: Ladle., when: at serving, station: stove, uses: cheese, waves: yes }\n';
    const dir = cooking(steps, '  hill-cheese, grated: 1 lb\n');
    expect(await foundIn(dir)).toBe('');
    const soup = (await readBook(dir)).book!.recipes.get('lentil-soup')!;
    expect(soup.steps.map(({ at, rest, useWithin, waves }) => ({ at, rest, useWithin, waves }))).toEqual([
      { at: 'kitchen', rest: 480, useWithin: 1440, waves: undefined },
      { at: 'place', rest: 10, useWithin: undefined, waves: undefined },
      { at: undefined, rest: undefined, useWithin: undefined, waves: true },
    ]);
    const taken = [0, 1, 2].map((step) => linesOfStep(soup, step).map(({ preparation }) => preparation));
    expect(taken).toEqual([[null], [], ['grated']]);
  });

  test('a step in the kitchen after one that is done at the place', async () => {
    const steps = '  - { do: Simmer., station: stove, at: place }\n  - { do: Blend., station: stove }\n';
    expect(await foundIn(cooking(steps))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:8:11 error step-place step 2 is done in the kitchen, but step 1 before it is done at the place — write “at: place” in it if it is done there too, or put the steps in the order they are done in"`,
    );
  });

  test('the same where only the days tell where they are done, as kitchens wrote it before: a look is enough', async () => {
    const steps =
      '  - { do: Simmer., when: at serving, station: stove, cook to: 165 °F }\n  - { do: Blend., station: stove }\n';
    expect(await foundIn(cooking(steps))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:8:11 warning step-order step 2 is done in the kitchen, but step 1 before it is done at the place — write “at: place” in it if it is done there too, or put the steps in the order they are done in"`,
    );
  });

  test('a step at the place on a day before, waves in the kitchen, and a place that is none', async () => {
    const early = '  - { do: Simmer., when: the day before, station: stove, at: place }\n';
    expect(await foundIn(cooking(early))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:62 error step-place step 1 is at the place, but on a day before the event — write “when: on the day”, or “at: kitchen”"`,
    );
    const waves = '  - { do: Simmer., station: stove, waves: yes }\n';
    expect(await foundIn(cooking(waves))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:43 error step-place step 1 has waves, but it is done in the kitchen, where all of it is finished before it leaves — write “at: place” in it, or leave “waves” out"`,
    );
    const van = '  - { do: Simmer., station: stove, at: van }\n';
    expect(await foundIn(cooking(van))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:40 error unknown-word “at” can’t be “van” — write one of kitchen, place"`,
    );
  });

  test('a step used sooner than it has rested, and one that nothing follows', async () => {
    const short = `  - { do: Soak., station: stove, rest: 2 h, use within: 1 h 30 min }\n${BOILED}`;
    expect(await foundIn(cooking(short))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:57 error step-wait step 1 rests for 2 h and has to be used within 1 h 30 min — write a shorter “rest”, or a longer “use within”"`,
    );
    const last = '  - { do: Simmer., station: stove, use within: 45 min }\n';
    expect(await foundIn(cooking(last))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:48 error step-wait step 1 has “use within”, which counts to the next step, and it is the last one — write how long the finished dish may wait as the recipe’s “stands: 45 min”"`,
    );
    const vague = `  - { do: Soak., station: stove, rest: overnight }\n${BOILED}`;
    expect(await foundIn(cooking(vague))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:40 error not-understood "overnight" does not start with a number — write the number first, such as 2 or 1 1/2"`,
    );
  });

  test('a line that a step uses and the recipe does not have', async () => {
    const steps = '  - { do: Simmer., station: stove, cook to: 165 °F, uses: lentil }\n';
    expect(await foundIn(cooking(steps))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:59 error unknown-id no line of this recipe is called “lentil” — did you mean lentils?"`,
    );
  });

  test('a name that two lines answer to', async () => {
    const steps = '  - { do: Simmer., station: stove, cook to: 165 °F, uses: "lentils, cheese" }\n';
    const dir = cooking(steps, '  hill-cheese: 1 lb\n  cheese-plate: 1 serving\n');
    expect(await foundIn(dir)).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:9:59 error not-understood “cheese” could be hill-cheese or cheese-plate — write which of them this step takes"`,
    );
  });

  test('a line that no step uses although some say what they use', async () => {
    const steps = '  - { do: Simmer., station: stove, cook to: 165 °F, uses: lentils }\n';
    expect(await foundIn(cooking(steps, '  hill-cheese, grated: 1 lb\n'))).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:6:3 note line-not-used some steps state what they use, but none uses “hill-cheese, grated”, so it is taken for the first step — name it in the “uses” of the step that takes it"`,
    );
  });

  test('braces that are not closed, not opened, or hold no number', async () => {
    const said = (words: string) =>
      foundIn(cooking(`  - { do: "${words}", station: stove, cook to: 165 °F }\n`));
    expect(await said('Fold {40 papers.')).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:11 error not-understood the brace in “Fold {40 papers.” is not closed — write a number for one batch in the braces, such as “fold {40} papers” or “add {2 cups} of water”"`,
    );
    expect(await said('Fold 40} papers.')).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:11 error not-understood the brace in “Fold 40} papers.” is not opened — write a number for one batch in the braces, such as “fold {40} papers” or “add {2 cups} of water”"`,
    );
    expect(await said('Fold {some} papers.')).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:7:11 error not-understood “{some}” has no number for one batch in it — write a number for one batch in the braces, such as “fold {40} papers” or “add {2 cups} of water”, or leave the braces out"`,
    );
    expect(
      await foundIn(contentWith(changed(SOUP, 'keeps: 3 days', 'keeps: 3 days\nfinish: Add {} herbs.'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:11:9 error not-understood “{}” has no number for one batch in it — write a number for one batch in the braces, such as “fold {40} papers” or “add {2 cups} of water”, or leave the braces out"`,
    );
  });

  test('times of the finished dish that are none', async () => {
    const text = changed(SOUP, 'keeps: 3 days', 'keeps: 3 days\nstands: a while\nchill: 0 h');
    expect(await foundIn(contentWith(text))).toMatchInlineSnapshot(`
      "content/recipes/lentil-soup.mdx:11:9 error not-understood "a while" does not start with a number — write the number first, such as 2 or 1 1/2
      content/recipes/lentil-soup.mdx:12:8 error not-understood "0 h" is zero — write it as 20 min, 2 h, 1 h 30 min or 3 days"
    `);
  });
});

describe('how long it takes to cool: what check says', () => {
  const cooling = (chill: string) =>
    foundIn(
      contentWith({
        [SOUP]: (changed(SOUP, 'hold: hot', `hold: cold\nchill: ${chill}`)[SOUP] ?? '').replace(
          'pack: { serve: tray }',
          'pack: { chill: tub, serve: tray }',
        ),
      }),
    );

  test('nothing up to what the food code gives it', async () => {
    expect(await cooling('6 h')).toBe('');
  });

  test('nothing of a first stage within its 2 h', async () => {
    expect(await cooling('{ first stage: 2 h, in all: 5 h }')).toBe('');
  });

  test('of a longer first stage, its temperature, and of one that is longer than all, where to write what', async () => {
    expect(await cooling('{ first stage: 2 h 10 min, in all: 5 h }')).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:12:23 error chill-first-too-long “lentil-soup” takes 2 h 10 min from cooking to 70 °F, but FDA Food Code 2022, 3-501.14(A) requires 70 °F within 2 h and 41 °F within 6 h — cool it in smaller or shallower containers, over ice, or make less at a time; the local food code and a licensed food-safety manager decide"`,
    );
    expect(await cooling('{ first stage: 5 h, in all: 5 h }')).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:12:23 error not-understood the first stage of cooling takes 5 h, but all of it takes 5 h — write under “in all” the time from the end of cooking to cold, the first stage included"`,
    );
  });

  test('of longer, the section and who decides', async () => {
    expect(await cooling('6 h 30 min')).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:12:8 error chill-too-long “lentil-soup” takes 6 h 30 min from cooking to cold, but FDA Food Code 2022, 3-501.14(A) requires 70 °F within 2 h and 41 °F within 6 h — cool it in smaller or shallower containers, over ice, or make less at a time; the local food code and a licensed food-safety manager decide"`,
    );
  });
});
