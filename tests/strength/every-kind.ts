import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { change, copyOf } from '../commands/kitchen-copy.ts';

const VERSION_1 = fileURLToPath(new URL('../fixtures/version-1/content', import.meta.url));

/** A kitchen with a file of every kind that content can hold: each record that Salver writes, stock, a mark, a photo. */
export async function everyKind(): Promise<string> {
  const dir = copyOf(VERSION_1);
  writeFileSync(
    join(dir, 'stock.csv'),
    'ingredient,amount,use by\nonion,2 kg,2027-06-01\nwater,"1 l",\nbay-leaf,10 g,\n',
  );
  mkdirSync(join(dir, 'brand'));
  writeFileSync(
    join(dir, 'brand/mark.svg'),
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20">\n' +
      '<defs><linearGradient id="sea"><stop offset="0" stop-color="#1f5a66"/></linearGradient></defs>\n' +
      '<g transform="translate(2 2)"><path d="M0 16 L18 0 L36 16 Z" fill="url(#sea)"/><circle cx="18" cy="9" r="3"/></g>\n' +
      '</svg>\n',
  );
  change(dir, ['kitchen.yaml', 'town: Dunmarrow Strand', 'town: Dunmarrow Strand\nmark: brand/mark.svg']);
  mkdirSync(join(dir, 'packages/photos'));
  const picture = sharp({ create: { width: 80, height: 60, channels: 3, background: '#557766' } });
  writeFileSync(join(dir, 'packages/photos/table.jpg'), await picture.jpeg().toBuffer());
  const file = 'packages/storm-supper.mdx';
  change(dir, [file, '\n---\n', '\n---\n![A long table, laid](photos/table.jpg)\n\n']);
  return dir;
}
