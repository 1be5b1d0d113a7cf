import type { Book } from '../../book/book.ts';
import { durationText, minutes } from '../../engine/measure/duration.ts';
import type { Decimal } from '../../engine/money/decimal.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { add, compare, type Money, roundToMinor } from '../../engine/money/money.ts';
import type { MoneySetting } from '../../engine/plan/money/at.ts';
import type { CostLine, PaidHours } from '../../engine/plan/money/costs.ts';
import { type MarginCurve, marginCurve } from '../../engine/plan/money/curve.ts';
import { type EventMoney, eventMoney, staffMealsCost } from '../../engine/plan/money/event-money.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { billedWhy } from '../../exports/words/billed-why.ts';
import { clockOf } from '../../exports/words/clock-text.ts';
import { lineWhy } from '../../exports/words/line-words.ts';
import { type SayStatement, statementsIn } from '../../exports/words/statement-text.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { BrandView } from '../brand/brand-view.ts';
import type { EventSide } from './event-side.ts';
import { ownerHours } from './owner-hours-of.ts';
import type { MoneyLineView, OwnerMoneyView } from './owner-money.ts';
import { marginView } from './owner-money-curve.ts';
import { revenueWords } from './revenue-words.ts';
import type { BannerView } from './view.ts';

type Show = (sum: Money | null) => string;

/** An event's money, from its plan, the accepted terms and what kitchen.yaml says of costs. */
export function ownerMoneyView(
  book: Book,
  side: EventSide,
  terms: MoneySetting['terms'],
  brand: BrandView,
  banner: BannerView | null,
): OwnerMoneyView {
  const { status, plan, document, hours } = side;
  const setting = settingOf(book, side, terms);
  const money = eventMoney(plan, status.billed, setting);
  const { locale, currency } = book.kitchen;
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  const show: Show = (sum) => (sum ? displayMoney(roundToMinor(sum), locale) : say('money.not-known'));
  const curve = marginCurve(setting);
  const { occasion, client, id } = document.event;
  const meals = staffMealsCost(plan.input, book.prices, currency);
  return {
    kind: 'owner money',
    brand,
    banner,
    title: `${occasion} – ${client}`,
    event: id,
    figures: figuresOf(money, show, say),
    revenue: money.revenue.lines.map((line) => ({ ...revenueWords(line, terms), amount: show(line.amount) })),
    earned: show(money.revenue.net),
    costs: money.costs.map(({ label, amount, why }) => ({
      label: inWords(label),
      amount: amount ? show(amount) : say('money.cost-not-stated'),
      why: whyWords(why, terms, inWords, say),
    })),
    spent: show(money.spent),
    margin: show(money.margin),
    hours: ownerHours(hours, book.kitchen, show, say),
    food: [...foodLines(money, show, say), ...mealLines(meals, plan.input.guests.staff, show, say)],
    notSaid: money.costs
      .filter(({ kind, amount }) => kind !== 'food' && amount === null)
      .map(({ label, why }) =>
        say('money.line', { label: inWords(label), why: whyWords(why, terms, inWords, say) }),
      ),
    curve: curve && marginView(curve, differsText(curve, status, money, show, say, locale), show, say),
    notes: notesOf(status, curve, hours, say, locale),
  };
}

/** Why a cost is so much; one calculated like a line of the bill as that is told. */
function whyWords(
  why: CostLine['why'],
  terms: MoneySetting['terms'],
  inWords: SayStatement,
  say: Say,
): string {
  if (typeof why === 'object' && 'pay' in why) return paidWords(why, terms, say);
  return typeof why === 'object' && 'why' in why ? lineWhy(why, terms) : inWords(why);
}

function paidWords({ people, hours, pay }: PaidHours, { locale }: MoneySetting['terms'], say: Say): string {
  const { from, until, sold } = hours;
  return say('money.paid', {
    people,
    time: durationText(minutes(until - from)),
    pay: displayMoney(pay, locale),
    from: clockOf(from),
    until: clockOf(until),
    sold: durationText(sold.each),
  });
}

function settingOf(
  book: Book,
  { status: { choice }, plan, hours, kitchenHours }: EventSide,
  terms: MoneySetting['terms'],
): MoneySetting {
  const { kitchen, prices, suppliers } = book;
  const chosen = terms.packages.find((each) => each.id === choice.package);
  if (!chosen)
    throw new Error(`a checked acceptance chooses a package that is not in its offer: ${choice.package}`);
  const stock = plan.purchases.flatMap(({ ingredient, stock: taken }) =>
    taken ? [[ingredient.id, taken] as const] : [],
  );
  return {
    terms,
    chosen,
    style: chosen.style,
    kitchen,
    input: plan.input,
    choice,
    ...(hours && { hours }),
    ...(kitchenHours && { kitchenHours }),
    buying: {
      prices,
      day: plan.input.buyingDay,
      currency: kitchen.currency,
      suppliers,
      usual: new Set(plan.order.orders.map(({ supplier }) => supplier)),
      stock: new Map(stock),
    },
  };
}

function figuresOf(
  { revenue, margin, marginUsed, shares, food, labour }: EventMoney,
  show: Show,
  say: Say,
): MoneyLineView[] {
  const shareText = (share: Decimal | null) => percentOf(share) ?? say('money.not-known');
  return [
    {
      label: say('money.margin'),
      amount: show(margin),
      why: say('money.margin.why', { share: shareText(shares.margin), used: show(marginUsed) }),
    },
    {
      label: say('money.food-planned'),
      amount: shareText(shares.foodUsed),
      // 25 to 35 % is common practice, no source.
      why: say('money.food-planned.why', { part: show(food.used), whole: show(revenue.food) }),
    },
    {
      label: say('money.food-bought'),
      amount: shareText(shares.foodBought),
      why: say('money.food-bought.why', { packs: show(food.bought), fees: show(food.fees) }),
    },
    {
      label: say('money.labor'),
      amount: shareText(shares.labour),
      why: say('money.labor.why', { part: show(labour), whole: show(revenue.net) }),
    },
  ];
}

function foodLines({ food }: EventMoney, show: Show, say: Say): MoneyLineView[] {
  return [
    { label: say('money.as-planned'), amount: show(food.used), why: say('money.as-planned.why') },
    { label: say('money.as-bought'), amount: show(food.bought), why: say('money.as-bought.why') },
    { label: say('money.fees'), amount: show(food.fees), why: say('money.fees.why') },
    { label: say('money.left-over'), amount: show(food.left), why: say('money.left-over.why') },
    ...(food.stock.amount.gt(0)
      ? [{ label: say('money.storeroom'), amount: show(food.stock), why: say('money.storeroom.why') }]
      : []),
  ];
}

function mealLines(cost: Money | null | undefined, staff: number, show: Show, say: Say): MoneyLineView[] {
  if (staff === 0) return [];
  const label = say('money.staff-meals');
  return cost === undefined
    ? [
        {
          label,
          amount: say('money.staff-meals.none'),
          why: say('money.staff-meals.none.why', { n: staff }),
        },
      ]
    : [{ label, amount: show(cost), why: say('money.staff-meals.why', { n: staff }) }];
}

/** Why the margin at the planned count is not the event's own: what is bought or what is billed differs. */
function differsText(
  curve: MarginCurve,
  status: EventSide['status'],
  money: EventMoney,
  show: Show,
  say: Say,
  locale: string,
): string {
  const point = curve.points.find(({ guests }) => guests === curve.planned);
  const { margin, food } = money;
  if (!point || !margin || !food.bought || compare(margin, point.margin) === 0) return '';
  const both = { n: curve.planned, planned: show(point.margin), margin: show(margin) };
  if (compare(money.revenue.net, point.revenue) !== 0)
    return say('money.differs-billed', { ...both, why: billedWhy(status, locale) });
  return say('money.differs-order', {
    ...both,
    food: show(point.food),
    order: show(add(food.bought, food.fees)),
  });
}

function notesOf(
  status: EventSide['status'],
  curve: MarginCurve | null,
  hours: EventSide['hours'],
  say: Say,
  locale: string,
): string[] {
  const [planned, billed] = [atTable(status.choice.guests), atTable(status.billed.guests)];
  return [
    say('money.note.tax'),
    ...(hours?.length === 0 ? [] : [say(hours ? 'money.note.paid' : 'money.note.sold')]),
    ...(planned === billed ? [] : [say('money.note.billed', { why: billedWhy(status, locale), planned })]),
    ...(curve ? [] : [say('money.note.no-curve')]),
  ];
}

/** A share with one decimal, half-up: `31.4 %`; undefined for none. */
export function percentOf(share: Decimal | null): string | undefined {
  return share ? `${share.times(100).toFixed(1)} %`.replace('-', '−') : undefined;
}
