/**
 * Scripts come out of the bundler as modules, which a browser does not load for a page opened as a file. One that
 * neither imports nor exports works as a plain script as well: wrapped, so that its names stay its own, and run after
 * the page is read, as a module is.
 */
export function classicScript(text: string, name: string): string {
  if (/(?:^|[;}\s])(?:import|export)\s*(?:[{*"'(]|\w+\s+from\b)/.test(text))
    throw new Error(
      `the script ${name} is in parts, and a page opened as a file can’t load them; give the page one script`,
    );
  return `(()=>{"use strict";${text}\n})();\n`;
}
