import type { Book } from '../../book/book.ts';
import type { Decimal } from '../../engine/money/decimal.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { add, compare, type Money, roundToMinor } from '../../engine/money/money.ts';
import type { MoneySetting } from '../../engine/plan/money/at.ts';
import type { CostLine } from '../../engine/plan/money/costs.ts';
import { type MarginCurve, marginCurve } from '../../engine/plan/money/curve.ts';
import { type EventMoney, eventMoney, staffMealsCost } from '../../engine/plan/money/event-money.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { counted } from '../../engine/text/counted.ts';
import { billedWhy } from '../../exports/words/billed-why.ts';
import { lineWhy } from '../../exports/words/line-words.ts';
import type { BrandView } from '../brand/brand-view.ts';
import type { EventSide } from './event-side.ts';
import type { MoneyLineView, OwnerMoneyView } from './owner-money.ts';
import { marginView } from './owner-money-curve.ts';
import { revenueWords } from './revenue-words.ts';
import type { BannerView } from './view.ts';

type Show = (sum: Money | null) => string;

/** The usual share of food in its price, for comparing: common practice, no source. */
const USUAL_FOOD = '25 to 35 % is common practice';

/** An event's money, from its plan, the accepted terms and what kitchen.yaml says of costs. */
export function ownerMoneyView(
  book: Book,
  { status, plan, document }: EventSide,
  terms: MoneySetting['terms'],
  brand: BrandView,
  banner: BannerView | null,
): OwnerMoneyView {
  const setting = settingOf(book, status.choice, plan, terms);
  const money = eventMoney(plan, status.billed, setting);
  const { locale, currency } = book.kitchen;
  const show: Show = (sum) => (sum ? displayMoney(roundToMinor(sum), locale) : 'not known');
  const curve = marginCurve(setting);
  const { occasion, client, id } = document.event;
  const meals = staffMealsCost(plan.input, book.prices, currency);
  return {
    kind: 'owner money',
    brand,
    banner,
    title: `${occasion} – ${client}`,
    event: id,
    figures: figuresOf(money, show),
    revenue: money.revenue.lines.map((line) => {
      const { label, why } = revenueWords(line, terms);
      return { label, amount: show(line.amount), why };
    }),
    earned: show(money.revenue.net),
    costs: money.costs.map(({ label, amount, why }) => ({
      label,
      amount: amount ? show(amount) : 'not stated',
      why: whyWords(why, terms),
    })),
    spent: show(money.spent),
    margin: show(money.margin),
    food: [...foodLines(money, show), ...mealLines(meals, plan.input.guests.staff, show)],
    notSaid: money.costs
      .filter(({ kind, amount }) => kind !== 'food' && amount === null)
      .map(({ label, why }) => `${label}: ${whyWords(why, terms)}`),
    curve: curve && marginView(curve, differsText(curve, status, money, show, terms), show),
    notes: notesOf(status, curve, terms.locale),
  };
}

function whyWords(why: CostLine['why'], terms: MoneySetting['terms']): string {
  return typeof why === 'string' ? why : lineWhy(why, terms);
}

function settingOf(
  book: Book,
  choice: MoneySetting['choice'],
  plan: EventSide['plan'],
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
): MoneyLineView[] {
  const of = (part: Money | null, whole: Money) => `${show(part)} of ${show(whole)}`;
  return [
    {
      label: 'Margin',
      amount: show(margin),
      why: `${percentOf(shares.margin)} of what is earned; ${show(marginUsed)} if everything left over gets used`,
    },
    {
      label: 'Food cost, planned',
      amount: percentOf(shares.foodUsed),
      why: `${of(food.used, revenue.food)} of food and drink billed, before discount; ${USUAL_FOOD}`,
    },
    {
      label: 'Food cost, bought',
      amount: percentOf(shares.foodBought),
      why: `${show(food.bought)} in whole packs and ${show(food.fees)} in fees, of the same sales`,
    },
    {
      label: 'Labor',
      amount: percentOf(shares.labour),
      why: `${of(labour, revenue.net)} earned, where pay is entered`,
    },
  ];
}

function foodLines({ food }: EventMoney, show: Show): MoneyLineView[] {
  return [
    {
      label: 'As planned',
      amount: show(food.used),
      why: 'the amounts needed, at pack prices',
    },
    { label: 'As bought', amount: show(food.bought), why: 'the whole packs of the order' },
    { label: 'Fees', amount: show(food.fees), why: 'what suppliers charge for delivery' },
    {
      label: 'Left over',
      amount: show(food.left),
      why: 'what the packs hold beyond the need, at pack prices',
    },
    ...(food.stock.amount.gt(0)
      ? [
          {
            label: 'From the storeroom',
            amount: show(food.stock),
            why: 'in the plan, paid for earlier, and not in this event’s costs',
          },
        ]
      : []),
  ];
}

function mealLines(cost: Money | null | undefined, staff: number, show: Show): MoneyLineView[] {
  if (staff === 0) return [];
  const label = 'Staff meals';
  return cost === undefined
    ? [
        {
          label,
          amount: 'none',
          why: `${staff} ${staff === 1 ? 'works' : 'work'}, but no shared dish counts staff (counts: … staff)`,
        },
      ]
    : [
        {
          label,
          amount: show(cost),
          why: `${counted(staff, 'meal')}, part of the food as planned, at the lowest prices on offer`,
        },
      ];
}

/** Why the margin at the planned count is not the event's own: what is bought or what is billed differs. */
function differsText(
  curve: MarginCurve,
  status: EventSide['status'],
  money: EventMoney,
  show: Show,
  terms: MoneySetting['terms'],
): string {
  const point = curve.points.find(({ guests }) => guests === curve.planned);
  const { margin, food } = money;
  if (!point || !margin || !food.bought || compare(margin, point.margin) === 0) return '';
  const { planned } = curve;
  if (compare(money.revenue.net, point.revenue) !== 0)
    return `At ${counted(planned, 'guest')} ${show(point.margin)} would be left; this event leaves ${show(margin)}, because a different count is billed: ${billedWhy(status, terms.locale)}.`;
  return `At ${counted(planned, 'guest')} ${show(point.margin)} are left if each food is bought on its own, for ${show(point.food)} with fees; this event’s order costs ${show(add(food.bought, food.fees))}, because of minimum orders and stock, and leaves ${show(margin)}.`;
}

function notesOf(status: EventSide['status'], curve: MarginCurve | null, locale: string): string[] {
  const [planned, billed] = [atTable(status.choice.guests), atTable(status.billed.guests)];
  const notes = [
    'Amounts exclude tax. Rent, insurance, vehicles, office hours and whatever else the kitchen pays whether or not it cooks are not included.',
  ];
  if (planned !== billed)
    notes.push(
      `Earned is what is billed, spent is what is planned: ${billedWhy(status, locale)}; the kitchen cooks for ${planned}.`,
    );
  if (!curve)
    notes.push(
      'How the margin changes with the guest count can’t be shown while a food has no price or no measure; the plan’s findings name it.',
    );
  return notes;
}

/** A share with one decimal, half-up: `31.4 %`; `not known` for none. */
export function percentOf(share: Decimal | null): string {
  return share ? `${share.times(100).toFixed(1)} %`.replace('-', '−') : 'not known';
}
