import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textProblem, tidyLine, tidyText, visibleLine } from '../../../src/engine/text/visible-text.ts';

const hidden = (code: string) => ({ wrong: 'hidden', sign: `U+${code}` });

describe('what a client writes', () => {
  test.each([
    // UAX #9, table 4 and section 2: the marks that override, embed and isolate, and the three implicit ones.
    ...['202A', '202B', '202C', '202D', '202E', '2066', '2067', '2068', '2069', '200E', '200F', '061C'],
    // The Unicode Standard, section 23.9: tags. DerivedCoreProperties.txt, Default_Ignorable_Code_Point, for the others.
    ...['E0001', 'E0041', 'E007F', '00AD', '034F', '115F', '1160', '17B4', '180E', '200B', '2060', '2064'],
    ...['206A', '3164', 'FEFF', 'FFA0', 'FFF0', '1BCA0', '1D173', 'E0FFF'],
    // Noncharacters, private use, and marks of annotation (section 23.7, 23.5, 23.8).
    ...['FFFE', 'FDD0', '1FFFF', 'E000', 'F8FF', '100000', 'FFF9', 'FFFA', 'FFFB', 'D800', 'DFFF'],
  ])('is refused with U+%s in it, wherever that stands', (code) => {
    const sign = String.fromCodePoint(Number.parseInt(code, 16));
    for (const text of [sign, `${sign}Ada`, `A${sign}da`, `Ada${sign}`, `Ada ${sign} Lund`])
      expect(textProblem(text)).toEqual(hidden(code));
  });

  test.each(['\u2800', '\u2800 \u2800', '\u0301'])('is refused where it shows nothing: “%s”', (text) => {
    expect(textProblem(text)).toEqual({ wrong: 'blank', sign: '' });
  });

  test.each([
    ['Zoë O’Brien-Ng', 'letters, marks and signs'],
    ['علی\u200cرضا', 'a joiner in Persian (UAX #31, section 2.3.1)'],
    ['ක්\u200dරි', 'a joiner in Sinhala'],
    ['葛\u{e0100}城', 'a variation of a Han letter (UTS #37)'],
    ['Kim 👩\u200d🍳', 'an emoji of two (UTS #51)'],
    ['Kim ❤\ufe0f\u200d🔥', 'and one with a selector before the joiner'],
    ['שרה', 'letters written from the right'],
    ['100 %', 'no letter'],
    ['', 'nothing'],
    [' \u00a0\u3000', 'nothing but spaces, which is for others to judge'],
  ])('may be “%s”: %s', (text) => {
    expect(textProblem(text)).toBeUndefined();
  });

  test.each(['A\u200dda', 'Ada\u200c', '\u200dAda', 'Ada \ufe0f', '\ufe0fAda'])(
    'is refused with a joiner or a selector that joins or varies nothing: “%s”',
    (text) => {
      expect(textProblem(text)?.wrong).toBe('hidden');
    },
  );

  test.each(['A\u200d\u0915', '\u0915\u200dA', '\u0915\u200d'])(
    'is refused with a joiner that has a letter that joins on one side alone: “%s”',
    (text) => {
      expect(textProblem(text)).toEqual(hidden('200D'));
    },
  );

  test('is shown in a header without what nobody can see, once for all of it', () => {
    expect(visibleLine(' A\u202eda\u200d \u202eLund ')).toBe('Ada Lund');
    expect(visibleLine('Kim ❤\ufe0f\u200d🔥')).toBe('Kim ❤\ufe0f\u200d🔥');
  });

  test('is composed: one name has one form (UAX #15, figure 3)', () => {
    expect(tidyLine('A\u030angstro\u0308m')).toBe('\u00c5ngstr\u00f6m');
    expect(tidyText('cre\u0300me\nbru\u0302le\u0301e')).toBe('cr\u00e8me\nbr\u00fbl\u00e9e');
    expect(textProblem('Zoe\u0308')).toEqual({ wrong: 'loose', sign: '' });
  });

  test('is one line without spaces outside; a note keeps its lines', () => {
    expect(tidyLine('  Ada\u00a0\t\u2028Lund\u0000 ')).toBe('Ada Lund');
    expect(tidyText(' one\r\n\ttwo\u0007 ')).toBe('one\n\ttwo');
  });

  test('once tidied stays as it is, and has nothing against it but what is refused', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (text) => {
        for (const tidy of [tidyLine, tidyText]) {
          const once = tidy(text);
          expect(tidy(once)).toBe(once);
          expect(textProblem(once)?.wrong).not.toBe('loose');
        }
      }),
    );
  });
});
