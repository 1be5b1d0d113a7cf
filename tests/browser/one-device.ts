import type { Browser, BrowserContext } from 'playwright';

/**
 * A device for each browser, made when it is first asked for, whose windows follow each other: a new device reads fonts
 * and starts processes anew, which takes more than most pages do. Each window begins with nothing kept, and keeps what is
 * typed from then on, after a reload too; what is set for a page, such as an address that it answers, goes with it.
 */
export function oneDevice(): (browser: Browser) => Promise<BrowserContext> {
  const devices = new WeakMap<Browser, Promise<BrowserContext>>();
  return (browser) => {
    const known = devices.get(browser) ?? makeDevice(browser);
    devices.set(browser, known);
    return known;
  };
}

async function makeDevice(browser: Browser): Promise<BrowserContext> {
  const device = await browser.newContext();
  // A window's own store outlives a reload, and no other window sees it.
  await device.addInitScript(() => {
    if (location.protocol === 'about:' || sessionStorage.getItem('begun')) return;
    localStorage.clear();
    sessionStorage.setItem('begun', 'yes');
  });
  return device;
}
