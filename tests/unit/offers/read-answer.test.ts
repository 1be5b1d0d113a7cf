import { describe, expect, test } from 'vitest';
import { readAcceptance } from '../../../src/offers/answers/accept.ts';
import { answersTo, madeOn, readClientAnswer } from '../../../src/offers/answers/client-answer.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { makeCountChange } from '../../../src/offers/answers/make-count-change.ts';
import { readCountChange } from '../../../src/offers/answers/read-count-change.ts';
import { digestOfRecord } from '../../../src/offers/digest.ts';
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
const why = (text: string) => {
  const read = readAcceptance(text);
  return read.ok ? 'read' : read.what;
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
    expect(readCountChange(text.padEnd(65_537))).toMatchObject({
      what: 'this file is too long to be a count change',
    });
    expect(why('Yes, please')).toBe('this is not an acceptance file: it is not JSON');
    expect(why('{}')).toMatch(/^this is not an acceptance that Salver knows: /);
    expect(why('null')).toMatch(/^this is not an acceptance that Salver knows: /);
    expect(why(JSON.stringify(change))).toMatch(/^this is not an acceptance that Salver knows: /);
    expect(why(resealed({ ...acceptance, crew: 4 }))).toMatch(
      /^this is not an acceptance that Salver knows: /,
    );
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

  test('whose name, note or need hides something is refused, and says where', () => {
    expect(why(resealed({ ...acceptance, name: 'Tam\u202Esin' }))).toMatch(
      /^the name .* in this acceptance$/,
    );
    expect(why(resealed({ ...acceptance, note: 'see\u202E you' }))).toMatch(
      /^the note .* in this acceptance$/,
    );
    const choice = { ...acceptance.choice, needs: { 've\u202Egan': 1 } };
    expect(why(resealed({ ...acceptance, choice }))).toMatch(/^the name of a need .* in this acceptance$/);
    const needs = resealed({ ...change, needs: { 've\u202Egan': 1 } });
    expect(readCountChange(needs)).toMatchObject({
      what: expect.stringMatching(/^the name of a need .* in this count change$/),
    });
  });

  test('says of itself what it is, when it was made and what it is about', () => {
    const read = [acceptance, change].map((each) => must(readClientAnswer(JSON.stringify(each))));
    expect(read.map((each) => [each.kind, madeOn(each), answersTo(each)])).toEqual([
      ['acceptance', ACCEPTED, PICNIC],
      ['count change', ACCEPTED, PICNIC],
    ]);
    expect(readClientAnswer('nothing')).toMatchObject({
      what: 'this is not an acceptance file: it is not JSON',
    });
    expect(readClientAnswer('7').ok).toBe(false);
  });
});
