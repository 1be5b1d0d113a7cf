import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright';

/** A Chromium on this machine. */
export interface Browser {
  /** Absolute path of the program. */
  path: string;
  /** Who put it there. */
  from: 'playwright' | 'system';
}

/** Names under which systems keep a Chromium in the search path. */
const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** Where systems that do not use the search path for programs with windows keep one. */
const places: Partial<Record<NodeJS.Platform, string[]>> = {
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  ],
};

/**
 * The Chromium that prints and tests: Playwright's own, which it is known to work with, else the system's.
 * None: undefined. Only looks, never fetches.
 */
export function findBrowser(
  own: string = chromium.executablePath(),
  { PATH: searchPath = '' }: { PATH?: string } = process.env,
): Browser | undefined {
  if (isProgram(own)) return { path: own, from: 'playwright' };
  const folders = searchPath.split(delimiter).filter((folder) => folder !== '');
  const candidates = [
    ...names.flatMap((name) => folders.map((folder) => join(folder, name))),
    ...(places[process.platform] ?? []),
  ];
  const path = candidates.find(isProgram);
  return path === undefined ? undefined : { path, from: 'system' };
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
