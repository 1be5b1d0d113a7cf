import { readSite } from '../../src/build/read-site.ts';
import type { Day } from '../../src/engine/calendar/day.ts';

// Prints the seconds that reading, checking and computing a content folder take, without starting up or rendering.
const [, , content = '', today = ''] = process.argv;
const began = performance.now();
const { shown } = await readSite(content, () => today as Day);
if (!shown) throw new Error(`${content} cannot be read`);
process.stdout.write(String((performance.now() - began) / 1000));
