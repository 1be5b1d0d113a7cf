import { chromium } from 'playwright';
import { installBrowser, noBrowserToBeHad, thisMachine } from '../print/install-browser.ts';
import type { Command } from './call/command.ts';

export const command: Command = {
  summary: 'install what printing and testing need: a Chromium',
  usage: '',
  options: {},
  async run(call) {
    const browser = await installBrowser(thisMachine(call.complain));
    if (!browser) {
      call.complain(noBrowserToBeHad);
      return 1;
    }
    const program = await chromium.launch({ executablePath: browser.path });
    const version = program.version();
    await program.close();
    if (call.json) call.write(JSON.stringify({ ...browser, version }));
    else
      call.write(
        `Chromium ${version} is ready (${browser.from === 'playwright' ? 'Playwright’s own' : browser.path}).`,
      );
    return 0;
  },
};
