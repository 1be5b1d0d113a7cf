import { describe, expect, test } from 'vitest';
import type { TextProblem } from '../../../src/engine/text/visible-text.ts';
import { readAcceptance } from '../../../src/offers/answers/accept.ts';
import { answersTo, kindOf, madeOn, readClientAnswer } from '../../../src/offers/answers/client-answer.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { makeCountChange } from '../../../src/offers/answers/make-count-change.ts';
import { readCountChange } from '../../../src/offers/answers/read-count-change.ts';
import { readGuestList } from '../../../src/offers/answers/read-guest-list.ts';
import type { Judged } from '../../../src/offers/answers/refusal.ts';
import { digestOfRecord, shortDigest } from '../../../src/offers/digest.ts';
import { textRefusal } from '../../../src/offers/text-refusal.ts';
import { inWords } from '../../in-words.ts';
import { must } from '../plan/builders.ts';
import { sampleChoice, sampleGuests } from '../quote/sample-terms.ts';
import { ACCEPTED, PICNIC, paperOffer } from './paper-event.ts';

const offer = paperOffer(sampleChoice(sampleGuests(40), { needs: { vegan: 2 } }));
const acceptance = makeAcceptance(offer, offer.proposed, {
  name: 'Tamsin',
  email: 'n@quarry.example',
  note: '',
  accepted: ACCEPTED,
});
const change = makeCountChange(
  { guests: sampleGuests(40), needs: { vegan: 2 }, mains: {} },
  { event: PICNIC, offer: offer.digest, made: ACCEPTED, name: 'Tamsin', note: '' },
);
const resealed = (record: object) => JSON.stringify({ ...record, digest: digestOfRecord(record) });
const why = (text: string) => whyOf(readAcceptance(text));
const whyOf = (read: Judged<unknown>) => {
  return read.ok ? 'read' : inWords(read.what);
};

describe('a file that a client sent', () => {
  const text = JSON.stringify(acceptance);

  test('is read as it was made, a mark before it or spaces after it included', () => {
    expect(must(readAcceptance(text))).toEqual(acceptance);
    expect(must(readAcceptance(`\uFEFF${text}`))).toEqual(acceptance);
    expect(why(text.padEnd(65_536))).toBe('read');
  });

  test('is none where it is too long, no JSON, or of another form, and says which kind was expected', () => {
    expect(why(text.padEnd(65_537))).toBe('this file is too long to be an acceptance');
    expect(whyOf(readCountChange(text.padEnd(65_537)))).toBe('this file is too long to be a count change');
    expect(whyOf(readGuestList(text.padEnd(65_537)))).toBe('this file is too long to be a guest list');
    expect(why('Yes, please')).toBe('this is not an acceptance file: it is not JSON');
    expect(why('{}')).toMatch(/^this is not an acceptance that Salver knows: /);
    expect(why('null')).toMatch(/^this is not an acceptance that Salver knows: /);
    expect(why(JSON.stringify(change))).toMatch(/^this is not an acceptance that Salver knows: /);
    expect(why(resealed({ ...acceptance, crew: 4 }))).toMatch(
      /^this is not an acceptance that Salver knows: /,
    );
  });

  test('of another form says what is wrong with which entry', () => {
    const { name: _, ...nameless } = acceptance;
    const wrong = (record: object) =>
      why(resealed(record)).replace(/^this is not an acceptance that Salver knows: /, '');
    expect([
      wrong(nameless),
      wrong({ ...acceptance, note: 'x'.repeat(5000) }),
      wrong({ ...acceptance, crew: 4 }),
      wrong({ ...acceptance, revision: 'one' }),
      why('7').replace(/^.*: /, ''),
    ]).toEqual([
      'name is missing',
      'note is longer than 4,000 characters',
      'the file is not as it was written: Unrecognized key: "crew"',
      'revision is not as it was written: expected number, received string',
      'expected object, received number',
    ]);
  });

  test('of a newer version asks for a newer Salver', () => {
    expect(why(resealed({ ...acceptance, version: 2 }))).not.toMatch(/^this is not an acceptance/);
    expect(why(resealed({ ...acceptance, version: 2 }))).toContain('version');
  });

  test('that was altered is refused, half a sign in a name too', () => {
    expect(why(JSON.stringify({ ...acceptance, note: 'x' }))).toBe(
      'this acceptance was altered or damaged after it was made',
    );
    expect(why(JSON.stringify({ ...acceptance, name: '\ud800' }))).not.toBe('read');
  });

  test('whose text is blank or not composed is refused, and says so', () => {
    expect(inWords(textRefusal('note', { wrong: 'blank' } as TextProblem))).toBe(
      'the note has no visible character in it',
    );
    expect(why(resealed({ ...acceptance, name: 'Rene\u0301' }))).toBe(
      'in this acceptance, the name has letters that are not composed (Unicode NFC)',
    );
    expect(why(`x\uFEFF${JSON.stringify(acceptance)}`)).toBe(
      'this is not an acceptance file: it is not JSON',
    );
  });

  test('whose name, note or need hides something is refused, and says where', () => {
    expect(why(resealed({ ...acceptance, name: 'Tam\u202Esin' }))).toBe(
      'in this acceptance, the name has an invisible character (U+202E)',
    );
    expect(why(resealed({ ...acceptance, note: 'see\u202E you' }))).toBe(
      'in this acceptance, the note has an invisible character (U+202E)',
    );
    const choice = { ...acceptance.choice, needs: { 've\u202Egan': 1 } };
    expect(why(resealed({ ...acceptance, choice }))).toBe(
      'in this acceptance, the name of a need has an invisible character (U+202E)',
    );
    const needs = resealed({ ...change, needs: { 've\u202Egan': 1 } });
    expect(whyOf(readCountChange(needs))).toBe(
      'in this count change, the name of a need has an invisible character (U+202E)',
    );
  });

  test('says of itself what it is, when it was made and what it is about', () => {
    const read = [acceptance, change].map((each) => must(readClientAnswer(JSON.stringify(each))));
    expect(read.map((each) => [each.kind, madeOn(each), answersTo(each)])).toEqual([
      ['acceptance', ACCEPTED, PICNIC],
      ['count change', ACCEPTED, PICNIC],
    ]);
    expect(whyOf(readClientAnswer('nothing'))).toBe('this is not an acceptance file: it is not JSON');
    expect(readClientAnswer('7').ok).toBe(false);
    expect(['null', '7', '"kind"', '{}', '[]', '{"kind":"list"}'].map(kindOf)).toEqual(
      Array(6).fill('acceptance'),
    );
    expect(kindOf('{"kind":"guest list"}')).toBe('guest list');
    expect(kindOf('\uFEFF{"kind":"count change"}')).toBe('count change');
  });

  test('that asks for needs to be taken off says which, one that does not says nothing of it', () => {
    const counts = { guests: sampleGuests(40), needs: {}, mains: {} };
    const by = { event: PICNIC, offer: offer.digest, made: ACCEPTED, name: 'Tamsin', note: '' };
    const off = makeCountChange(counts, { ...by, withoutNeeds: ['vegan'] });
    expect(off.withoutNeeds).toEqual(['vegan']);
    expect(off.digest).toBe(digestOfRecord(off));
    expect('withoutNeeds' in makeCountChange(counts, { ...by, withoutNeeds: [] })).toBe(false);
    expect('withoutNeeds' in change).toBe(false);
  });

  test('is compared on paper by its digest’s beginning', () => {
    expect(shortDigest('3f9a02c471be0000')).toBe('3f9a 02c4 71be');
    expect(shortDigest('')).toBe('');
  });
});
