import type { Choice } from '../../engine/quote/choice.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { shortDigest } from '../../offers/digest.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import { quoteView } from '../quote-view-of.ts';
import { billedChoice } from './billed-choice.ts';
import type {
  AnswerView,
  CompareView,
  GuestListView,
  ProposalChoiceView,
  SideView,
} from './proposal-choice.ts';
import { comparedMenus, comparedSums, pricedSide } from './proposal-choice-comparison.ts';
import { addOnFields, menuFields, needFields, peopleFields } from './proposal-choice-form.ts';
import { menuLinkedData } from './proposal-choice-linked-data.ts';
import { rowLabels } from './proposal-choice-rows.ts';
import { countRange, firstSides, packageOf, type Side } from './proposal-choice-sides.ts';
import type { AcceptedCounts, ClientTerms } from './terms.ts';
import { type AnsweredPage, clientTerms } from './terms-of.ts';

/** The answering parts of a proposal's page; empty of forms where nothing is left to answer. */
export function proposalChoiceView(page: AnsweredPage): ProposalChoiceView {
  const data = clientTerms(page);
  const open = data.state === 'draft' || data.state === 'offered';
  return {
    data: scriptSafe(data),
    linkedData: scriptSafe(menuLinkedData({ ...page.content, terms: data.terms })),
    postOrigin: data.answers.by === 'post' && data.answers.to ? new URL(data.answers.to).origin : null,
    compare: open ? compareView(data) : null,
    accept: data.state === 'offered' ? acceptView(data) : null,
    change: data.accepted && changeView(data, data.accepted),
    guestList: data.accepted && guestListView(data, data.accepted.choice),
  };
}

/** JSON for a script element: no `<` ends the element or begins a comment, and no line separator breaks old parsers. */
function scriptSafe(value: object): string {
  const signs: Record<string, string> = { '<': '\\u003c', '\u2028': '\\u2028', '\u2029': '\\u2029' };
  return JSON.stringify(value).replace(/[<\u2028\u2029]/g, (sign) => signs[sign] ?? sign);
}

function compareView(data: ClientTerms): CompareView {
  const [a, b] = firstSides(data);
  const say = scriptWordsIn(data.terms.locale);
  const priced = [pricedSide(data, a), pricedSide(data, b)] as const;
  return {
    sides: [sideView(data, a, 'A'), sideView(data, b, 'B')],
    range: countRange(data),
    countHint: countHint(data),
    comparison: {
      ...comparedSums(say, data, priced, rowsWithin(data, [a, b])),
      ...comparedMenus(say, data, priced),
    },
  };
}

/** What a guest count of the comparison takes in, beside those it is for. */
function countHint({ choices, terms }: ClientTerms): string {
  const say = wordsIn(terms.locale);
  const { children, vendors } = choices[0]?.guests ?? { children: 0, vendors: 0 };
  if (children > 0 && vendors > 0) return say('page.compare.hint.both', { children, vendors });
  if (children > 0) return say('page.compare.hint.children', { children });
  return vendors > 0 ? say('page.compare.hint.vendors', { vendors }) : say('page.compare.hint');
}

/** Rows that either side has anywhere a slider reaches: at its ends, and where a price tier begins. */
function rowsWithin(data: ClientTerms, sides: readonly Side[]): ReadonlyMap<string, string> {
  const { from, to } = countRange(data);
  const say = scriptWordsIn(data.terms.locale);
  return new Map(
    sides.flatMap((side) => {
      const starts = packageOf(data, side.package).tiers.map((tier) => tier.from);
      const counts = [from, ...starts.filter((count) => count > from && count < to), to];
      return counts.flatMap((guests) =>
        rowLabels(say, pricedSide(data, { ...side, guests }).quote, data.terms),
      );
    }),
  );
}

function sideView(data: ClientTerms, side: Side, letter: 'A' | 'B'): SideView {
  const prefix = `${letter.toLowerCase()}.`;
  return {
    letter,
    prefix,
    menus: data.terms.packages.map(({ id, name }) => ({ id, name, chosen: id === side.package })),
    guests: side.guests,
    guestsText: scriptWordsIn(data.terms.locale)('guests', { n: side.guests }),
    addOns: addOnFields(data.terms, side.addOns, prefix),
  };
}

function acceptView(data: ClientTerms): AnswerView {
  const [choice] = data.choices;
  if (!choice) throw new Error('an offer proposes nothing');
  const { terms, kitchen } = data;
  const say = wordsIn(terms.locale);
  return {
    kind: 'accept',
    menus: terms.packages.map((chosen, index) => menuFields(data, chosen, index, choice)),
    people: peopleFields(choice, say),
    addOns: addOnFields(terms, choice.addOns),
    needs: needFields(data, choice),
    quote: quoteView(scriptWordsIn(terms.locale), terms, choice, null),
    billedWhy: '',
    agreement: say('form.agreement', { revision: data.revision, reference: shortDigest(data.digest) }),
    next: [
      sendingWords(data, 'acceptance'),
      say('form.next.holds', { kitchen: kitchen.name }),
      say('form.next.proof'),
    ],
    until: say('form.accept.until', { date: dateText(data.validUntil, terms.locale) }),
    submit: say('form.accept.submit'),
  };
}

function changeView(data: ClientTerms, { choice, until: last, floor }: AcceptedCounts): AnswerView {
  const { terms } = data;
  const say = wordsIn(terms.locale);
  const chosen = terms.packages.findIndex(({ id }) => id === choice.package);
  const menu = terms.packages[chosen];
  const script = scriptWordsIn(terms.locale);
  const billed = billedChoice(script, data, choice);
  return {
    kind: 'change',
    menus: menu
      ? [menuFields(data, menu, chosen, choice)].map((each) => ({
          ...each,
          courses: each.courses.filter(({ byGuest }) => byGuest),
        }))
      : [],
    people: peopleFields(choice, say),
    addOns: [],
    needs: needFields(data, choice),
    quote: quoteView(script, terms, billed.choice, null),
    billedWhy: billed.why,
    agreement: '',
    next: [sendingWords(data, 'count'), say('form.next.billed', { floor }), say('form.next.until-confirmed')],
    until: say('form.change.until', { date: dateText(last, terms.locale) }),
    submit: say('form.change.submit'),
  };
}

/** What the button does with an answer. */
function sendingWords(
  { answers, kitchen, terms }: ClientTerms,
  what: 'acceptance' | 'count' | 'guest list',
): string {
  const say = wordsIn(terms.locale);
  if (answers.by === 'post') return say('form.send.post', { what, to: kitchen.name });
  return answers.by === 'mail'
    ? say('form.send.mail', { what, to: answers.to })
    : say('form.send.download', { what, to: kitchen.email || kitchen.name });
}

function guestListView(data: ClientTerms, choice: Choice): GuestListView | null {
  const chosen = data.terms.packages.find(({ id }) => id === choice.package);
  const courses = chosen?.courses.filter(({ eachGuest }) => eachGuest) ?? [];
  if (courses.length === 0) return null;
  const mains = courses.map(({ dishes }) => dishes[0]?.name ?? '');
  return {
    courses: courses.map(({ name }) => name),
    example: wordsIn(data.terms.locale)('form.list.example-guest', { mains: mains.join('; ') }),
    next: sendingWords(data, 'guest list'),
  };
}
