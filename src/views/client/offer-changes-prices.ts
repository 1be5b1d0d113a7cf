import { countsWords, listWords } from '../../engine/quote/counted-words.ts';
import { LINE_CLASSES } from '../../engine/quote/line-class.ts';
import type { AddOnTerms, Terms } from '../../engine/quote/terms.ts';
import { changedLine, changedLines, notIn } from '../kitchen/change-line.ts';
import {
  addOnWords,
  discountWords,
  minimumSpendWords,
  serviceChargeWords,
  staffWords,
} from '../price-words.ts';
import { shown } from '../quote-view-of.ts';
import { portionChanged } from './offer-changes-dishes.ts';

/** Add-ons that came or went, and those of another name, price or food. */
export function addOnsChanged(before: Terms, now: Terms): string[] {
  const past = new Map(before.addOns.map((each) => [each.id, each]));
  const present = new Set(now.addOns.map(({ id }) => id));
  return [
    ...now.addOns.flatMap((addOn) => {
      const was = past.get(addOn.id);
      return was
        ? addOnChanged(was, addOn, before, now)
        : [`${addOn.name} can be added: ${addOnWords(addOn, now)}.`];
    }),
    ...before.addOns
      .filter(({ id }) => !present.has(id))
      .map(({ name }) => `${name} can no longer be added.`),
  ];
}

function addOnChanged(was: AddOnTerms, is: AddOnTerms, before: Terms, now: Terms): string[] {
  const past = new Map((was.dishes ?? []).map((dish) => [dish.recipe, dish]));
  const present = new Map((is.dishes ?? []).map((dish) => [dish.recipe, dish]));
  const named = (ids: readonly string[]) =>
    ids.map((id) => (present.get(id) ?? past.get(id))?.name ?? id).join(', ');
  const came = notIn([...present.keys()], [...past.keys()]);
  const left = notIn([...past.keys()], [...present.keys()]);
  return [
    ...(was.name === is.name ? [] : [`${was.name} is now called ${is.name}.`]),
    ...changedLine(is.name, addOnWords(was, before), addOnWords(is, now)),
    // Of a price for all or by the hour nobody is counted, but its food is made for somebody.
    ...(was.per === 'flat' || was.per === 'hour'
      ? changedLine(`${is.name}, counted`, countsWords(was.counts), countsWords(is.counts))
      : []),
    ...(came.length > 0 ? [`Comes with ${is.name} now: ${named(came)}.`] : []),
    ...(left.length > 0 ? [`Comes no longer with ${is.name}: ${named(left)}.`] : []),
    ...[...present.values()].flatMap((dish) => {
      const other = past.get(dish.recipe);
      return other ? portionChanged(other, dish, now) : [];
    }),
  ];
}

/** What every quote is charged besides menus and add-ons: people who serve, delivery, discount, charges and tax. */
export function chargesChanged(before: Terms, now: Terms): string[] {
  return [
    ...changedLine('Currency', before.currency, now.currency),
    ...staffChanged(before, now),
    ...changedLines(chargeTexts(before), chargeTexts(now)),
    ...(before.place.taxIncluded === now.place.taxIncluded
      ? []
      : [now.place.taxIncluded ? 'Prices now include the tax.' : 'Tax is now added to the prices.']),
    ...(before.exempt === now.exempt
      ? []
      : [now.exempt ? 'You are charged no tax.' : 'You are charged tax.']),
  ];
}

function chargeTexts(terms: Terms): Map<string, string> {
  const { delivery, discount, serviceCharge, minimumSpend, place, taxBy } = terms;
  return new Map([
    ...(delivery ? [[delivery.label, shown(delivery.price, terms)] as const] : []),
    ...(discount ? [[discount.label, discountWords(discount, terms)] as const] : []),
    ...(serviceCharge ? [[serviceCharge.label, serviceChargeWords(serviceCharge, terms)] as const] : []),
    ['Least spend', minimumSpend ? minimumSpendWords(minimumSpend, terms) : ''] as const,
    ...LINE_CLASSES.map((line) => [`Tax on ${line}`, place.tax[line]] as const),
    ['Tax is rounded', taxBy === 'line' ? 'for each line' : 'once, for the whole bill'] as const,
  ]);
}

/** People who serve, for each menu that is offered in both; said once where it is the same for all of them. */
function staffChanged(before: Terms, now: Terms): string[] {
  const shared = now.packages.filter(({ id }) => before.packages.some((each) => each.id === id));
  const roles = new Set([...now.staff, ...before.staff].map(({ role }) => role));
  return [...roles].flatMap((role) => {
    const called = (terms: Terms) => terms.staff.find((each) => each.role === role)?.name;
    const name = called(now) ?? called(before) ?? role;
    const pairs = shared.map((menu) => ({
      menu: menu.name,
      was: staffText(before, role, menu.id),
      is: staffText(now, role, menu.id),
    }));
    const same = Map.groupBy(pairs, ({ was, is }) => `${was}\n${is}`);
    return [...same.values()].flatMap((group) => {
      const [first] = group;
      if (!first) return [];
      const label =
        group.length === shared.length ? name : `${name} with ${listWords(group.map(({ menu }) => menu))}`;
      return changedLine(label, first.was, first.is);
    });
  });
}

function staffText(terms: Terms, role: string, menu: string): string {
  return terms.staff
    .filter((each) => each.role === role && (each.packages === undefined || each.packages.includes(menu)))
    .map((each) => `${each.name}, ${staffWords(each, terms)}`)
    .join('; ');
}
