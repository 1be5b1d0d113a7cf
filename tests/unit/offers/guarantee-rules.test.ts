import { describe, expect, test } from 'vitest';
import type { Guests } from '../../../src/engine/quote/counts.ts';
import { type GuaranteeAsked, givenOn, guarantee } from '../../../src/offers/event/guarantee.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { day, must } from '../plan/builders.ts';
import { sampleGuests } from '../quote/sample-terms.ts';
import { cancelledFact, guaranteeFact, PICNIC, picnic, postponedFact } from './paper-event.ts';

const IN_TIME = '2027-05-08';
const LATE = '2027-05-09';
const GUESTS = sampleGuests(90, { children: 10, vendors: 3, staff: 2 });
type Asked = Partial<GuaranteeAsked>;

/** What comes of a count that a client of the picnic gives: the fact's guests, or why not. */
function given(asked: Asked, today = IN_TIME, facts: readonly EventFact[] = [], guests: Guests = GUESTS) {
  const { book } = picnic(guests, facts, { needs: { vegan: 4, milk: 2 } });
  return guarantee(book, PICNIC, { needs: {}, mains: {}, belowFloor: false, ...asked }, day(today));
}
const fact = (...args: Parameters<typeof given>) => must(given(...args)).fact;
const counts = (...args: Parameters<typeof given>) => {
  const { adults, children, vendors, staff } = fact(...args).guests;
  return [adults, children, vendors, staff];
};
const why = (...args: Parameters<typeof given>) => {
  const read = given(...args);
  return read.ok ? 'taken' : `${read.what} — ${read.wayOut}`;
};

describe('who a guarantee is for', () => {
  test.each<[Asked, number[]]>([
    [{ guests: 96 }, [86, 10, 3, 2]],
    [{ guests: 96, children: 6 }, [90, 6, 3, 2]],
    [{ guests: 96, adults: 80 }, [80, 16, 3, 2]],
    [{ guests: 96, adults: 95, children: 1 }, [95, 1, 3, 2]],
    [{ adults: 95 }, [95, 10, 3, 2]],
    [{ children: 0 }, [90, 0, 3, 2]],
    [{ vendors: 5, staff: 0 }, [90, 10, 5, 0]],
    [{ guests: 93, adults: 93 }, [93, 0, 3, 2]],
    [{ guests: 95, children: 95 }, [0, 95, 3, 2]],
  ])('%j', (asked, people) => {
    expect(counts(asked)).toEqual(people);
  });

  test.each<[Asked, string]>([
    [{ guests: 96, adults: 90, children: 5 }, '96 guests are not 90 adults and 5 children'],
    [{ guests: 96, adults: 97 }, '96 guests are not 97 adults and -1 child'],
    [{ guests: 5 }, '5 guests are not -5 adults and 10 children'],
    [{ guests: 1, adults: 1, children: 1 }, '1 guest is not 1 adult and 1 child'],
  ])('%j is refused', (asked, what) => {
    const wayOut = 'give the guests at the table, or adults and children, so that they add up';
    expect(why(asked)).toBe(`${what.replace('-1 child', '-1 children')} — ${wayOut}`);
  });
});

describe('up to the deadline a count', () => {
  test('may fall to the floor of 90, no further unless that is meant, and the floor is then marked', () => {
    expect(counts({ guests: 90 })).toEqual([80, 10, 3, 2]);
    expect(fact({ guests: 90 })).not.toHaveProperty('belowFloor');
    expect(why({ guests: 89 })).toBe(
      'quarry-picnic has a minimum of 90 guests at the table (90 % of the 100 guests accepted), and 89 is fewer — give 90 or more, or add --below-floor to cook for 89 and bill 90',
    );
    expect(fact({ guests: 89, belowFloor: true })).toMatchObject({ belowFloor: true });
    expect(fact({ guests: 90, belowFloor: true })).not.toHaveProperty('belowFloor');
    expect(why({ adults: 1, children: 0 })).toContain('and 1 is fewer');
  });

  test('that was under the floor before may rise without being asked again, and not fall', () => {
    const low = [guaranteeFact(sampleGuests(70), '2027-05-01', { belowFloor: true })];
    expect(fact({ adults: 75 }, IN_TIME, low)).toMatchObject({ belowFloor: true });
    expect(why({ adults: 69 }, IN_TIME, low)).toContain('has a minimum of 90 guests');
    expect(fact({ adults: 70, vendors: 1 }, IN_TIME, low)).toMatchObject({ belowFloor: true });
  });
});

describe('after the deadline a count', () => {
  const stays = (before: string, after: number) =>
    `the deadline of 2027-05-08 has passed, so ${PICNIC} can’t go below ${before}; ${after} is fewer — keep ${before.split(' ')[0]} or more`;

  test('may rise, and not fall: neither the table, nor the adults, nor the vendor meals', () => {
    expect(counts({ guests: 101, vendors: 4 }, LATE)).toEqual([91, 10, 4, 2]);
    expect(why({ guests: 99 }, LATE)).toContain(stays('100 guests at the table', 99));
    expect(why({ adults: 89, children: 20 }, LATE)).toContain(stays('90 adults', 89));
    expect(why({ vendors: 2, guests: 120 }, LATE)).toContain(stays('3 vendor meals', 2));
    // Children may become adults, and meals of the kitchen's own people are its own.
    expect(counts({ adults: 92, children: 8, staff: 0 }, LATE)).toEqual([92, 8, 3, 0]);
    expect(why({ belowFloor: true, guests: 89 }, LATE)).toContain(stays('100 guests at the table', 89));
  });

  test('is judged by the day the client gave it', () => {
    expect(fact({ guests: 95, given: day(IN_TIME) }, LATE)).toMatchObject({ on: LATE, given: IN_TIME });
    expect(fact({ guests: 105, given: day(LATE) }, LATE)).not.toHaveProperty('given');
    expect(why({ guests: 95, given: day('2027-05-10') }, LATE)).toBe(
      'this count can’t have been given on 2027-05-10 — give a day from 2027-04-05 to 2027-05-09',
    );
    expect(why({ guests: 95, given: day('2027-04-04') }, LATE)).toContain('can’t have been given');
    expect(why({ guests: 95, given: day('2027-04-05') }, LATE)).toBe('taken');
  });

  test('can’t have been given before the last one', () => {
    const last = guaranteeFact(sampleGuests(96), '2027-05-06', { given: day('2027-05-03') });
    expect(why({ guests: 95, given: day('2027-05-02') }, LATE, [last])).toContain('from 2027-05-03 to');
    expect(why({ guests: 95, given: day('2027-05-03') }, LATE, [last])).toBe('taken');
    const written = guaranteeFact(sampleGuests(96), '2027-05-06');
    expect(why({ guests: 95, given: day('2027-05-05') }, LATE, [written])).toContain('from 2027-05-06 to');
    expect([givenOn({ guarantee: undefined }), givenOn(picnic(GUESTS, [last]).status)]).toEqual([
      undefined,
      '2027-05-03',
    ]);
  });

  test('is not looked at while the event has no day, and follows the day it is moved to', () => {
    expect(counts({ guests: 92 }, LATE, [postponedFact(null)])).toEqual([82, 10, 3, 2]);
    expect(counts({ guests: 92 }, '2027-05-20', [postponedFact('2027-05-27')])).toEqual([82, 10, 3, 2]);
    expect(why({ guests: 92 }, '2027-05-21', [postponedFact('2027-05-27')])).toContain(
      'can’t go below 100 guests',
    );
  });
});

describe('needs in a guarantee', () => {
  test('stay where they are not named, are set, and are taken out by none', () => {
    const guests = sampleGuests(91, { children: 10 });
    const asked = { ...guests, needs: { vegan: 5, milk: 0, 'no gluten': 1 } };
    expect(fact(asked).needs).toEqual({ vegan: 5, 'no gluten': 1 });
    expect(fact({ adults: 91 }).needs).toEqual({ vegan: 4, milk: 2 });
  });

  test('must be known where the owner types a new one, and not where the client wrote it or it stands already', () => {
    expect(why({ needs: { kiwi: 1 } })).toContain('“kiwi” is not a diet or allergy that Salver knows');
    expect(fact({ needs: { kiwi: 1 }, needsAsWritten: true }).needs).toHaveProperty('kiwi', 1);
    const known = [guaranteeFact(GUESTS, '2027-05-01', { needs: { kiwi: 1 } })];
    expect(fact({ needs: { kiwi: 2 } }, IN_TIME, known).needs).toEqual({ kiwi: 2 });
  });
});

describe('mains in a guarantee', () => {
  const MAINS = { Main: { hake: 60, squash: 40 } };
  const supper = (asked: Asked, facts: readonly EventFact[] = []) => {
    const guests = sampleGuests(100);
    const { book } = picnic(guests, facts, { package: 'supper', mains: MAINS });
    return guarantee(book, PICNIC, { needs: {}, mains: {}, belowFloor: false, ...asked }, day(IN_TIME));
  };

  test('keep their proportions, or are as told, and must sum to the guests', () => {
    expect(must(supper({ adults: 110 })).fact.mains).toEqual({ Main: { hake: 66, squash: 44 } });
    const told = { Main: { hake: 80, squash: 30 } };
    expect(must(supper({ adults: 110, mains: told })).fact.mains).toEqual(told);
    expect(supper({ adults: 110, mains: MAINS })).toMatchObject({
      what: 'it does not fit what was accepted, at mains.Main: The counts for Main must add up to 110, one for each guest: 10 too few',
      wayOut: 'change the counts, and use --take for courses where each guest takes one dish',
    });
  });

  test('are no change where they are the same in another order', () => {
    const stands = guaranteeFact(sampleGuests(100), '2027-05-01', {
      mains: { Main: { squash: 40, hake: 60 } },
      needs: { vegan: 1, milk: 2 },
    });
    const needs = { milk: 2, vegan: 1 };
    expect(supper({ mains: MAINS, needs }, [stands])).toMatchObject({ what: 'nothing would change' });
    expect(supper({ mains: { Main: { hake: 61, squash: 39 } }, needs }, [stands]).ok).toBe(true);
    expect(supper({ mains: MAINS, needs: { milk: 1, vegan: 1 } }, [stands]).ok).toBe(true);
    expect(supper({ mains: MAINS, needs, vendors: 1 }, [stands]).ok).toBe(true);
  });
});

test('the accepted count given as a guarantee is one, once', () => {
  expect(counts({})).toEqual([90, 10, 3, 2]);
  const stands = guaranteeFact(GUESTS, '2027-05-01', { needs: { vegan: 4, milk: 2 } });
  expect(why({}, IN_TIME, [stands])).toBe('nothing would change — give another count');
});

test('an event that is over, cancelled or unknown takes none, and a fact goes under the next number', () => {
  expect(why({}, '2027-05-15')).toBe('taken');
  expect(why({}, '2027-05-16')).toContain('quarry-picnic took place on 2027-05-15');
  expect(why({}, IN_TIME, [cancelledFact])).toContain('quarry-picnic is canceled');
  expect(must(given({})).number).toBe(2);
  expect(must(given({ adults: 96 }, IN_TIME, [guaranteeFact(sampleGuests(95))])).number).toBe(3);
});
