import { addOnsOf, type Choice, choosers, entryOf } from '../../engine/quote/choice.ts';
import type { AddOnTerms, CourseTerms, PackageTerms, Terms } from '../../engine/quote/terms.ts';
import { counted } from '../../engine/text/counted.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { shortDigest } from '../../offers/digest.ts';
import { marksOf } from '../diet-marks.ts';
import { quoteView, shown } from '../quote-view-of.ts';
import { billedChoice } from './billed-choice.ts';
import type {
  AddOnFieldView,
  AnswerView,
  CompareView,
  CountFieldView,
  CourseFieldView,
  GuestListView,
  MenuFieldView,
  ProposalChoiceView,
  SideView,
} from './proposal-choice.ts';
import { comparedMenus, comparedSums, pricedSide } from './proposal-choice-comparison.ts';
import { addOnField, courseField, mainField, needField, peopleField } from './proposal-choice-fields.ts';
import { menuLinkedData } from './proposal-choice-linked-data.ts';
import { rowLabels } from './proposal-choice-rows.ts';
import { countRange, firstSides, packageOf, proposedChoice, type Side } from './proposal-choice-sides.ts';
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
  const priced = [pricedSide(data, a), pricedSide(data, b)] as const;
  const { children, vendors } = data.choices[0]?.guests ?? { children: 0, vendors: 0 };
  const besides = [
    children > 0 ? `${children} of them ${children === 1 ? 'a child' : 'children'}` : '',
    vendors > 0 ? `${counted(vendors, 'vendor meal')} besides` : '',
  ].filter((text) => text !== '');
  return {
    sides: [sideView(data, a, 'A'), sideView(data, b, 'B')],
    range: countRange(data),
    countHint: ['Everybody at the table', ...besides].join(', '),
    comparison: { ...comparedSums(data, priced, rowsWithin(data, [a, b])), ...comparedMenus(data, priced) },
  };
}

/** Rows that either side has anywhere a slider reaches: at its ends, and where a price tier begins. */
function rowsWithin(data: ClientTerms, sides: readonly Side[]): ReadonlyMap<string, string> {
  const { from, to } = countRange(data);
  return new Map(
    sides.flatMap((side) => {
      const starts = packageOf(data, side.package).tiers.map((tier) => tier.from);
      const counts = [from, ...starts.filter((count) => count > from && count < to), to];
      return counts.flatMap((guests) => rowLabels(pricedSide(data, { ...side, guests }).quote, data.terms));
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
    guestsText: counted(side.guests, 'guest'),
    addOns: addOnFields(data.terms, side.addOns, prefix),
  };
}

function addOnFields(terms: Terms, taken: Choice['addOns'], prefix = ''): AddOnFieldView[] {
  return terms.addOns.map((addOn, index) => ({
    field: addOnField(index, prefix),
    name: addOn.name,
    price: priceWords(addOn, terms),
    byHour: addOn.per === 'hour',
    value: String(entryOf(taken, addOn.id) || ''),
    menus: terms.packages
      .filter((chosen) => addOnsOf(terms, chosen).includes(addOn))
      .map(({ id }) => id)
      .join(' '),
  }));
}

function priceWords({ price, per, guests }: AddOnTerms, terms: Terms): string {
  const sum = shown(price, terms);
  if (per === 'guest') return `${sum} per guest`;
  if (per === 'hour') return `${sum} per hour`;
  return per === 'guests'
    ? `${sum} per ${guests === undefined || guests === 1 ? 'guest' : counted(guests, 'guest')}`
    : `${sum} in all`;
}

function acceptView(data: ClientTerms): AnswerView {
  const [choice] = data.choices;
  if (!choice) throw new Error('an offer proposes nothing');
  const { terms, kitchen } = data;
  return {
    kind: 'accept',
    menus: terms.packages.map((chosen, index) => menuFields(data, chosen, index, choice)),
    people: peopleFields(choice),
    addOns: addOnFields(terms, choice.addOns),
    needs: needFields(data, choice),
    quote: quoteView(terms, choice, null),
    billedWhy: '',
    agreement: `I accept this offer, revision ${data.revision}, digest ${shortDigest(data.digest)}, and agree to the terms shown on this page.`,
    next: [
      sendingWords(data, 'acceptance'),
      `${kitchen.name} then holds the date for you. It is confirmed when the deposit is in.`,
      'The acceptance shows which offer was accepted and what was chosen. It cannot show who accepted, so we write back to you before anything is bought.',
    ],
    until: `The offer can be accepted until ${dateText(data.validUntil, terms.locale)}.`,
    submit: 'Accept this offer',
  };
}

function changeView(data: ClientTerms, { choice, until: last, floor }: AcceptedCounts): AnswerView {
  const { terms } = data;
  const until = dateText(last, terms.locale);
  const chosen = terms.packages.findIndex(({ id }) => id === choice.package);
  const menu = terms.packages[chosen];
  const billed = billedChoice(data, choice);
  return {
    kind: 'change',
    menus: menu
      ? [menuFields(data, menu, chosen, choice)].map((each) => ({
          ...each,
          courses: each.courses.filter(({ byGuest }) => byGuest),
        }))
      : [],
    people: peopleFields(choice),
    addOns: [],
    needs: needFields(data, choice),
    quote: quoteView(terms, billed.choice, null),
    billedWhy: billed.why,
    agreement: '',
    next: [
      sendingWords(data, 'new count'),
      `The bill is for the larger of your final count and the guests served, and never for fewer than ${counted(floor, 'guest')} at the table.`,
      'We write back once we have taken the new count in. Until you hear from us the old one stands.',
    ],
    until: `You can change your count here until ${until}. After that it may only rise; please write to us then.`,
    submit: 'Send the new count',
  };
}

function sendingWords({ answers, kitchen }: ClientTerms, what: string): string {
  if (answers.by === 'post')
    return `The button sends your ${what} to ${kitchen.name}; you can keep a copy of it.`;
  const to = answers.by === 'mail' ? answers.to : kitchen.email || kitchen.name;
  if (answers.by === 'mail')
    return `The button opens a mail to ${to} with your ${what} in it, for you to send, and offers it as a file besides.`;
  return `The button makes a file with your ${what}. Please send it to ${to}.`;
}

function menuFields(data: ClientTerms, chosen: PackageTerms, menu: number, choice: Choice): MenuFieldView {
  const own = choice.package === chosen.id ? choice : proposedChoice(data, chosen);
  const open = [...chosen.courses.entries()].filter(
    ([, course]) => course.eachGuest || course.choose !== null,
  );
  return {
    id: chosen.id,
    name: chosen.name,
    style: chosen.style,
    chosen: choice.package === chosen.id,
    courses: open.map(([index, course]) => courseFields(course, own, menu, index)),
  };
}

function courseFields(course: CourseTerms, choice: Choice, menu: number, index: number): CourseFieldView {
  const taken = entryOf(choice.courses, course.name) ?? [];
  const counts = entryOf(choice.mains, course.name) ?? {};
  const byGuest = course.eachGuest;
  return {
    name: course.name,
    ask: byGuest
      ? `One for each guest: the counts must make ${choosers(course, choice.guests)}.`
      : `Choose ${course.choose}.`,
    byGuest,
    field: courseField(menu, index, 0),
    dishes: course.dishes.map((dish, place) => ({
      field: byGuest ? mainField(menu, index, place) : courseField(menu, index, place),
      name: dish.name,
      marks: marksOf(dish.marks).join(', '),
      value: byGuest ? String(entryOf(counts, dish.recipe) ?? 0) : taken.includes(dish.recipe) ? 'on' : '',
    })),
  };
}

function peopleFields({ guests }: Choice): CountFieldView[] {
  const field = (group: 'adults' | 'children' | 'vendors', label: string, hint: string) => ({
    field: peopleField(group),
    label,
    hint,
    value: String(guests[group]),
  });
  return [
    field('adults', 'Adults', ''),
    field('children', 'Children', ''),
    field('vendors', 'Vendor meals', 'For a band, a photographer and the like.'),
  ];
}

function needFields(data: ClientTerms, choice: Choice): CountFieldView[] {
  return data.needs.map(({ name, label }, index) => ({
    field: needField(index),
    label,
    hint: '',
    value: String(entryOf(choice.needs, name) || ''),
  }));
}

function guestListView(data: ClientTerms, choice: Choice): GuestListView | null {
  const chosen = data.terms.packages.find(({ id }) => id === choice.package);
  const courses = chosen?.courses.filter(({ eachGuest }) => eachGuest) ?? [];
  if (courses.length === 0) return null;
  const mains = courses.map(({ dishes }) => dishes[0]?.name ?? '');
  return {
    courses: courses.map(({ name }) => name),
    example: ['Ada Example', '4', ...mains, 'no gluten'].join('; '),
    next: sendingWords(data, 'guest list'),
  };
}
