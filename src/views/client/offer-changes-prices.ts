import { LINE_CLASSES } from '../../engine/quote/line-class.ts';
import type { AddOnTerms, Terms } from '../../engine/quote/terms.ts';
import { classWord } from '../../exports/words/class-words.ts';
import { groupsText, listText } from '../../exports/words/counted-text.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import {
  addOnWords,
  discountWords,
  minimumSpendWords,
  serviceChargeWords,
  staffWords,
} from '../price-words.ts';
import { shown } from '../quote-view-of.ts';
import { changedLine, changedLines, notIn } from './change-line.ts';
import { portionChanged } from './offer-changes-dishes.ts';

/** Add-ons that came or went, and those of another name, price or food. */
export function addOnsChanged(before: Terms, now: Terms): string[] {
  const say = wordsIn(now.locale);
  const past = new Map(before.addOns.map((each) => [each.id, each]));
  const present = new Set(now.addOns.map(({ id }) => id));
  return [
    ...now.addOns.flatMap((addOn) => {
      const was = past.get(addOn.id);
      return was
        ? addOnChanged(was, addOn, before, now)
        : [say('changes.add-on.new', { addOn: addOn.name, price: addOnWords(addOn, now) })];
    }),
    ...before.addOns
      .filter(({ id }) => !present.has(id))
      .map(({ name }) => say('changes.add-on.gone', { addOn: name })),
  ];
}

function addOnChanged(was: AddOnTerms, is: AddOnTerms, before: Terms, now: Terms): string[] {
  const say = wordsIn(now.locale);
  const script = scriptWordsIn(now.locale);
  const past = new Map((was.dishes ?? []).map((dish) => [dish.recipe, dish]));
  const present = new Map((is.dishes ?? []).map((dish) => [dish.recipe, dish]));
  const named = (ids: readonly string[]) =>
    ids.map((id) => (present.get(id) ?? past.get(id))?.name ?? id).join(', ');
  const came = notIn([...present.keys()], [...past.keys()]);
  const left = notIn([...past.keys()], [...present.keys()]);
  return [
    ...(was.name === is.name ? [] : [say('changes.renamed', { before: was.name, now: is.name })]),
    ...changedLine(say, is.name, addOnWords(was, before), addOnWords(is, now)),
    // Of a price for all or by the hour nobody is counted, but its food is made for somebody.
    ...(was.per === 'flat' || was.per === 'hour'
      ? changedLine(
          say,
          say('changes.add-on.counted', { addOn: is.name }),
          groupsText(script, was.counts),
          groupsText(script, is.counts),
        )
      : []),
    ...(came.length > 0 ? [say('changes.add-on.with', { addOn: is.name, dishes: named(came) })] : []),
    ...(left.length > 0 ? [say('changes.add-on.without', { addOn: is.name, dishes: named(left) })] : []),
    ...[...present.values()].flatMap((dish) => {
      const other = past.get(dish.recipe);
      return other ? portionChanged(other, dish, now) : [];
    }),
  ];
}

/** What every quote is charged besides menus and add-ons: people who serve, delivery, discount, charges and tax. */
export function chargesChanged(before: Terms, now: Terms): string[] {
  const say = wordsIn(now.locale);
  return [
    ...changedLine(say, say('changes.charge.currency'), before.currency, now.currency),
    ...staffChanged(before, now),
    ...changedLines(say, chargeTexts(before, say), chargeTexts(now, say)),
    ...(before.place.taxIncluded === now.place.taxIncluded
      ? []
      : [say(now.place.taxIncluded ? 'changes.charge.tax-included' : 'changes.charge.tax-on-top')]),
    ...(before.exempt === now.exempt
      ? []
      : [say(now.exempt ? 'changes.charge.exempt' : 'changes.charge.taxed')]),
  ];
}

function chargeTexts(terms: Terms, say: Say): Map<string, string> {
  const { delivery, discount, serviceCharge, minimumSpend, place, taxBy } = terms;
  return new Map([
    ...(delivery ? [[delivery.label, shown(delivery.price, terms)] as const] : []),
    ...(discount ? [[discount.label, discountWords(discount, terms)] as const] : []),
    ...(serviceCharge ? [[serviceCharge.label, serviceChargeWords(serviceCharge, terms)] as const] : []),
    [say('changes.charge.spend'), minimumSpend ? minimumSpendWords(minimumSpend, terms) : ''] as const,
    ...LINE_CLASSES.map(
      (line) =>
        [say('changes.charge.tax-on', { class: classWord(line, terms.locale) }), place.tax[line]] as const,
    ),
    [
      say('changes.charge.rounding'),
      say(taxBy === 'line' ? 'changes.charge.rounding.line' : 'changes.charge.rounding.bill'),
    ] as const,
  ]);
}

/** People who serve, for each menu that is offered in both; said once where it is the same for all of them. */
function staffChanged(before: Terms, now: Terms): string[] {
  const say = wordsIn(now.locale);
  const script = scriptWordsIn(now.locale);
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
      const menus = listText(
        script,
        group.map(({ menu }) => menu),
      );
      const label =
        group.length === shared.length ? name : say('changes.charge.staff-with', { role: name, menus });
      return changedLine(say, label, first.was, first.is);
    });
  });
}

function staffText(terms: Terms, role: string, menu: string): string {
  return terms.staff
    .filter((each) => each.role === role && (each.packages === undefined || each.packages.includes(menu)))
    .map((each) =>
      wordsIn(terms.locale)('changes.charge.staff', { role: each.name, price: staffWords(each, terms) }),
    )
    .join('; ');
}
