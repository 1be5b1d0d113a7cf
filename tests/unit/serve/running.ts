import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { LIMITS, type Limits } from '../../../src/serve/limits.ts';
import { serveSites } from '../../../src/serve/serve-sites.ts';
import { ACCEPTED } from '../../commands/accepted-kitchen.ts';

/** The link of the page that the small output has. */
export const LINK = 'mk4vxr2hq7tz3cwnb6ylpaj5ge';

const FILES: Readonly<Record<string, string>> = {
  [`public/proposals/${LINK}/index.html`]: '<!doctype html><title>Supper</title>',
  [`public/proposals/${LINK}/proposal.pdf`]: '%PDF-1.7 a paper',
  'public/_astro/page.Ab12.css': 'body {}',
  'public/_astro/page.Ab12.js.map': '{"sourcesContent":["secret source"]}',
  'public/.hidden': 'secret dot',
  'public/.well-known/x.txt': 'secret dot folder',
  'public/robots.txt': 'User-agent: *\nDisallow: /\n',
  'private/kitchen/index.html': '<!doctype html><title>secret kitchen</title>',
  'private/kitchen/events/gale/shopping.csv': 'secret,list\n',
  '.salver-build.json': '{"secret":"record"}',
};

/** An output folder as `build` leaves one, each private word in it called secret. It goes with the test. */
export function smallOutput(): string {
  const dir = mkdtempSync(join(tmpdir(), 'salver-dist-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  writeSmallOutput(dir);
  return dir;
}

/** The same in a folder of the test's own. */
export function writeSmallOutput(dir: string): void {
  for (const [file, text] of Object.entries(FILES)) {
    mkdirSync(dirname(join(dir, file)), { recursive: true });
    writeFileSync(join(dir, file), text);
  }
}

/** Both servers over the small output and a content folder, stopped when the test ends. */
export async function running(
  contentDir: string,
  {
    outDir = smallOutput(),
    site,
    limits,
    today = ACCEPTED,
  }: { outDir?: string; site?: string; limits?: Partial<Limits>; today?: string } = {},
) {
  const said: string[] = [];
  const sites = await serveSites({
    outDir,
    contentDir,
    site,
    locale: 'en-GB',
    host: '127.0.0.1',
    port: 0,
    privatePort: 0,
    today: () => today as Day,
    say: (sentence) => said.push(sentence),
    limits: { ...LIMITS, ...limits },
  });
  onTestFinished(() => sites.close());
  return {
    ...sites,
    said,
    port: Number(new URL(sites.publicUrl).port),
    privatePort: Number(new URL(sites.privateUrl).port),
  };
}

/** Posts a text to the receiver; the answer with its JSON. */
export async function post(
  publicUrl: string,
  body: string,
  headers: Readonly<Record<string, string>> = { 'content-type': 'application/json' },
): Promise<{ status: number; json: Record<string, unknown>; headers: Headers }> {
  const answer = await fetch(new URL('acceptances', publicUrl), { method: 'POST', body, headers });
  const text = await answer.text();
  return { status: answer.status, json: text === '' ? {} : JSON.parse(text), headers: answer.headers };
}
