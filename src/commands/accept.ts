import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { text as textOf } from 'node:stream/consumers';
import { type Parsed, parsed } from '../engine/parsed.ts';
import { checkChoice } from '../engine/quote/choice.ts';
import { factFile, takeAcceptance } from '../offers/accept.ts';
import { depositDue } from '../offers/deposit-due.ts';
import { eventStatus } from '../offers/event-status.ts';
import { makeAcceptance } from '../offers/make-acceptance.ts';
import { standingTerms } from '../offers/standing-terms.ts';
import { writeOnce } from '../offers/write-once.ts';
import { acceptanceSchema } from '../schema/acceptance.ts';
import { guestsText, shown } from '../views/quote-view-of.ts';
import { CHOICE_OPTIONS, choiceFromFlags, misfit } from './choice-flags.ts';
import { type Call, type Command, wrongCall } from './command.ts';
import { type OpenBook, openBook } from './open-book.ts';
import { refused } from './refused.ts';

const signatureSchema = acceptanceSchema.pick({ name: true, email: true, note: true, accepted: true });
const USAGE = 'Give one acceptance file, or - to read it from standard input: accept FILE.';

/** Takes a client's acceptance and begins the event: accepted, not yet confirmed. */
export const command: Command = {
  summary: 'take a client’s acceptance and begin the event',
  usage: 'FILE|-   or   --signed PROPOSAL --name NAME --email ADDRESS [--adults N] …',
  options: {
    signed: { type: 'string', summary: 'the offer of this proposal was signed on paper', value: 'PROPOSAL' },
    name: { type: 'string', summary: 'who signed', value: 'NAME' },
    email: { type: 'string', summary: 'where to answer', value: 'ADDRESS' },
    on: { type: 'string', summary: 'the day of the signature, today if not said', value: 'DATE' },
    note: { type: 'string', summary: 'what the client added', value: 'TEXT' },
    ...CHOICE_OPTIONS,
  },
  async run(call) {
    const { signed } = call.flags;
    if (typeof signed === 'string' ? call.args.length > 0 : call.args.length !== 1)
      return wrongCall(call, USAGE);
    const [stray] = typeof signed === 'string' ? [] : Object.keys(call.flags);
    if (stray !== undefined)
      return wrongCall(call, `An acceptance file says all itself, so --${stray} goes with --signed only.`);
    const open = await openBook(call);
    if (!open) return 1;
    const text = typeof signed === 'string' ? signedText(call, open, signed) : await givenText(call);
    if (typeof text === 'number') return text;
    if (!text.ok) return refused(call, text);
    const taken = takeAcceptance(open.book, text.value, open.today);
    if (!taken.ok) return refused(call, taken);
    const fact = taken.value;
    if (!(await writeOnce(factFile(call.contentDir, fact.proposal, 1, 'accepted'), fact)))
      return refused(call, {
        what: `${fact.proposal} has just been accepted already`,
        wayOut: 'nothing is left to do',
      });
    const offer = open.book.offers.get(fact.proposal)?.find((each) => each.digest === fact.digest);
    if (call.json) call.write(JSON.stringify(fact, null, 2));
    else if (offer) {
      const { total } = fact.acceptance;
      const deposit = depositDue(offer, eventStatus(offer, [fact]));
      call.write(
        `Accepted: ${fact.proposal}, ${guestsText(fact.acceptance.choice)}, ${shown(total, offer.terms)}.`,
      );
      call.write(
        deposit
          ? `The date is held. It is confirmed when the deposit of ${shown(deposit.amount.toFixed(), offer.terms)} is in: confirm ${fact.proposal}.`
          : `The date is held. No deposit is asked for; confirm ${fact.proposal} --received with what came in.`,
      );
    }
    return 0;
  },
};

async function givenText(call: Call): Promise<Parsed<string> | number> {
  const [file = '-'] = call.args;
  if (file === '-') return parsed(await textOf(process.stdin));
  const { INIT_CWD: callerDir = process.cwd() } = process.env;
  try {
    return parsed(await readFile(resolve(callerDir, file), 'utf8'));
  } catch {
    return wrongCall(call, `There is no file ${file} that can be read.`);
  }
}

function signedText(call: Call, { book, today }: OpenBook, proposal: string): Parsed<string> | number {
  const { name, email, note = '', on = today } = call.flags;
  if (name === undefined || email === undefined)
    return wrongCall(call, 'Say who signed: --name NAME --email ADDRESS.');
  const said = { name, email, note, accepted: on };
  const signature = signatureSchema.safeParse(said);
  const issue = signature.error?.issues[0];
  if (issue) {
    const flag = issue.path[0] === 'accepted' ? 'on' : String(issue.path[0]);
    return wrongCall(call, `--${flag}: ${issue.message}.`);
  }
  const standing = standingTerms(book, proposal);
  if (!standing.ok) return standing;
  const { terms, offer, choices } = standing.value;
  if (!offer)
    return { ok: false, what: `${proposal} has not been issued`, wayOut: `run issue ${proposal} first` };
  const choice = choiceFromFlags(terms, choices, call.flags);
  if (!choice.ok) return choice;
  const [problem] = checkChoice(terms, choice.value);
  if (problem) return { ok: false, ...misfit(problem) };
  return parsed(JSON.stringify(makeAcceptance(offer, choice.value, signatureSchema.parse(said))));
}
