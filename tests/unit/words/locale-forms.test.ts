import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { parseClock } from '../../../src/engine/kitchen/parse-clock.ts';
import { clockText, hourText } from '../../../src/exports/words/clock-text.ts';
import { countText } from '../../../src/exports/words/count-text.ts';
import { dateText } from '../../../src/exports/words/date-text.ts';
import { figuresAsRead } from '../../../src/exports/words/figures-as-read.ts';
import { findingAsRead, wayOutAsRead } from '../../../src/exports/words/finding-as-read.ts';
import { percentText, wholePercentOf } from '../../../src/exports/words/percent-text.ts';
import { textAsRead } from '../../../src/exports/words/text-as-read.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

const LOCALES = ['en-US', 'en-GB', 'de-DE'];
const NBSP = '\u00a0';

/** Forms of the Unicode CLDR, as `Intl` has them; 12 am is midnight and 12 pm noon by common practice, no source. */
describe('figures have the form of the kitchen’s locale', () => {
  it('clocks', () => {
    expect(LOCALES.map((locale) => clockText('17:30', locale))).toEqual(['5:30 PM', '17:30', '17:30']);
    expect(['00:05', '12:00', '09:30'].map((clock) => clockText(clock, 'en-US'))).toEqual([
      '12:05 AM',
      '12:00 PM',
      '9:30 AM',
    ]);
    expect(LOCALES.map((locale) => hourText(17, locale))).toEqual(['5 PM', '17:00', '17:00']);
    expect(['+1:35', ''].map((text) => clockText(text, 'en-US'))).toEqual(['+1:35', '']);
  });

  it('percentages', () => {
    expect(LOCALES.map((locale) => percentText('8.25 %', locale))).toEqual([
      '8.25%',
      '8.25%',
      `8,25${NBSP}%`,
    ]);
    expect(wholePercentOf(new Fraction('0.745'))).toBe('75 %');
  });

  it('dates, in the language of the page', () => {
    expect(LOCALES.map((locale) => dateText('2027-05-15' as Day, locale))).toEqual([
      'Saturday, May 15, 2027',
      'Saturday, 15 May 2027',
      'Saturday, 15 May 2027',
    ]);
  });

  it('within sentences, with one decimal mark', () => {
    const why = '1.25 kg and 8 % over = 1.35 kg, ready at 09:05 (3-501.14, §2.5-1), “write 8.5 %”';
    expect(LOCALES.map((locale) => textAsRead(why, locale))).toEqual([
      '1.25 kg and 8% over = 1.35 kg, ready at 9:05 AM (3-501.14, §2.5-1), “write 8.5 %”',
      '1.25 kg and 8% over = 1.35 kg, ready at 9:05 (3-501.14, §2.5-1), “write 8.5 %”',
      `1,25 kg and 8${NBSP}% over = 1,35 kg, ready at 9:05 (3-501.14, §2.5-1), “write 8.5 %”`,
    ]);
  });

  it('counts in the thousands', () => {
    expect(LOCALES.map((locale) => countText(12_345.67, locale))).toEqual([
      '12,345.7',
      '12,345.7',
      '12\u202f345,7',
    ]);
    expect(countText(999, 'de-DE')).toBe('999');
  });

  it('what a finding says, in their spelling, and nothing of what stands in quotation marks', () => {
    const what = 'labor: 4,194,304 sulphites, 1.5 lb; Color canceled; “color 1,500”';
    expect(LOCALES.map((locale) => findingAsRead(what, locale))).toEqual([
      'labor: 4,194,304 sulfites, 1.5 lb; Color canceled; “color 1,500”',
      'labour: 4,194,304 sulphites, 1.5 lb; Colour cancelled; “color 1,500”',
      'labor: 4\u202f194\u202f304 sulphites, 1,5 lb; Color canceled; “color 1,500”',
    ]);
  });

  it('what is refused has its days in words, and what is to be written stays as files have it', () => {
    const what = 'it took place on 2027-05-15, after “2027-05-01” (events/2027-05-15-supper, 2027-02-31)';
    expect(findingAsRead(what, 'en-US')).toBe(
      'it took place on Saturday, May 15, 2027, after “2027-05-01” (events/2027-05-15-supper, 2027-02-31)',
    );
    const way = 'give a day from 2027-05-15; 20,971 is the most, or 1.5 lb of color';
    expect(LOCALES.map((locale) => wayOutAsRead(way, locale))).toEqual([
      way,
      way.replace('color', 'colour'),
      way.replace('20,971', '20\u202f971'),
    ]);
  });

  it('counts in messages as everywhere else', () => {
    const guests = LOCALES.map((locale) => wordsIn(locale)('terminal.adults', { n: 12_345 }));
    expect(guests).toEqual(LOCALES.map((locale) => `${countText(12_345, locale)} adults`));
    expect(LOCALES.map((locale) => wordsIn(locale)('terminal.adults', { n: 1 }))).toEqual(
      LOCALES.map(() => '1 adult'),
    );
  });

  it('once, however often they are read', () => {
    const texts = ['8.25 % of $1,234.50 at 12:30, 1.5 lb', 'content/recipes/bread.mdx:12:30 at +10:35'];
    for (const locale of LOCALES)
      for (const text of texts) {
        const read = textAsRead(text, locale);
        expect(textAsRead(read, locale), locale).toBe(read);
      }
    expect(textAsRead(texts[1] ?? '', 'en-US')).toBe(texts[1]);
  });

  it('in a plan’s data, where names, exact figures and dates stay', () => {
    const data = {
      name: 'Soup 2.5',
      date: '2027-05-15',
      need: { exact: '5/4 kg', printed: '1.25 kg' },
      timeline: [{ begins: '17:30', why: ['8 % over'] }],
    };
    expect(figuresAsRead(data, 'de-DE')).toEqual({
      ...data,
      need: { exact: '5/4 kg', printed: '1,25 kg' },
      timeline: [{ begins: '17:30', why: [`8${NBSP}% over`] }],
    });
  });

  it('in every hour of a task', () => {
    const task = { at: '07:00', until: '08:20', coldBy: '13:35' };
    expect(figuresAsRead(task, 'en-US')).toEqual({ at: '7:00 AM', until: '8:20 AM', coldBy: '1:35 PM' });
  });
});

/** The spellings of Regulation (EU) No 1169/2011, Annex II, in English, and of the FDA's rules (from memory). */
it('allergens have the spelling of the locale, on capitals too', () => {
  const dish = { contains: ['sulphites', 'SULPHUR DIOXIDE AND SULPHITES'], name: 'Wine with sulphites' };
  expect(figuresAsRead(dish, 'en-US').contains).toEqual(['sulfites', 'SULFUR DIOXIDE AND SULFITES']);
  expect(figuresAsRead(dish, 'en-GB')).toEqual(dish);
});

describe('a time of day is read as people write it', () => {
  it.each([
    ['17:30', '17:30'],
    ['9:05', '09:05'],
    ['5:30 pm', '17:30'],
    ['5:30PM', '17:30'],
    ['5 p.m.', '17:00'],
    ['12 am', '00:00'],
    ['12:15 pm', '12:15'],
  ])('%s', (text, clock) => {
    expect(parseClock(text)).toEqual({ ok: true, value: clock });
  });

  it.each(['13 pm', '0:30 am', '5:75 pm', '24:00', '5', 'noonish'])('%s is none', (text) => {
    expect(parseClock(text)).toMatchObject({
      ok: false,
      what: `“${text}” is not a time of day`,
      wayOut: 'write it such as 5:30 pm or 17:30',
    });
  });
});
