import { clockText } from '../../exports/words/clock-text.ts';
import { listText } from '../../exports/words/counted-text.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { type ChangeGroup, changedLine, changedLines, changeGroup, notIn } from './change-line.ts';
import { choiceChanged, guestsChanged } from './offer-changes-choice.ts';
import { foodChanged } from './offer-changes-dishes.ts';
import { menusChanged } from './offer-changes-menus.ts';
import { addOnsChanged, chargesChanged } from './offer-changes-prices.ts';
import { dueChanged, legalChanged, notIncludedChanged } from './offer-changes-terms.ts';

/**
 * Everything that a client finds changed between two revisions of an offer, in their words and with the sums of
 * each: what was, what is. Nothing is told of what stayed, nor of how the page looks and is served.
 */
export function offerChanges(before: OfferContent, now: OfferContent): ChangeGroup[] {
  const { allergenLaws } = now.kitchen;
  const say = wordsIn(now.terms.locale);
  return [
    ...changeGroup(say('changes.group.event'), eventChanged(before, now, say)),
    ...changeGroup(say('changes.group.guests'), guestsChanged(before, now)),
    ...changeGroup(say('changes.group.food'), [
      ...foodChanged(dishesOf(before), dishesOf(now), allergenLaws, now.terms.locale),
      ...lawsChanged(before, now, say),
    ]),
    ...menusChanged(before.terms, now.terms),
    ...changeGroup(say('changes.group.add-ons'), addOnsChanged(before.terms, now.terms)),
    ...changeGroup(say('changes.group.choice'), choiceChanged(before, now)),
    ...changeGroup(say('changes.group.charges'), chargesChanged(before.terms, now.terms)),
    ...changeGroup(say('changes.group.terms'), [
      ...dueChanged(before.terms, now.terms),
      ...notIncludedChanged(before, now, say),
      ...legalChanged(before.legal, now.legal, say),
    ]),
    ...changeGroup(say('changes.group.also'), textsChanged(before, now, say)),
  ];
}

function eventChanged(before: OfferContent, now: OfferContent, say: Say): string[] {
  return changedLines(say, eventTexts(before, say), eventTexts(now, say));
}

function eventTexts(offer: OfferContent, say: Say): Map<string, string> {
  const { client, occasion, date, serveAt, placeName, venue, validUntil, terms, kitchen } = offer;
  const place =
    terms.place.name === placeName
      ? placeName
      : say('changes.event.place.taxed', { place: placeName, other: terms.place.name });
  return new Map([
    [say('changes.event.valid-until'), dateText(validUntil, terms.locale)],
    [say('changes.event.occasion'), occasion],
    [say('changes.event.date'), dateText(date, terms.locale)],
    [say('changes.event.served-at'), clockText(serveAt, terms.locale)],
    [say('changes.event.place'), place],
    ...Object.entries(venue).map(([fact, text]) => [say('changes.event.venue', { fact }), text] as const),
    [say('changes.event.for'), client.name],
    [say('changes.event.email'), client.email ?? ''],
    [say('changes.event.time-zone'), kitchen.timeZone],
  ]);
}

function dishesOf({ terms }: OfferContent) {
  return [
    ...terms.packages.flatMap(({ courses }) => courses.flatMap(({ dishes }) => dishes)),
    ...terms.addOns.flatMap(({ dishes }) => dishes ?? []),
  ];
}

function lawsChanged(before: OfferContent, now: OfferContent, say: Say): string[] {
  const words = ({ kitchen }: OfferContent) =>
    listText(
      scriptWordsIn(now.terms.locale),
      kitchen.allergenLaws.map((law) => say(law === 'us' ? 'changes.laws.us' : 'changes.laws.eu')),
    );
  return changedLine(say, say('changes.laws'), words(before), words(now));
}

function textsChanged(before: OfferContent, now: OfferContent, say: Say): string[] {
  const stories = new Set([...Object.keys(now.stories), ...Object.keys(before.stories)]);
  const nameOf = (id: string) => now.terms.packages.find((each) => each.id === id)?.name;
  return [
    ...(before.letter === now.letter ? [] : [say('changes.letter')]),
    ...[...stories].flatMap((id) => {
      const name = nameOf(id);
      return name === undefined || before.stories[id] === now.stories[id]
        ? []
        : [say('changes.story', { menu: name })];
    }),
    ...notIn(now.notices, before.notices).map((text) => say('changes.notice.new', { text })),
    ...notIn(before.notices, now.notices).map((text) => say('changes.notice.gone', { text })),
    ...changedLines(say, houseTexts(before, say), houseTexts(now, say)),
  ];
}

function houseTexts({ kitchen }: OfferContent, say: Say): Map<string, string> {
  return new Map([
    [say('changes.house.name'), kitchen.name],
    [say('changes.house.town'), kitchen.town ?? ''],
    [say('changes.house.email'), kitchen.email ?? ''],
    [say('changes.house.phone'), kitchen.phone ?? ''],
    [say('changes.house.tested'), kitchen.glutenTested ?? ''],
    [say('changes.house.answers'), answerWords(kitchen.acceptances, say)],
  ]);
}

function answerWords(way: OfferContent['kitchen']['acceptances'], say: Say): string {
  if (!way || way.by === 'download') return say('changes.answers.file');
  if (way.by === 'mail') return say('changes.answers.mail', { to: way.to });
  return way.to === null ? say('changes.answers.page') : say('changes.answers.page-to', { to: way.to });
}
