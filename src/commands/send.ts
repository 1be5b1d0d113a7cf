import { join, relative, resolve } from 'node:path';
import { projectDir } from '../build/project-dir.ts';
import { isWithin } from '../build/separate-folders.ts';
import { builtPage } from '../mail/built-page.ts';
import { isAddress, mailDraft } from '../mail/mail-draft.ts';
import { offerLetter } from '../mail/offer-letter.ts';
import { toBeSent } from '../mail/to-be-sent.ts';
import { draftsFolder, writeDraft } from '../mail/write-draft.ts';
import { proposalAddress } from '../offers/issue/proposal-address.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';

/** Prints a proposal's address and writes a mail that brings it to the client. */
export const command: Command = {
  summary: 'print a proposal’s link and write an email draft with it',
  usage: 'PROPOSAL [--draft FILE]',
  options: {
    draft: {
      type: 'string',
      value: 'FILE',
      summary: 'where the draft goes (default: Salver’s drafts/<proposal>-r<revision>.eml)',
    },
  },
  async run(call) {
    const [id, ...more] = call.args;
    if (id === undefined || more.length > 0) return wrongCall(call, 'Name one proposal: send PROPOSAL.');
    const open = await openBook(call);
    if (!open) return 1;
    const found = toBeSent(open.book, id, open.today);
    if (!found.ok) return refused(call, found);
    const { content, digest, name, kind } = found.value;
    const { site, email } = open.book.kitchen;
    if (site === undefined)
      return refused(call, {
        what: 'kitchen.yaml does not give the address of your site',
        wayOut: 'add `site: https://…` to it',
      });
    const wrong = [email, content.client.email].find((each) => each !== undefined && !isAddress(each));
    if (wrong !== undefined)
      return refused(call, {
        what: `“${wrong}” is not an email address`,
        wayOut: `fix it in ${wrong === email ? 'kitchen.yaml' : `proposals/${id}.md`}`,
      });
    const built = await builtPage(join(call.outDir, 'public', 'proposals', content.link), id, digest);
    if (!built.ok) return refused(call, built);
    const { pdf } = built.value;
    const address = proposalAddress(site, content.link);
    const draft = await mailDraft({
      ...offerLetter(content, { kind, address, withPdf: pdf !== undefined }),
      from: email === undefined ? undefined : { name: content.kitchen.name, address: email },
      to:
        content.client.email === undefined
          ? undefined
          : { name: content.client.name, address: content.client.email },
      attachment: pdf && { name: `${name}.pdf`, pdf },
      day: open.today,
      id: `${name}-${digest.slice(0, 16)}@${new URL(site).hostname}`,
    });
    const { INIT_CWD: callerDir = process.cwd() } = process.env;
    const { draft: wanted } = call.flags;
    const file =
      wanted === undefined
        ? join(await draftsFolder(projectDir), `${name}.eml`)
        : resolve(callerDir, String(wanted));
    if (isWithin(file, call.contentDir))
      return refused(call, {
        what: `${file} is inside the content folder, where a draft with the client’s address would be backed up and shared with it`,
        wayOut: 'leave out --draft, or put the file somewhere else',
      });
    const written = await writeDraft(file, draft);
    if (!written.ok) return refused(call, written);
    const shownFile = relative(callerDir, file);
    if (call.json) call.write(JSON.stringify({ link: address, draft: shownFile, pdf: pdf !== undefined }));
    else {
      call.write(address);
      call.write(`Email draft: ${shownFile}${pdf ? ', with the PDF' : ''}`);
    }
    if (!pdf) call.complain('There is no PDF yet; run build without --no-pdf, then send again.');
    if (content.client.email === undefined)
      call.complain(
        `The proposal has no email address for ${content.client.name}; fill it in before you send the draft.`,
      );
    return 0;
  },
};
