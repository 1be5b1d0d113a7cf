import type { Recipe } from '../../engine/food/recipe.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { Package } from '../../engine/menu/package.ts';
import { packageSchema } from '../../schema/package.ts';
import { checkText } from '../bodies/text.ts';
import type { ContentText } from '../files/content-texts.ts';
import type { Ledger } from '../ledger.ts';
import { readItem } from '../link/grammar/reading.ts';
import { linkPackage } from '../link/menu/package.ts';
import { readDataAndBody } from './data-and-body.ts';

/** The packages and their stories. A story with an error holds its package back: an offer freezes it. */
export interface ReadPackages {
  readonly packages: Map<string, Package>;
  readonly bodies: Map<string, string>;
}

/** Reads all packages. */
export function readPackages(
  ledger: Ledger,
  files: readonly ContentText[],
  pictures: ReadonlySet<string>,
  kitchen: Pick<Kitchen, 'currency' | 'locale'>,
  recipes: ReadonlyMap<string, Recipe>,
  addOns: ReadonlyMap<string, unknown>,
): ReadPackages {
  const packages = new Map<string, Package>();
  const bodies = new Map<string, string>();
  for (const file of files) {
    const item = `package/${file.id}` as const;
    const written = readDataAndBody(ledger, item, file, packageSchema);
    if (!written) continue;
    const linked = readItem(ledger, item, written.spot, (reading) => {
      const findings = checkText(file.file, written.body, 'mdx', pictures);
      ledger.findings.push(...findings);
      const error = findings.find((each) => each.severity === 'error');
      if (error) reading.spoil(`${error.what} (${file.file}:${error.place.line})`);
      return linkPackage(reading, file.id, written.text, kitchen, recipes, addOns);
    });
    if (!linked) continue;
    packages.set(file.id, linked);
    bodies.set(file.id, written.body.text);
  }
  return { packages, bodies };
}
