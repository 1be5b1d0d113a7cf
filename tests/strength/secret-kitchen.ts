import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { projectDir } from '../../src/build/project-dir.ts';
import { readBook } from '../../src/check/read-book.ts';
import { filesOf } from '../../src/files/digest.ts';
import { nextOffer, offerFile } from '../../src/offers/issue/issue.ts';
import { recordText } from '../../src/offers/write-once.ts';
import { LARGE_TODAY, type LargeSize, makeLargeKitchen } from '../bench/large-kitchen.ts';
import type { Secret } from './leak-scan.ts';
import { BESIDE_A_PICTURE } from './readable-texts.ts';

/** Whoever took the photo of the story, as the camera wrote it. */
const PHOTOGRAPHER = 'Plantedphotographer';
const CAMERA = 'Plantedcamera 7';
const SERIAL = 'PC-40417733';

/** What the crew is paid, and what a way, an add-on and a rental cost: nothing that a client pays comes out so. */
const PAY = '87.31';
const DELIVERY_COST = '913.57';
const COFFEE_COST = '97.37';
const PLATE_COST = '83.77';

/**
 * A large kitchen whose secrets can be told from what a client may see: everything that is bought costs more than any
 * client pays, recipes are weighed in amounts that no guest is served, a dish of every menu has an appetite, and the
 * story's photo says by whom and with which camera it was taken.
 */
export async function makeSecretKitchen(dir: string, size: LargeSize): Promise<void> {
  await makeLargeKitchen(dir, size);
  const edit = async (folder: string, change: (text: string, file: string) => string) => {
    for (const name of await readdir(join(dir, folder))) {
      const file = join(dir, folder, name);
      const before = await readFile(file, 'utf8');
      const after = change(before, name);
      if (after === before) throw new Error(`${folder}/${name} has nothing to be told apart by`);
      await writeFile(file, after);
    }
  };
  await edit('prices', (text) =>
    text.replace(/ lb,(\d+)\./g, (_, whole) => ` lb,${70_000 + Number(whole)}.`),
  );
  await edit('recipes', (text) => text.replace(/trimmed: (\d) lb/g, 'trimmed: 3$1 lb'));
  await edit('packages', (text) => {
    const sized = text.replace(
      / {6}(dish-\d+): (.+ per guest)\n/,
      (_, dish, amount) =>
        `      ${dish}:\n        amount: ${amount}\n        appetite: { none: 17.3 %, one: 60.4 %, two: 22.3 % }\n        missing: 77.77\n        left over: 7.71\n`,
    );
    return `${sized}\n![A long table, laid](photos/table.jpg)\n`;
  });
  const kitchen = join(dir, 'kitchen.yaml');
  const costly = [
    ['pay: 24.00', `pay: ${PAY}`],
    ['delivery: 85.00', `delivery: 85.00\n    delivery cost: ${DELIVERY_COST}`],
    ['price: 4.50 per guest,', `price: 4.50 per guest, cost: ${COFFEE_COST} per guest,`],
    ['spare: 5 % }', `spare: 5 %, cost: ${PLATE_COST} }`],
  ] as const;
  let text = await readFile(kitchen, 'utf8');
  for (const [from, to] of costly) {
    if (!text.includes(from)) throw new Error(`kitchen.yaml has no “${from}”`);
    text = text.replace(from, to);
  }
  await writeFile(kitchen, text);
  await mkdir(join(dir, 'packages/photos'));
  const picture = sharp({ create: { width: 1200, height: 800, channels: 3, background: '#557766' } });
  await writeFile(
    join(dir, 'packages/photos/table.jpg'),
    await picture
      .withExif({ IFD0: { Artist: PHOTOGRAPHER, Model: CAMERA }, IFD2: { BodySerialNumber: SERIAL } })
      .jpeg()
      .toBuffer(),
  );
  await issueAnew(dir);
}

/** What is offered has been frozen before the secrets came; a further revision freezes whatever it takes of them. */
async function issueAnew(dir: string): Promise<void> {
  const { book } = await readBook(dir);
  if (!book) throw new Error('the secret kitchen cannot be read');
  for (const proposal of book.proposals.values()) {
    if (!book.offers.has(proposal.id) || book.events.has(proposal.id)) continue;
    if (proposal.validUntil < LARGE_TODAY) continue;
    const offer = nextOffer(book, proposal, LARGE_TODAY);
    if (!offer.ok) throw new Error(`${proposal.id}: ${offer.what}`);
    await writeFile(offerFile(dir, offer.value), recordText(offer.value));
  }
}

/** All that the files of such a kitchen say and nobody outside may read, read from the files themselves. */
export async function secretsOf(dir: string): Promise<Secret[]> {
  const secrets: Secret[] = [
    {
      kind: 'a cost',
      words: /(?<![\d.,])(?:\d{1,3}(?:,\d{3}){2,}|(?:[7-9]\d|\d{3}),\d{3}|[7-9]\d{4}|\d{6,})\.\d{1,2}(?!\d)/g,
    },
    { kind: 'a cost', words: /"(?:cost|food ?cost|unit ?price|paid)"/g },
    { kind: 'a margin', words: /"margin"|\bmargin (?:of )?[−-]?[$€]|\bfood cost\b/g },
    { kind: 'what staff are paid', words: PAY },
    ...[DELIVERY_COST, COFFEE_COST, PLATE_COST].map((words) => ({ kind: 'what a service costs', words })),
    { kind: 'a recipe’s amount', words: /(?<![\d.])3[1-6] lb\b/g },
    { kind: 'a cook’s note', words: 'A note for the cook' },
    { kind: 'a cook’s note', words: 'Stir once and taste' },
    { kind: 'a step of a recipe', words: 'Trim and weigh everything' },
    { kind: 'a step of a recipe', words: 'Cook in batches until done' },
    ...[
      '/kitchen/',
      'private/',
      'prep-plan',
      '/shopping.csv',
      'pack-out.csv',
      'invoice.json',
      dir,
      projectDir,
    ].map((words) => ({ kind: 'a path of the kitchen', words })),
    { kind: 'how guests help themselves', words: '60.4 %' },
    { kind: 'how guests help themselves', words: '22.3 %' },
    { kind: 'what a missing portion costs', words: '77.77' },
    ...[PHOTOGRAPHER, CAMERA, SERIAL].map((words) => ({ kind: 'what a camera wrote', words })),
    { kind: 'what a camera wrote', words: BESIDE_A_PICTURE },
  ];
  for (const [, id = '', name = ''] of (await textIn(dir, 'suppliers.yaml')).matchAll(
    /^(\S+):\n {2}name: (.+)$/gm,
  ))
    secrets.push({ kind: 'a supplier', words: id }, { kind: 'a supplier', words: name });
  for (const file of await filesOf(join(dir, 'prices')))
    for (const row of (await textIn(dir, `prices/${file}`)).trimEnd().split('\n').slice(1))
      secrets.push({ kind: 'an order code', words: row.split(',')[3] ?? '' });
  for (const file of await filesOf(join(dir, 'ingredients')))
    for (const [, id = '', name = ''] of (await textIn(dir, `ingredients/${file}`)).matchAll(
      /^(\S+):\n {2}name: (.+)$/gm,
    ))
      secrets.push(
        { kind: 'what a recipe is made of', words: id },
        { kind: 'what a recipe is made of', words: name },
      );
  for (const file of await filesOf(join(dir, 'proposals'))) secrets.push(...(await clientOf(dir, file)));
  return secrets;
}

/** A client is known in the own proposal's folder, and nowhere else. */
async function clientOf(dir: string, file: string): Promise<Secret[]> {
  const text = await textIn(dir, `proposals/${file}`);
  const said = (field: RegExp) => field.exec(text)?.[1] ?? '';
  const id = file.replace(/\.md$/, '');
  const link = said(/^link: (\S+)$/m);
  const own = { kind: 'another client', openIn: `proposals/${link}/` };
  return [
    ...[
      id,
      link,
      said(/^ {2}name: (Client .+)$/m),
      said(/^ {2}email: (\S+)$/m),
      said(/^ {2}name: (Hall .+)$/m),
    ].map((words) => ({ ...own, words })),
    // Who signed is known to the kitchen alone.
    { kind: 'who signed', words: `Guest of ${id}` },
    { kind: 'who signed', words: `${id}@client.example` },
  ];
}

function textIn(dir: string, file: string): Promise<string> {
  return readFile(join(dir, file), 'utf8');
}
