import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { compileApp } from '../../src/build/compile-app.ts';
import { mirrorBodies } from '../../src/build/mirror-bodies.ts';
import { projectDir } from '../../src/build/project-dir.ts';
import { readSite } from '../../src/build/read-site.ts';
import { openRenderer, type Renderer } from '../../src/build/renderer.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import type { SiteContent } from '../../src/views/site.ts';
import { whole } from '../unit/views/whole-site.ts';

/** What a page has for people: neither its scripts with their data nor its styles, but texts of attributes too. */
function forPeople(html: string): string {
  return html.replace(/<(script|style)\b[\s\S]*?<\/\1>/g, '');
}

describe('a sum on the demo’s pages and papers', () => {
  let site: SiteContent;
  let renderer: Renderer;

  beforeAll(async () => {
    const { shown } = await readSite(join(projectDir, 'content'), () => '2027-04-26' as Day);
    if (!shown) throw new Error('the demo’s content cannot be read');
    const app = await compileApp(projectDir, await mirrorBodies(projectDir, shown.bodies), () => undefined);
    renderer = await openRenderer(app, { pdfs: true });
    site = await whole(shown.site);
  });

  test('is written with the symbol of its currency, which no page names by its code', async () => {
    const named: string[] = [];
    let dollars = 0;
    for (const { file, route, view } of [...site.pages, ...site.prints]) {
      const words = forPeople(await renderer.render(route, JSON.stringify(view)));
      dollars += words.split(/\$\d/).length - 1;
      for (const [found] of words.matchAll(/.{0,40}\bUSD\b.{0,20}/g)) named.push(`${file}: ${found}`);
    }
    expect(named).toEqual([]);
    expect(dollars).toBeGreaterThan(1000);
  });
});
