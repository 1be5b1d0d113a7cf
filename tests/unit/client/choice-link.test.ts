import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choiceFragment, linkedChoice } from '../../../src/client/choice-link.ts';

const digest = '0123456789abcdef'.repeat(4);

describe('a link with a choice', () => {
  it('brings back every text, whatever was typed', () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.string({ minLength: 1, unit: 'grapheme' }), fc.string({ unit: 'grapheme' })),
        (record) => {
          const kept = ['choice', 'offer', 'name', 'email', 'note', 'agreed', 'guest-list'];
          const texts = new Map(Object.entries(record).filter(([name]) => !kept.includes(name)));
          expect(linkedChoice(choiceFragment(texts, digest), digest)).toEqual({ texts, sameOffer: true });
        },
      ),
    );
  });

  it('never holds who answers, nor the guests by name', () => {
    const own = { name: 'Ada', email: 'ada@x.example', note: 'quiet', agreed: 'on', 'guest-list': 'Ada; 1' };
    const fragment = choiceFragment(new Map(Object.entries({ ...own, package: 'plated' })), digest);
    expect(fragment).toBe('#choice=1&offer=0123456789ab&package=plated');
    const forged = '#choice=1&offer=0123456789ab&name=Mallory&agreed=on&guests.adults=5';
    expect([...(linkedChoice(forged, digest)?.texts ?? [])]).toEqual([['guests.adults', '5']]);
  });

  it('says when it was made for another revision', () => {
    const fragment = choiceFragment(new Map([['package', 'plated']]), 'f'.repeat(64));
    expect(linkedChoice(fragment, digest)?.sameOffer).toBe(false);
  });

  it('is not taken from an anchor, another form, or a text without end', () => {
    expect(linkedChoice('#accept-now', digest)).toBeNull();
    expect(linkedChoice('', digest)).toBeNull();
    expect(linkedChoice('#choice=2&package=plated', digest)).toBeNull();
    expect(linkedChoice(`#choice=1&note=${'x'.repeat(30_000)}`, digest)).toBeNull();
  });
});
