import type { Day } from '../../engine/calendar/day.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import type { PlanAlert } from '../form/event.ts';
import { dateText } from '../words/date-text.ts';

/**
 * What the crew must know of the swaps made for one event: what goes and comes, the allergens that come with it,
 * and what the client is to be told, or was on the day that `toldOn` gives. The swaps that bring an allergen or lose
 * a diet first.
 */
export function substitutionAlerts(
  substitutions: readonly SubstitutionFact[],
  locale: string,
  nameOf: (id: string) => string,
  toldOn: (fact: SubstitutionFact) => Day | undefined,
): PlanAlert[] {
  const risk = ({ contains, mayContain, dietsLost }: SubstitutionFact) =>
    contains.length + mayContain.length + dietsLost.length > 0 ? 0 : 1;
  return [...substitutions]
    .sort((a, b) => risk(a) - risk(b))
    .map((fact) => {
      const { on, from, to, contains, mayContain, dietsLost, tell } = fact;
      const day = toldOn(fact);
      const told =
        day === undefined ? 'The client must be told' : `The client was told on ${dateText(day, locale)}`;
      const parts = [
        contains.length > 0 ? `NOW CONTAINS ${contains.join(', ').toUpperCase()}.` : '',
        mayContain.length > 0 ? `NOW MAY CONTAIN ${mayContain.join(', ').toUpperCase()}.` : '',
        dietsLost.length > 0 ? `No longer ${dietsLost.join(', ')}.` : '',
        `Swapped on ${dateText(on, locale)} for this event only.`,
        tell.length > 0 ? `${told}: ${tell.join(' ')}` : '',
      ];
      return {
        about: `${nameOf(to)} instead of ${nameOf(from)}`,
        what: parts.filter((text) => text !== '').join(' '),
        who: [],
        notFor: [],
        notKnown: [],
        suits: [],
      };
    });
}
