import { wordsIn } from '../../words/words-in.ts';

/**
 * An allergen’s name, by itself or by law, in the spelling of a locale: data writes `sulphites`, which the Food and Drug
 * Administration of the United States spells sulfites (21 CFR 101.100(a)(4), from memory). Names in capitals stay so.
 */
export function allergenAsRead(name: string, locale: string): string {
  const say = wordsIn(locale);
  return name.replace(/(sulphur dioxide and )?sulphites/gi, (found, byLaw: string | undefined) => {
    const word = say(byLaw ? 'allergens.law.sulphites' : 'allergens.sulphites');
    return found === found.toUpperCase() ? word.toUpperCase() : word;
  });
}
