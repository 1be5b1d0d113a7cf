import type { Day } from '../../engine/calendar/day.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import { wordsIn } from '../../words/words-in.ts';
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
  const say = wordsIn(locale);
  const risk = ({ contains, mayContain, dietsLost }: SubstitutionFact) =>
    contains.length + mayContain.length + dietsLost.length > 0 ? 0 : 1;
  return [...substitutions]
    .sort((a, b) => risk(a) - risk(b))
    .map((fact) => {
      const { on, from, to, contains, mayContain, dietsLost, tell } = fact;
      const day = toldOn(fact);
      const said = tell.join(' ');
      const told =
        day === undefined
          ? say('alerts.to-tell', { what: said })
          : say('alerts.told', { day: dateText(day, locale), what: said });
      const parts = [
        contains.length > 0
          ? say('alerts.now-contains', { allergens: contains.join(', ').toUpperCase() })
          : '',
        mayContain.length > 0
          ? say('alerts.now-may-contain', { allergens: mayContain.join(', ').toUpperCase() })
          : '',
        dietsLost.length > 0 ? say('alerts.no-longer', { diets: dietsLost.join(', ') }) : '',
        say('alerts.swapped', { day: dateText(on, locale) }),
        tell.length > 0 ? told : '',
      ];
      return {
        about: say('alerts.instead-of', { dish: nameOf(to), other: nameOf(from) }),
        what: parts.filter((text) => text !== '').join(' '),
        who: [],
        notFor: [],
        notKnown: [],
        suits: [],
      };
    });
}
