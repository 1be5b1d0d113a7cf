import { basename, join } from 'node:path';
import { shortDigest } from '../offers/digest.ts';
import { unknownProposal } from '../offers/issue/current-terms.ts';
import { nextOffer, offerFile } from '../offers/issue/issue.ts';
import { writeOnce } from '../offers/write-once.ts';
import { shown } from '../views/quote-view-of.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';
import { contentFolder } from './call/say-findings.ts';

/** Freezes a proposal's terms as the next revision of its offer. */
export const command: Command = {
  summary: 'freeze a proposal as the next revision of an offer',
  usage: 'PROPOSAL',
  options: {},
  async run(call) {
    const [id, ...more] = call.args;
    if (id === undefined || more.length > 0) return wrongCall(call, 'Name one proposal: issue PROPOSAL.');
    const open = await openBook(call);
    if (!open) return 1;
    const proposal = open.book.proposals.get(id);
    if (!proposal) {
      const unknown = unknownProposal(open.book, id);
      return unknown.ok ? 1 : refused(call, unknown);
    }
    const next = nextOffer(open.book, proposal, open.today);
    if (!next.ok) return refused(call, next);
    const offer = next.value;
    const file = offerFile(call.contentDir, offer);
    if (!(await writeOnce(file, offer)))
      return refused(call, {
        what: `someone else has just issued revision ${offer.revision} of ${id}`,
        wayOut: 'run issue again to see whether there is still anything to issue',
      });
    if (call.json) {
      call.write(JSON.stringify(offer, null, 2));
      return 0;
    }
    call.write(`Issued ${id}, revision ${offer.revision}, valid until ${offer.validUntil}.`);
    call.write(
      `Total as proposed ${shown(offer.samples[0]?.total ?? '0', offer.terms)}, reference ${shortDigest(offer.digest)}.`,
    );
    call.write(
      `Written to ${join(contentFolder(call), 'offers', basename(file))}. Run build to publish its page.`,
    );
    return 0;
  },
};
