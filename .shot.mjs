import { chromium } from 'playwright';
const [, , url, sel, out, w = '1280', h = '900', date] = process.argv;
const b = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const page = await b.newPage({ viewport: { width: Number(w), height: Number(h) } });
if (date) await page.clock.install({ time: new Date(date) });
await page.goto('file://' + url);
await page.waitForTimeout(500);
await page.locator(sel).first().screenshot({ path: out });
await b.close();
