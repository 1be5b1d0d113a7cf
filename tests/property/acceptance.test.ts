import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { Book } from '../../src/book/book.ts';
import { type Choice, choosers } from '../../src/engine/quote/choice.ts';
import type { Guests } from '../../src/engine/quote/counts.ts';
import { shareOut } from '../../src/engine/quote/scaled-choice.ts';
import type { PackageTerms } from '../../src/engine/quote/terms.ts';
import { textProblem, tidyLine, tidyText } from '../../src/engine/text/visible-text.ts';
import { takeAcceptance } from '../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../src/offers/answers/make-acceptance.ts';
import { digestOfRecord } from '../../src/offers/digest.ts';
import type { Acceptance } from '../../src/schema/acceptance.ts';
import type { Offer } from '../../src/schema/offer.ts';
import { inWords } from '../in-words.ts';
import { day, EVENING, issued, secondKitchen } from '../unit/offers/second-kitchen.ts';

const TODAY = day('2027-05-12');
let book: Book;
let offer: Offer;

beforeAll(async () => {
  book = issued(await secondKitchen());
  [offer] = book.offers.get(EVENING) as [Offer];
});

/**
 * What decides a choice within what a client may say: which package, how many come (200 at most, vendors as many as
 * guests at most, crew as proposed), which dishes, how mains are shared out, and somebody for each need proposed.
 */
const wishes = fc.record({
  pick: fc.nat(),
  guests: fc
    .record({
      adults: fc.integer({ min: 3, max: 140 }),
      children: fc.nat(60),
      vendors: fc.nat(9),
      staff: fc.constant(3),
    })
    .map((guests) => ({ ...guests, vendors: Math.min(guests.vendors, guests.adults) })),
  dishes: fc.nat(),
  shares: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 12, maxLength: 12 }),
  tea: fc.option(fc.constantFrom(0, 1), { nil: undefined }),
  vegans: fc.integer({ min: 1, max: 2 }),
  // As the page tidies it.
  name: fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
    .map(tidyLine)
    .filter((text) => text !== '' && textProblem(text) === undefined),
  note: fc
    .string({ unit: 'grapheme', maxLength: 80 })
    .map(tidyText)
    .filter((text) => textProblem(text) === undefined),
  dayOfMonth: fc.integer({ min: 1, max: 10 }),
});
type Wish = typeof wishes extends fc.Arbitrary<infer T> ? T : never;

function choiceOf(wish: Wish): Choice {
  const chosen = offer.terms.packages[wish.pick % offer.terms.packages.length] as PackageTerms;
  const courses: Record<string, string[]> = {};
  const mains: Record<string, Record<string, number>> = {};
  for (const course of chosen.courses) {
    const ids = course.dishes.map(({ recipe }) => recipe);
    if (course.choose !== null) {
      const turned = ids.map((_, index) => ids[(index + wish.dishes) % ids.length] as string);
      courses[course.name] = turned.slice(0, course.choose);
    } else if (course.eachGuest) {
      const weights = ids.map((_, index) => (wish.shares[index] ?? 0) + (index === 0 ? 1 : 0));
      const counts = shareOut(choosers(course, wish.guests as Guests), weights);
      mains[course.name] = Object.fromEntries(ids.map((id, index) => [id, counts[index] ?? 0]));
    }
  }
  const addOns: Record<string, number> = wish.tea === undefined ? {} : { 'tea-table': wish.tea };
  const needs = { vegan: wish.vegans, celery: 1 };
  return { package: chosen.id, guests: wish.guests, courses, mains, addOns, needs };
}

const acceptanceOf = (wish: Wish): Acceptance =>
  makeAcceptance(offer, choiceOf(wish), {
    name: wish.name,
    email: 'aine@lifeboat.example',
    note: wish.note,
    accepted: day(`2027-05-${String(wish.dayOfMonth).padStart(2, '0')}`),
  });

const take = (record: unknown) => takeAcceptance(book, JSON.stringify(record), TODAY);

/** Every place of a record that holds no list or record itself, as the way to it. */
function leavesOf(value: unknown, way: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [way];
  return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, [...way, key]));
}

function changedAt<T>(value: T, [key, ...rest]: readonly string[], change: (leaf: unknown) => unknown): T {
  if (key === undefined) return change(value) as T;
  const inner = (value as Record<string, unknown>)[key];
  if (Array.isArray(value))
    return value.map((each, index) => (String(index) === key ? changedAt(inner, rest, change) : each)) as T;
  return { ...value, [key]: changedAt(inner, rest, change) };
}

/** Another value of the same kind: a digit, letter or count that is one off. */
function oneOff(leaf: unknown): unknown {
  if (typeof leaf === 'number') return leaf + 1;
  if (typeof leaf === 'boolean') return !leaf;
  const text = String(leaf);
  const last = text.at(-1);
  if (last === undefined) return 'x';
  return (
    text.slice(0, -last.length) +
    (/[0-8]/.test(last) ? String(Number(last) + 1) : last === '9' ? '0' : last === 'a' ? 'b' : 'a')
  );
}

test('every acceptance made from the terms is taken, with its choice and total as made', () => {
  fc.assert(
    fc.property(wishes, (wish) => {
      const acceptance = acceptanceOf(wish);
      const taken = take(acceptance);
      expect(taken).toMatchObject({ ok: true });
      if (taken.ok) expect(taken.value.acceptance).toEqual(acceptance);
    }),
    { numRuns: 300 },
  );
});

test('an acceptance with any one figure, word or date changed is refused', () => {
  fc.assert(
    fc.property(wishes, fc.nat(), (wish, at) => {
      const acceptance = acceptanceOf(wish);
      const leaves = leavesOf(acceptance);
      const way = leaves[at % leaves.length] ?? [];
      const altered = changedAt(acceptance, way, oneOff);
      expect(altered).not.toEqual(acceptance);
      // Without the change it is taken.
      expect(take(acceptance).ok).toBe(true);
      expect(take(altered).ok, way.join('.')).toBe(false);
    }),
    { numRuns: 600 },
  );
});

test('an acceptance with a field left out or put in anywhere is refused', () => {
  const strange = fc.constantFrom('extra', '__proto__', 'constructor', 'toString', 'discount');
  fc.assert(
    fc.property(wishes, fc.nat(), strange, fc.boolean(), (wish, at, word, leaveOut) => {
      const acceptance = acceptanceOf(wish);
      const leaves = leavesOf(acceptance);
      const way = leaves[at % leaves.length] ?? [];
      const altered = changedAt(acceptance, way.slice(0, -1), (record) => {
        const entries = Object.entries(record as object);
        const kept = leaveOut
          ? entries.filter(([key]) => key !== way.at(-1))
          : [...entries, [word, 1] as const];
        return Array.isArray(record) ? kept.map(([, value]) => value) : recordOf(kept);
      });
      expect(take(altered).ok).toBe(false);
    }),
    { numRuns: 300 },
  );
});

test('whoever makes its digest anew still cannot change what it accepts or what it costs', () => {
  const bound = fc.constantFrom('version', 'kind', 'proposal', 'revision', 'offer', 'total', 'agreed');
  fc.assert(
    fc.property(wishes, bound, (wish, field) => {
      const forged = changedAt(acceptanceOf(wish), [field], oneOff);
      const answer = take({ ...forged, digest: digestOfRecord(forged) });
      expect(answer.ok, field).toBe(false);
      if (!answer.ok) expect(inWords(answer.what)).not.toMatch(/altered or damaged/);
    }),
    { numRuns: 300 },
  );
});

test('any text at all is answered, never thrown at', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.json(),
        fc.jsonValue().map((value) => JSON.stringify(value)),
      ),
      (text) => {
        expect(takeAcceptance(book, text, TODAY).ok).toBe(false);
      },
    ),
    { numRuns: 500 },
  );
});

/** A record of entries, `__proto__` as an entry like any other. */
function recordOf(entries: readonly (readonly [string, unknown])[]): object {
  const record = {};
  for (const [key, value] of entries)
    Object.defineProperty(record, key, { value, enumerable: true, configurable: true, writable: true });
  return record;
}
