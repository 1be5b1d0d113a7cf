import type { Book } from '../book/book.ts';
import { type Parsed, parsed } from '../engine/parsed.ts';
import { checkChoice } from '../engine/quote/choice.ts';
import { textProblem, tidyLine, tidyText } from '../engine/text/visible-text.ts';
import { statementsIn } from '../exports/words/statement-text.ts';
import { readAcceptance, takeAcceptance } from '../offers/answers/accept.ts';
import { answerDifferences } from '../offers/answers/answer-differences.ts';
import { readClientAnswer } from '../offers/answers/client-answer.ts';
import { inboxPath } from '../offers/answers/inbox.ts';
import { makeAcceptance } from '../offers/answers/make-acceptance.ts';
import { depositDue } from '../offers/event/deposit-due.ts';
import { factFile } from '../offers/event/fact-file.ts';
import { eventStatus } from '../offers/event/status.ts';
import { currentTerms } from '../offers/issue/current-terms.ts';
import { textRefusal } from '../offers/text-refusal.ts';
import { writeOnce } from '../offers/write-once.ts';
import { acceptanceSchema } from '../schema/acceptance.ts';
import { takenBy } from '../schema/client-answer.ts';
import { guestsText, shown } from '../views/quote-view-of.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import { type AnswerFile, putAway, putAwayTakenBefore, readAnswerFile } from './call/answer-file.ts';
import { CHOICE_OPTIONS, choiceFromFlags, misfit } from './call/choice-flags.ts';
import { type Call, type Command, wrongCall } from './call/command.ts';
import { type OpenBook, openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';
import { sayWaiting } from './call/say-waiting.ts';
import { worded } from './text/worded.ts';

const signatureSchema = acceptanceSchema.pick({ name: true, email: true, note: true, accepted: true });
const USAGE = 'Give one acceptance file, or - to read it from standard input: accept FILE.';

/** Takes a client's acceptance and begins the event: accepted, not yet confirmed. */
export const command: Command = {
  summary: 'record a client’s acceptance and open the event',
  usage: 'FILE|-   or   --inbox [NAME]   or   --signed PROPOSAL --name NAME --email ADDRESS [--adults N] …',
  options: {
    inbox: { type: 'boolean', summary: 'list the answers waiting in the inbox, or accept NAME' },
    signed: { type: 'string', summary: 'this proposal’s offer was signed on paper', value: 'PROPOSAL' },
    name: { type: 'string', summary: 'who signed', value: 'NAME' },
    email: { type: 'string', summary: 'where to answer', value: 'ADDRESS' },
    on: { type: 'string', summary: 'the day it was signed (default: today)', value: 'DATE' },
    note: { type: 'string', summary: 'what the client added', value: 'TEXT' },
    ...CHOICE_OPTIONS,
    'drop-needs': {
      type: 'boolean',
      summary: 'accept it without a need that was proposed; you asked the client',
    },
  },
  async run(call) {
    const { signed, inbox, 'drop-needs': drop, ...others } = call.flags;
    const lists = inbox === true && call.args.length === 0 && signed === undefined;
    if (!lists && (typeof signed === 'string' ? call.args.length > 0 || inbox : call.args.length !== 1))
      return wrongCall(call, USAGE);
    const [stray] = typeof signed === 'string' ? [] : Object.keys(others);
    if (stray !== undefined)
      return wrongCall(
        call,
        `An acceptance file is complete in itself, so --${stray} goes only with --signed.`,
      );
    const open = await openBook(call);
    if (!open) return 1;
    if (lists) return sayWaiting(call, open);
    const given = typeof signed === 'string' ? signedText(call, open, signed) : await givenFile(call);
    if (typeof given === 'number') return given;
    if (!given.ok) return refused(call, given);
    const file = given.value;
    // What was signed on paper the owner enters, flag by flag.
    const dropNeeds = drop === true || typeof signed === 'string';
    const { locale } = open.book.kitchen;
    const taken = worded(takeAcceptance(open.book, file.text, open.today, { dropNeeds }), locale);
    if (!taken.ok) {
      // Stopped between recording and moving it, an earlier run left it here.
      if (file.waits === undefined || !isRecorded(open.book, file.text))
        return refused(call, otherAnswer(call, file.text) ?? taken);
      return putAwayTakenBefore(call, file);
    }
    const fact = taken.value;
    if (!(await writeOnce(factFile(call.contentDir, fact.proposal, 1, 'accepted'), fact)))
      return refused(call, {
        what: `${fact.proposal} has just been accepted by someone else`,
        wayOut: 'nothing more to do',
      });
    await putAway(file);
    const offer = open.book.offers.get(fact.proposal)?.find((each) => each.digest === fact.digest);
    if (call.json) call.write(JSON.stringify(fact, null, 2));
    else if (offer) {
      const { total } = fact.acceptance;
      const deposit = depositDue(offer, eventStatus(offer, [fact]));
      call.write(
        `Accepted: ${fact.proposal}, ${guestsText(scriptWordsIn(offer.terms.locale), fact.acceptance.choice)}, ${shown(total, offer.terms)}.`,
      );
      const differing = answerDifferences(offer.terms, offer.proposed, fact.acceptance.choice, 'proposed');
      if (differing.length > 0)
        call.write(`Differs from the proposal:\n${differing.map((each) => `  ${each}`).join('\n')}`);
      call.write(
        deposit
          ? `The date is on hold. When the deposit of ${shown(deposit.amount.toFixed(), offer.terms)} is in, run: confirm ${fact.proposal}.`
          : `The date is on hold. No deposit is due; run: confirm ${fact.proposal} --received AMOUNT.`,
      );
    }
    return 0;
  },
};

/** The file that is meant, from where the caller stands or in the inbox. */
async function givenFile(call: Call): Promise<Parsed<AnswerFile> | number> {
  const [word = '-'] = call.args;
  const path = call.flags.inbox === true ? inboxPath(call.contentDir, word) : word;
  const file = await readAnswerFile(call, path, word);
  return typeof file === 'string' ? wrongCall(call, file) : parsed(file);
}

/** A client's other answers are recorded by other commands, which it names. */
function otherAnswer({ args: [file = '-'] }: Call, text: string) {
  const read = readClientAnswer(text);
  if (!read.ok || read.value.kind === 'acceptance') return undefined;
  const what = `this is a ${read.value.kind}, not an acceptance`;
  return { what, wayOut: `record it with \`${takenBy(read.value, file)}\`` };
}

function isRecorded(book: Book, text: string): boolean {
  const read = readAcceptance(text);
  const [first] = (read.ok && book.events.get(read.value.proposal)?.facts) || [];
  return read.ok && first?.kind === 'accepted' && first.acceptance.digest === read.value.digest;
}

function signedText(call: Call, { book, today }: OpenBook, proposal: string): Parsed<AnswerFile> | number {
  const { name, email, note = '', on = today } = call.flags;
  if (name === undefined || email === undefined)
    return wrongCall(call, 'Who signed? Give --name NAME --email ADDRESS.');
  const said = { name: tidyLine(String(name)), email, note: tidyText(String(note)), accepted: on };
  const inWords = statementsIn(book.kitchen.locale);
  for (const flag of ['name', 'note'] as const) {
    const wrong = textProblem(said[flag]);
    if (wrong !== undefined)
      return wrongCall(call, `--${flag}: ${inWords(textRefusal(flag, wrong))}; type it again.`);
  }
  const signature = signatureSchema.safeParse(said);
  const issue = signature.error?.issues[0];
  if (issue) {
    const flag = issue.path[0] === 'accepted' ? 'on' : String(issue.path[0]);
    return wrongCall(call, `--${flag}: ${issue.message}.`);
  }
  const current = currentTerms(book, proposal);
  if (!current.ok) return current;
  const { terms, offer, choices } = current.value;
  if (!offer)
    return { ok: false, what: `${proposal} has not been issued`, wayOut: `run issue ${proposal} first` };
  const choice = choiceFromFlags(terms, choices, call.flags);
  if (!choice.ok) return choice;
  const [problem] = checkChoice(terms, choice.value);
  if (problem) return { ok: false, ...misfit(problem, terms.locale) };
  const text = JSON.stringify(makeAcceptance(offer, choice.value, signatureSchema.parse(said)));
  return parsed({ text, waits: undefined });
}
