import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { findingsOn } from '../../../src/check/findings-on.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { eventInputOf } from '../../../src/offers/event/input-of.ts';
import { salver } from '../../commands/run.ts';
import { bookOf, changed, EVENT, supperKitchen } from './supper-kitchen.ts';

const SHEET = 'site-sheets/net-loft.yaml';
/** Everything of it but name and address is for the kitchen alone. */
const SECRETS = [
  'Ysolde Quarrender',
  '555-0119',
  'gate code 4471',
  'behind the blue bin',
  'beware of the goose',
];

const kitchen = (proposal = 'site sheet: net-loft') =>
  supperKitchen({
    ...changed('proposals/pell-supper.md', 'place: hill-town\n', `place: hill-town\n${proposal}\n`),
    [SHEET]: `name: The Net Loft
address: 4 Chandler Row
power: two 20 A circuits
water: no
ovens: one household oven
way in: gate code 4471
parking: behind the blue bin
contact: Ysolde Quarrender
phone: 555-0119
more: { animals: beware of the goose }
`,
  });

async function inputOf(dir: string) {
  const input = eventInputOf(await bookOf(dir), EVENT);
  if (!input.ok) throw new Error(input.what);
  return input.value;
}

describe('a proposal that names a site sheet', () => {
  test('freezes the place’s name and address into its offer, and nothing else of the sheet', async () => {
    const dir = await kitchen();
    const text = readFileSync(join(dir, 'offers/pell-supper-r1.json'), 'utf8');
    expect(JSON.parse(text).venue).toEqual({ name: 'The Net Loft', address: '4 Chandler Row' });
    for (const secret of SECRETS) expect(text).not.toContain(secret);
  });

  test('tells nothing else of it on anything that is deployed', async () => {
    const dir = await kitchen();
    const out = mkdtempSync(join(tmpdir(), 'salver-site-sheet-'));
    onTestFinished(() => rmSync(out, { recursive: true, force: true }));
    const { code } = await salver([
      'build',
      '--no-pdf',
      '--content',
      dir,
      '--out',
      out,
      '--today',
      '2027-04-15',
    ]);
    expect(code).toBe(0);
    const textsIn = (side: string) =>
      readdirSync(join(out, side), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && /\.(html|json|js|txt)$/.test(entry.name))
        .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'))
        .join('\n');
    const deployed = textsIn('public');
    expect(deployed).toContain('The Net Loft');
    for (const secret of SECRETS) {
      expect(deployed).not.toContain(secret);
      expect(textsIn('private')).toContain(secret);
    }
  });

  test('is planned with what the sheet says, and what the proposal states wins', async () => {
    expect((await inputOf(await kitchen())).venueKit).toMatchObject({ water: false, ovens: 1 });
    const dir = await kitchen('site sheet: net-loft\nvenue: { water: "yes, the hose is laid for us" }');
    const { venueKit, venue } = await inputOf(dir);
    expect(venueKit).toMatchObject({ water: true, ovens: 1, circuits: [{ count: 2, amperes: 20 }] });
    expect(venue.get('water')).toBe('yes, the hose is laid for us');
    expect(venue.get('contact')).toBe('Ysolde Quarrender');
  });

  test('goes by the sheet as it is now, not as it was when the offer was issued', async () => {
    const dir = await kitchen();
    const text = readFileSync(join(dir, SHEET), 'utf8');
    writeFileSync(join(dir, SHEET), text.replace('water: no', 'water: yes'));
    expect((await inputOf(dir)).venueKit?.water).toBe(true);
  });
});

describe('what check says of site sheets', () => {
  const notes = async (dir: string, today: string) =>
    findingsOn(await bookOf(dir), today as Day)
      .filter(({ code }) => code === 'site-not-asked')
      .map(({ place, what }) => `${place.file} ${what}`);

  test('what a coming event depends on and nobody has asked, and nothing once it is over', async () => {
    const dir = await kitchen('site sheet: net-loft\nvenue: { stairs: none }');
    const file = join(dir, SHEET);
    writeFileSync(file, readFileSync(file, 'utf8').replace(/^(parking|phone): .*\n/gm, ''));
    expect(await notes(dir, '2027-05-15')).toEqual([
      'site-sheets/net-loft.yaml nobody has asked about parking, phone at The Net Loft, where pell-supper takes place on 2027-05-15',
    ]);
    expect(await notes(dir, '2027-05-16')).toEqual([]);
  });

  test('of what kit goes by only where the kitchen takes such kit along', async () => {
    const dir = await kitchen();
    expect(await notes(dir, '2027-05-15')).toEqual([]);
    const file = join(dir, 'kitchen.yaml');
    writeFileSync(
      file,
      `${readFileSync(file, 'utf8')}kit:\n  canopy: { amount: 1 per event, if: no cover }\n`,
    );
    expect(await notes(dir, '2027-05-15')).toEqual([
      'site-sheets/net-loft.yaml nobody has asked about cover at The Net Loft, where pell-supper takes place on 2027-05-15',
    ]);
  });
});
