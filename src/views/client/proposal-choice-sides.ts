import { addOnsOf, type Choice, entryOf } from '../../engine/quote/choice.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { plainChoice } from '../../engine/quote/plain-choice.ts';
import { choiceAtCount } from '../../engine/quote/scaled-choice.ts';
import type { PackageTerms } from '../../engine/quote/terms.ts';
import type { ClientTerms } from './terms.ts';

/** One side of a comparison. */
export interface Side {
  readonly package: string;
  /** Adults and children. */
  readonly guests: number;
  /** Add-ons taken, by id. */
  readonly addOns: Readonly<Record<string, number>>;
}

/** The choice that a side stands for: as proposed, at its guest count, with its add-ons as far as they go with it. */
export function choiceOfSide(data: ClientTerms, side: Side): Choice {
  const chosen = packageOf(data, side.package);
  const allowed = addOnsOf(data.terms, chosen).map(({ id }) => id);
  const addOns = Object.fromEntries(
    allowed.flatMap((id) => {
      const taken = entryOf(side.addOns, id) ?? 0;
      return taken > 0 ? [[id, taken]] : [];
    }),
  );
  return choiceAtCount(chosen, { ...proposedChoice(data, chosen), addOns }, side.guests);
}

/** What is proposed of a package; where nothing is, its plainest choice for the people of the proposal. */
export function proposedChoice(data: ClientTerms, chosen: PackageTerms): Choice {
  const proposed = data.choices.find((choice) => choice.package === chosen.id);
  const [first] = data.choices;
  const guests = first?.guests ?? { adults: 1, children: 0, vendors: 0, staff: data.staff };
  return proposed ?? plainChoice(chosen, guests);
}

/** The package of an id, or the first where there is none of the id. */
export function packageOf({ terms }: ClientTerms, id: string): PackageTerms {
  const found = terms.packages.find((each) => each.id === id) ?? terms.packages[0];
  if (!found) throw new Error('the terms have no package');
  return found;
}

/** The sides a page begins with: the menu proposed beside the next one, or beside itself with a quarter more guests. */
export function firstSides(data: ClientTerms): [Side, Side] {
  const [proposed] = data.choices;
  const a = packageOf(data, proposed?.package ?? '');
  const other = data.terms.packages.find((each) => each.id !== a.id);
  const choice = proposedChoice(data, a);
  const guests = atTable(choice.guests);
  const side = (chosen: PackageTerms, count: number) => ({
    package: chosen.id,
    guests: count,
    addOns: proposedChoice(data, chosen).addOns,
  });
  return [side(a, guests), other ? side(other, guests) : side(a, Math.round((guests * 5) / 4))];
}

/** The guest counts a slider spans: from two fifths of the proposal's to seven quarters, in round figures. */
export function countRange(data: ClientTerms): { readonly from: number; readonly to: number } {
  const own = atTable(data.choices[0]?.guests ?? { adults: 50, children: 0 });
  const least = Math.max(1, ...data.choices.map((choice) => choice.guests.children + 1));
  return {
    from: Math.max(least, Math.floor((own * 2) / 25) * 5),
    to: Math.max(least + 10, Math.ceil((own * 7) / 40) * 10),
  };
}
