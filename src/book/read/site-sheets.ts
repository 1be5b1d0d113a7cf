import type { SiteSheet } from '../../engine/menu/site-sheet.ts';
import { siteSheetSchema } from '../../schema/site-sheet.ts';
import type { ContentText } from '../files/content-texts.ts';
import { hold, type Ledger } from '../ledger.ts';
import { readForm } from '../link/grammar/form.ts';
import { readItem } from '../link/grammar/reading.ts';
import { linkSiteSheet } from '../link/proposal/site-sheet.ts';

/** Reads all site sheets, a place in each file. One with an error holds back the proposals that name it. */
export function readSiteSheets(
  ledger: Ledger,
  files: readonly ContentText[],
  pictures: ReadonlySet<string>,
): Map<string, SiteSheet> {
  const sheets = new Map<string, SiteSheet>();
  for (const { id, file, text } of files) {
    const item = `site-sheet/${id}` as const;
    const read = text === undefined ? undefined : ledger.yaml(file, text);
    ledger.findings.push(...(read?.findings ?? []));
    const source = read?.source;
    if (!source) {
      hold(ledger, item, `${file} can’t be read`);
      continue;
    }
    const sheet = readItem(ledger, item, { source, base: [] }, (reading) => {
      const error = read.findings.find((each) => each.severity === 'error');
      if (error) reading.spoil(`${error.what} (${file}:${error.place.line})`);
      const form = readForm(reading, siteSheetSchema, source.data);
      return form && linkSiteSheet(reading, id, form, pictures);
    });
    if (sheet) sheets.set(id, sheet);
  }
  return sheets;
}
