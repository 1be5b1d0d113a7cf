import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filesOf } from '../../src/files/digest.ts';
import { leaksIn } from '../strength/leak-scan.ts';
import { clubFolder, crewFolder, replaceIn, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

/** Words planted in the content that no client may ever see; each stands for a kind of secret. */
const secrets = {
  'what is paid for a pack': '1234.56',
  'what staff are paid': '17.89',
  'a supplier': 'Plantedsupplier',
  'an order code': 'PLANTCODE7',
  'a cook’s note': 'plantedcooknote',
  'a step of a recipe': 'plantedstep',
  'an amount of a recipe': '3.777 kg',
  'a page of the kitchen': '/kitchen/',
};

describe('what is deployed', () => {
  let kitchen: SecondKitchen;

  beforeAll(async () => {
    kitchen = await secondKitchen(async (content) => {
      const edit = (file: string, from: string, to: string) => replaceIn(join(content, file), from, to);
      await edit(
        'prices/strand-stores.csv',
        'butter,5 kg box,41.50,DB5',
        'butter,5 kg box,1234.56,PLANTCODE7',
      );
      await edit('kitchen.yaml', 'pay: 17.00', 'pay: 17.89');
      await edit('suppliers.yaml', 'name: ', 'name: Plantedsupplier ');
      await edit('recipes/haddock-chowder.mdx', 'Taste before', 'plantedcooknote. Taste before');
      await edit('recipes/haddock-chowder.mdx', 'Sweat leeks', 'plantedstep, sweat leeks');
      await edit('recipes/haddock-chowder.mdx', 'potato, peeled: 4 kg', 'potato, peeled: 3.777 kg');
    });
    expect((await kitchen.build({})).code).toBe(0);
  });

  afterAll(() => kitchen?.remove());

  /** Names of the secrets that stand in any file below a folder. */
  async function found(folder: string, words: Record<string, string>): Promise<string[]> {
    const secrets = Object.entries(words).map(([kind, each]) => ({ kind, words: each }));
    const leaks = await leaksIn(join(kitchen.out, folder), secrets);
    return Object.keys(words).filter((name) => leaks.some(({ kind }) => kind === name));
  }

  test('the kitchen’s side holds every planted secret that it shows, so the search sees them', async () => {
    // The amounts of a recipe are shown for the event, so that the batch's own need not appear.
    const expected = Object.keys(secrets).filter(
      (name) => !['an amount of a recipe', 'a page of the kitchen'].includes(name),
    );
    expect(await found('private', secrets)).toEqual(expect.arrayContaining(expected));
  });

  test('the public side holds none of them, in page, paper, data, style or name', async () => {
    expect(await found('public', secrets)).toEqual([]);
  });

  test('a client’s folder says nothing of another client', async () => {
    const crew = {
      name: 'Dunmarrow Lifeboat Crew',
      link: 'oyx6usbuof2ek2zoccd4j5hh5o',
      mail: 'crew@lifeboat.example',
      id: 'lifeboat-evening',
    };
    const club = {
      name: 'Skerrivane Rowing Club',
      link: 'b2q7harbourwall4t5x6y7z2m3',
      mail: 'oars@skerrivane.example',
      id: 'regatta-lunch',
    };
    expect(await found(clubFolder, crew)).toEqual([]);
    expect(await found(crewFolder, club)).toEqual([]);
    expect(await found(crewFolder, crew)).toContain('name');
  });

  test('nothing public lists the proposals', async () => {
    const files = await filesOf(join(kitchen.out, 'public'));
    expect(files.filter((file) => /^(proposals\/)?index\.|sitemap|feed/.test(file))).toEqual([]);
    const outside = files.filter((file) => !file.startsWith('proposals/'));
    for (const file of outside) {
      expect(await readFile(join(kitchen.out, 'public', file), 'latin1')).not.toContain(
        'oyx6usbuof2ek2zoccd4j5hh5o',
      );
    }
  });
});
