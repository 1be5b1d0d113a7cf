import { clockText } from '../../exports/words/clock-text.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import { type ChangeGroup, changedLine, changedLines, changeGroup, notIn } from '../kitchen/change-line.ts';
import { choiceChanged, guestsChanged } from './offer-changes-choice.ts';
import { foodChanged } from './offer-changes-dishes.ts';
import { menusChanged } from './offer-changes-menus.ts';
import { addOnsChanged, chargesChanged } from './offer-changes-prices.ts';
import { dueChanged, legalChanged, notIncludedChanged } from './offer-changes-terms.ts';

/**
 * Everything that a client finds changed between two revisions of an offer, in their words and with the sums of
 * each: what was, what is. Nothing is said of what stayed, nor of how the page looks and is served.
 */
export function offerChanges(before: OfferContent, now: OfferContent): ChangeGroup[] {
  const { allergenLaws } = now.kitchen;
  return [
    ...changeGroup('When and where', eventChanged(before, now)),
    ...changeGroup('Guests', guestsChanged(before, now)),
    ...changeGroup('Allergens and dietary marks', [
      ...foodChanged(dishesOf(before), dishesOf(now), allergenLaws),
      ...lawsChanged(before, now),
    ]),
    ...menusChanged(before.terms, now.terms),
    ...changeGroup('What can be added', addOnsChanged(before.terms, now.terms)),
    ...changeGroup('What is proposed', choiceChanged(before, now)),
    ...changeGroup('Charges and tax', chargesChanged(before.terms, now.terms)),
    ...changeGroup('Payments and terms', [
      ...dueChanged(before.terms, now.terms),
      ...notIncludedChanged(before, now),
      ...legalChanged(before.legal, now.legal),
    ]),
    ...changeGroup('Besides', textsChanged(before, now)),
  ];
}

function eventChanged(before: OfferContent, now: OfferContent): string[] {
  return changedLines(eventTexts(before), eventTexts(now));
}

function eventTexts(offer: OfferContent): Map<string, string> {
  const { client, occasion, date, serveAt, placeName, venue, validUntil, terms, kitchen } = offer;
  const place = terms.place.name === placeName ? placeName : `${placeName} (taxed as ${terms.place.name})`;
  return new Map([
    ['Valid until', dateText(validUntil, terms.locale)],
    ['Occasion', occasion],
    ['Date', dateText(date, terms.locale)],
    ['Served at', clockText(serveAt, terms.locale)],
    ['Place', place],
    ...Object.entries(venue).map(([fact, text]) => [`Venue, ${fact}`, text] as const),
    ['For', client.name],
    ['Your e-mail address', client.email ?? ''],
    ['The dates hold in the time zone', kitchen.timeZone],
  ]);
}

function dishesOf({ terms }: OfferContent) {
  return [
    ...terms.packages.flatMap(({ courses }) => courses.flatMap(({ dishes }) => dishes)),
    ...terms.addOns.flatMap(({ dishes }) => dishes ?? []),
  ];
}

function lawsChanged(before: OfferContent, now: OfferContent): string[] {
  const words = ({ kitchen }: OfferContent) =>
    kitchen.allergenLaws
      .map((law) => (law === 'us' ? 'the United States' : 'the European Union'))
      .join(' and ');
  return changedLine('Allergens are named as the law has them of', words(before), words(now));
}

function textsChanged(before: OfferContent, now: OfferContent): string[] {
  const stories = new Set([...Object.keys(now.stories), ...Object.keys(before.stories)]);
  const nameOf = (id: string) => now.terms.packages.find((each) => each.id === id)?.name;
  return [
    ...(before.letter === now.letter ? [] : ['There is a new letter.']),
    ...[...stories].flatMap((id) => {
      const name = nameOf(id);
      return name === undefined || before.stories[id] === now.stories[id]
        ? []
        : [`${name} is described anew.`];
    }),
    ...notIn(now.notices, before.notices).map((text) => `New, please read: ${text}`),
    ...notIn(before.notices, now.notices).map((text) => `No longer said: ${text}`),
    ...changedLines(houseTexts(before), houseTexts(now)),
  ];
}

function houseTexts({ kitchen }: OfferContent): Map<string, string> {
  return new Map([
    ['Our name', kitchen.name],
    ['Where we are', kitchen.town ?? ''],
    ['Our e-mail address', kitchen.email ?? ''],
    ['Our telephone', kitchen.phone ?? ''],
    ['Dishes marked no gluten are tested below', kitchen.glutenTested ?? ''],
    ['How your answer reaches us', answerWords(kitchen.acceptances)],
  ]);
}

function answerWords(way: OfferContent['kitchen']['acceptances']): string {
  if (!way || way.by === 'download') return 'as a file that you send us';
  if (way.by === 'mail') return `by mail to ${way.to}`;
  return way.to === null ? 'straight from the page' : `straight from the page to ${way.to}`;
}
