import type { Recipe } from '../../engine/food/recipe.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { Package } from '../../engine/menu/package.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';
import type { SiteSheet } from '../../engine/menu/site-sheet.ts';
import { proposalSchema } from '../../schema/proposal.ts';
import { checkText } from '../bodies/text.ts';
import type { ContentText } from '../files/content-texts.ts';
import { finding } from '../findings/finding.ts';
import { hold, type Ledger, placeIn } from '../ledger.ts';
import { readItem } from '../link/grammar/reading.ts';
import { linkProposal } from '../link/proposal/proposal.ts';
import { readDataAndBody } from './data-and-body.ts';

/** Reads all proposals. Two with one address are both held back: neither client must see the other's. */
export function readProposals(
  ledger: Ledger,
  files: readonly ContentText[],
  pictures: ReadonlySet<string>,
  kitchen: Kitchen,
  packages: ReadonlyMap<string, Package>,
  recipes: ReadonlyMap<string, Recipe>,
  siteSheets: ReadonlyMap<string, SiteSheet>,
): Map<string, Proposal> {
  const proposals = new Map<string, Proposal>();
  const firstWith = new Map<string, string>();
  for (const file of files) {
    const item = `proposal/${file.id}` as const;
    const written = readDataAndBody(ledger, item, file, proposalSchema);
    if (!written) continue;
    const linked = readItem(ledger, item, written.spot, (reading) => {
      for (const role of ledger.held.keys()) if (role.startsWith('staff/')) reading.restOn(role);
      const findings = checkText(file.file, written.body, 'markdown', pictures);
      ledger.findings.push(...findings);
      const error = findings.find((each) => each.severity === 'error');
      if (error) reading.spoil(`${error.what} (${file.file}:${error.place.line})`);
      return linkProposal(
        reading,
        file.id,
        written.text,
        written.body.text.trim(),
        kitchen,
        packages,
        recipes,
        siteSheets,
      );
    });
    if (linked) proposals.set(file.id, linked);
    const earlier = firstWith.get(written.text.link);
    if (earlier === undefined) firstWith.set(written.text.link, file.id);
    else {
      tellTwice(ledger, earlier, file.id);
      tellTwice(ledger, file.id, earlier);
      proposals.delete(earlier);
      proposals.delete(file.id);
    }
  }
  return proposals;
}

function tellTwice(ledger: Ledger, id: string, other: string): void {
  const item = `proposal/${id}` as const;
  const place = placeIn(ledger, item, ['link']);
  const what = `proposals ${id} and ${other} have the same link`;
  if (place) {
    const wayOut = 'keep it in the proposal that was sent, and make a new one for the other';
    const isTold = ledger.findings.some(
      (each) => each.code === 'link-used-twice' && each.place.file === place.file,
    );
    if (!isTold) ledger.findings.push(finding('link-used-twice', place, what, wayOut));
  }
  hold(ledger, item, what);
}
