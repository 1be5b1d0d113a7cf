import { NONE, ONE, over, plus, type Ratio, ratio, ratioFrom, times } from './ratio.ts';
import { type Amount, amountFrom, inUnit, isCounted } from './second-amount.ts';

// biome-ignore lint/suspicious/noExplicitAny: content as it is written, before anything has checked it.
type Text = any;

/** A drink as guests take it, before any overage: what an adult and a child take, and who counts. */
export interface SecondDrink {
  readonly recipe: string;
  /** What all guests take, a hot day in it. */
  readonly taken: Amount;
  /** Guests, a child by its share of an adult. */
  readonly counted: Ratio;
  /** How many drinks that is. */
  readonly drinks: Ratio;
  readonly ice: string;
}

const whole = (count: number) => ratio(BigInt(count), 1n);
const minus = (a: Ratio, b: Ratio) => plus(a, { n: -b.n, d: b.d });

/**
 * The drinks of a package from its text: kinds, then what goes with them, then plain water (recipe `water`). From 85 °F
 * on a quarter more of all that is not hot is drunk: common practice, as docs/drinks.md says.
 */
export function drinksAgain(
  drinks: Text,
  setting: {
    readonly hours: string;
    readonly counts: string;
    readonly guests: Readonly<Record<string, number>>;
    readonly high: number | undefined;
    readonly recipe: (id: string) => Text;
    readonly holdsAlcohol: (id: string) => boolean;
  },
): SecondDrink[] {
  const { guests, counts, recipe } = setting;
  const hours = ratioFrom((drinks.hours ?? setting.hours).split(' ')[0]);
  const rate = (text: string): Ratio => {
    const [, first, then] = /^([\d½¼¾.]+) in the first hour, then ([\d½¼¾.]+) per hour$/.exec(text) ?? [];
    if (first !== undefined && then !== undefined)
      return plus(ratioFrom(first), times(ratioFrom(then), minus(hours, ONE)));
    return times(ratioFrom(text.split(' ')[0] ?? ''), hours);
  };
  const each = { adult: rate(drinks['per guest']), child: rate(drinks['per child'] ?? drinks['per guest']) };
  const kinds: [string, Text][] = [...Object.entries<Text>(drinks.kinds), ['water', drinks.water]].filter(
    ([, text]) => text !== undefined,
  ) as [string, Text][];
  const said = kinds.map(([id, text]) => {
    const own = typeof text === 'string' ? { share: text } : text;
    const alcohol = id !== 'water' && setting.holdsAlcohol(id);
    return { id, own, alcohol, forChildren: own.for !== 'adults' && !alcohol };
  });
  const stated = said.some(({ own }) => own.children !== undefined);
  const ofChildren = said.map(({ own, forChildren }) =>
    forChildren ? ratioFrom(own.children ?? own.share) : NONE,
  );
  const spread = stated ? ONE : ofChildren.reduce(plus, NONE);
  const has = (group: string) => counts.split(',').some((part) => part.trim() === group);
  const adults = (alcohol: boolean) =>
    plus(whole(guests.adults ?? 0), !alcohol && has('vendors') ? whole(guests.vendors ?? 0) : NONE);
  const made = said.map(({ id, own, alcohol }, index): SecondDrink & { extra: Text } => {
    const batch = id === 'water' ? amountFrom('1 gal') : amountFrom(firstOf(recipe(id).makes));
    const glass = own.glass
      ? amountFrom(own.glass)
      : isCounted(batch.unit)
        ? { ...batch, size: ONE }
        : amountFrom('8 fl oz');
    const adult = times(each.adult, ratioFrom(own.share));
    const child = times(each.child, over(ofChildren[index] ?? NONE, spread));
    const counted = plus(adults(alcohol), times(whole(guests.children ?? 0), over(child, adult)));
    const hot =
      setting.high !== undefined && setting.high >= 85 && (id === 'water' || recipe(id).hold !== 'hot');
    const drinksTaken = times(times(counted, adult), hot ? ratio(5n, 4n) : ONE);
    const taken = { unit: glass.unit, size: times(drinksTaken, glass.size) };
    return { recipe: id, taken, counted, drinks: drinksTaken, ice: own.ice ?? 'none', extra: own.with ?? {} };
  });
  const extras = made.flatMap(({ extra, drinks: count, counted }) =>
    Object.entries<string>(extra).map(([id, text]): SecondDrink => {
      const one = amountFrom(text);
      const taken = { unit: one.unit, size: times(count, one.size) };
      return { recipe: id, taken, counted, drinks: count, ice: 'none' };
    }),
  );
  return [
    ...made.filter(({ recipe: id }) => id !== 'water'),
    ...extras,
    ...made.filter(({ recipe: id }) => id === 'water'),
  ];
}

const firstOf = (makes: string | string[]): string =>
  (Array.isArray(makes) ? makes[0] : makes.split(',')[0]) ?? '';

/**
 * Ice for a drink in pounds, with what melts unused, a quarter or on a hot day half of it: 4 oz in a glass (common practice);
 * in a tub what melts to cool what is carried to 40 °F, water's 4.186 kJ for each kilogram and degree against the 333.55 kJ
 * that a kilogram of ice takes up (CRC Handbook of Chemistry and Physics, from memory).
 */
export function iceAgain({ ice, drinks }: SecondDrink, liters: Ratio, high: number | undefined): Ratio {
  const glass = ice.includes('glass') ? times(drinks, ratio(1n, 4n)) : NONE;
  const warm = whole(Math.max(high ?? 72, 72) - 40);
  const celsius = over(times(warm, ratio(5n, 1n)), ratio(9n, 1n));
  const kilograms = over(times(times(liters, ratioFrom('4.186')), celsius), ratioFrom('333.55'));
  const tub = ice.includes('tub') ? inUnit({ size: kilograms, unit: 'kg' }, 'lb', []).size : NONE;
  const melts = (high ?? 0) >= 85 ? ratio(3n, 2n) : ratio(5n, 4n);
  return times(plus(glass, tub), melts);
}
