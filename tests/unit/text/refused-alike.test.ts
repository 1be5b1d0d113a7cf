import { describe, expect, test } from 'vitest';
import { choiceIn } from '../../../src/client/choice-in.ts';
import { readGuestList } from '../../../src/client/guest-list.ts';
import { signatureIn, signatureProblems } from '../../../src/client/signature.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { checkChoice } from '../../../src/engine/quote/choice.ts';
import { isAddress, mailDraft } from '../../../src/mail/mail-draft.ts';
import { readClientAnswer } from '../../../src/offers/answers/client-answer.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { makeCountChange } from '../../../src/offers/answers/make-count-change.ts';
import { guestRows } from '../../../src/offers/guest-list/rows.ts';
import { problemWords } from '../../../src/offers/problem-words.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';
import { acceptedKitchen, issuedKitchen } from '../../commands/accepted-kitchen.ts';
import { run } from '../../commands/run.ts';
import { inWords } from '../../in-words.ts';
import { clientData, plated } from '../client/client-data.ts';

const data = clientData();
const courses = plated.courses.filter(({ eachGuest }) => eachGuest);
const [choice] = data.choices;
const signature = { name: 'Ada Lund', email: 'ada@lund.example', note: '', accepted: '2027-04-01' as Day };
const offer = { ...data, digest: 'ab'.repeat(32) };
const by = {
  event: 'harbour-party',
  offer: offer.digest,
  made: '2027-04-02' as Day,
  name: 'Ada Lund',
  note: '',
};

const taken = (record: object) => {
  const read = readClientAnswer(JSON.stringify(record));
  return read.ok ? undefined : inWords(read.what);
};

const BAD = [
  ['Ada \u202ednuL', 'has an invisible character (U+202E)'],
  ['Ada\u2066 Lund', 'has an invisible character (U+2066)'],
  ['Ada\u{e0041} Lund', 'has an invisible character (U+E0041)'],
  ['\u3164', 'has an invisible character (U+3164)'],
  ['\u2800', 'has no visible character in it'],
] as const;

describe.each(BAD)('“%s” is refused alike', (text, why) => {
  test('on the page: as a name, a note, a need, and in a guest list', () => {
    const texts = new Map([
      ['name', text],
      ['email', signature.email],
      ['note', text],
      ['other-need.0.name', text],
      ['other-need.0.count', '1'],
    ]);
    expect(signatureProblems(texts, ['name', 'note'])).toEqual([
      { field: 'name', what: `Please type your name again: it ${why}.` },
      { field: 'note', what: `Please type the note again: it ${why}.` },
    ]);
    expect(choiceIn(data, texts).unread).toContainEqual({
      field: 'other-need.0.name',
      what: `Please type this need again: it ${why}.`,
    });
    for (const line of [`${text}; 4; lamb`, `Ada; ${text}; lamb`, `Ada; 4; lamb; ${text}`])
      expect(readGuestList(line, courses).problems).toEqual([`Line 1 ${why}; please type it again.`]);
  });

  test('in an answer, by the receiver and by the command that takes it, though its digest is right', () => {
    const needs = { ...choice!, needs: { [text]: 1 } };
    expect(taken(makeAcceptance(offer, choice!, { ...signature, name: text }))).toBe(
      `in this acceptance, the name ${why}`,
    );
    expect(taken(makeAcceptance(offer, choice!, { ...signature, note: text }))).toBe(
      `in this acceptance, the note ${why}`,
    );
    expect(taken(makeAcceptance(offer, needs, signature))).toBe(
      `in this acceptance, the name of a need ${why}`,
    );
    expect(taken(makeCountChange(choice!, { ...by, name: text }))).toBe(
      `in this count change, the name ${why}`,
    );
    expect(taken(makeCountChange(needs, by))).toBe(`in this count change, the name of a need ${why}`);
    expect(checkChoice(data.terms, needs).map((each) => problemWords(scriptWordsIn('en-US'), each))).toEqual([
      `Please type this need again: it ${why}.`,
    ]);
  });

  test('in a guest list that was sent or typed', () => {
    const rows = (row: string) => guestRows(`name,table,main,need\n${row}\n`, courses).problems;
    // A file is looked over for the signs that turn letters about before its cells are.
    const told = /invisible character|invisible control character|no visible character in it/;
    for (const row of [`${text},4,lamb,`, `Ada,${text},lamb,`, `Ada,4,lamb,${text}`])
      expect(rows(row).map(inWords).join('; ')).toMatch(told);
  });

  test('as it is typed for a client who signed on paper, or gave new counts by phone', async () => {
    const issued = await issuedKitchen();
    const words = ['--email', signature.email, '--today', '2027-04-28'];
    const signed = (...more: string[]) =>
      run(issued, 'accept', '--signed', 'lifeboat-evening', ...words, ...more);
    expect((await signed('--name', text)).err).toBe(`--name: the name ${why}; type it again.\n`);
    expect((await signed('--name', 'Ada', '--note', text)).err).toBe(
      `--note: the note ${why}; type it again.\n`,
    );
    expect((await signed('--name', 'Ada', '--need', `${text}=1`)).code).not.toBe(0);
    const accepted = await acceptedKitchen();
    const guaranteed = await run(
      accepted,
      'guarantee',
      'lifeboat-evening',
      '--need',
      `${text}=1`,
      '--today',
      '2027-05-02',
    );
    expect(guaranteed.code).not.toBe(0);
  });

  test('in a mail’s head it is left out, and no address has it', async () => {
    const hidden = /invisible character/.test(why);
    const sign = [...text].find((each) =>
      /[\p{Bidi_Control}\p{Default_Ignorable_Code_Point}\u2800]/u.test(each),
    );
    const draft = await mailDraft({
      from: undefined,
      to: { name: `Ada ${sign}`, address: `ada${sign}@lund.example` },
      subject: `Supper ${sign}`,
      text: 'Dear Ada,',
      attachment: undefined,
      day: '2027-04-01' as Day,
      id: 'supper-1@lund.example',
    });
    const head = draft.toString('utf8').split('\r\n\r\n')[0]!;
    expect(head).toContain(hidden ? 'Subject: Supper\r\n' : 'Subject: =?UTF-8?');
    expect(isAddress(`ada${sign}@lund.example`)).toBe(!hidden);
    if (hidden) expect(head).not.toContain('lund.example>\r\nSubject');
  });
});

describe('one name in two forms', () => {
  test('is one: the page and the list compose letters, and an answer that does not is refused', () => {
    const [parts, one] = ['Zoe\u0308 Lund', 'Zo\u00eb Lund'];
    expect(signatureIn(new Map([['name', parts]])).name).toBe(one);
    expect(readGuestList(`${parts}; 4; lamb`, courses).guests[0]?.name).toBe(one);
    expect(guestRows(`name,main\n${parts},lamb\n`, courses).guests[0]?.name).toBe(one);
    expect(taken(makeAcceptance(offer, choice!, { ...signature, name: parts }))).toBe(
      'in this acceptance, the name has letters that are not composed (Unicode NFC)',
    );
    expect(taken(makeAcceptance(offer, choice!, { ...signature, name: one }))).toBeUndefined();
  });
});
