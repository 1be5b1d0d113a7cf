import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { parseDay } from '../engine/calendar/day.ts';
import type { PageView } from '../views/page-view.ts';
import type { Site, SiteContent, SiteFile } from '../views/site.ts';
import { brandFiles } from './brand-files.ts';
import { digestOfBodies, fillBodies } from './mirror-bodies.ts';
import { type KeptBetween, keepBetween, readSite } from './read-site.ts';

/** What is at a path while developing: a page's view, a finished file, or nothing. */
export type DevAnswer = { view: PageView } | { file: SiteFile } | undefined;

let last: { stamp: string; site: Site; bodies: string } | undefined;
let kept: Promise<KeptBetween> | undefined;

/**
 * What is at a path of either site, or of the papers under `/print/`, by the content as it is now. The content is
 * read again when one of its files has changed since the last answer.
 */
export async function devAnswer(pathname: string): Promise<DevAnswer> {
  const site = await currentSite();
  // Nobody who looks at a proposal waits for the kitchen's plans.
  return (
    answerIn({ ...site, files: [...site.files, ...brandFiles(site)] }, pathname) ??
    (site.part && answerIn(await site.part.make(), pathname))
  );
}

function answerIn({ pages, prints, files }: SiteContent, pathname: string): DevAnswer {
  const page = [...pages, ...prints].find(({ route }) => route === pathname);
  if (page) return { view: page.view };
  const file = files.find((each) => each.file.replace(/^(?:public|private)/, '') === pathname);
  return file && { file };
}

async function currentSite(): Promise<Site> {
  const { contentDir, bodiesDir, dayIn } = settings();
  const stamp = stampOf(contentDir);
  if (last?.stamp === stamp) return last.site;
  kept ??= keepBetween();
  const { findings, shown } = await readSite(contentDir, dayIn, await kept);
  if (!shown)
    throw new Error(findings.map(({ place, what }) => `${place.file}:${place.line} ${what}`).join('; '));
  const bodies = digestOfBodies(shown.bodies);
  if (last?.bodies !== bodies) await fillBodies(bodiesDir, shown.bodies);
  last = { stamp, site: shown.site, bodies };
  return shown.site;
}

/** What the `dev` command was called with, handed on through the environment. */
function settings() {
  const { SALVER_CONTENT, SALVER_BODIES, SALVER_TODAY } = process.env;
  const day = parseDay(SALVER_TODAY ?? '');
  if (!SALVER_CONTENT || !SALVER_BODIES || !day.ok) throw new Error('start the pages with `npm run dev`');
  return { contentDir: SALVER_CONTENT, bodiesDir: SALVER_BODIES, dayIn: () => day.value };
}

/** Changes when any file of the content does. Asked at once, since waiting for each answer takes longer than to give it. */
function stampOf(folder: string): string {
  const facts = readdirSync(folder, { recursive: true, withFileTypes: true }).flatMap((entry) => {
    if (!entry.isFile()) return [];
    const file = join(entry.parentPath, entry.name);
    // One that an editor has just moved away is not there any more.
    const found = statSync(file, { throwIfNoEntry: false });
    return found ? [`${file} ${found.mtimeMs} ${found.size}`] : [];
  });
  return facts.sort().join('\n');
}
