import { readSite } from '../../src/build/read-site.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { whole } from '../unit/views/whole-site.ts';

// Prints the seconds of the processor that reading, checking and computing a content folder take, without starting up
// or rendering.
const [, , content = '', today = ''] = process.argv;
// All views too: what is planned and priced for a page is computing.
const began = process.cpuUsage();
const { shown } = await readSite(content, () => today as Day);
if (!shown) throw new Error(`${content} can’t be read`);
for (const page of (await whole(shown.site)).pages) void page.view;
const { user, system } = process.cpuUsage(began);
process.stdout.write(String((user + system) / 1e6));
