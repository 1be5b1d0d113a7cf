import Fraction from 'fraction.js';

/** How a kind of drink is shared: by adults, by children, and who takes it at all. */
export interface StatedShare {
  /** Share of the drinks of those who take it. */
  readonly share: Fraction;
  /** Share of the children's drinks, where it is stated. */
  readonly children?: Fraction;
  readonly forAdults: boolean;
  readonly forChildren: boolean;
}

/** What one kind is of an adult's drinks and of a child's; 0 for whoever does not take it. */
export interface DrinkShare {
  readonly adult: Fraction;
  readonly child: Fraction;
}

/** The shares of all kinds, in their order, with what the adults' and the children's come to. */
export interface DrinkShares {
  readonly shares: readonly DrinkShare[];
  /** Sum over all that adults take; 0 where they take none. */
  readonly adults: Fraction;
  /** Sum over all that children take, before it is spread; 0 where they take none. */
  readonly children: Fraction;
  /** True where some kind states the children's share, so that nothing is spread for them. */
  readonly childrenStated: boolean;
}

const NONE = new Fraction(0n);

/**
 * Adults take each kind by its share. Where some kind states the children's share, children take each by that, else by the
 * common one; where none does, they take what is for them in the proportions of the common shares, all together 100 %.
 */
export function drinkShares(kinds: readonly StatedShare[]): DrinkShares {
  const childrenStated = kinds.some(({ children }) => children !== undefined);
  const plain = kinds.map(({ share, children, forAdults, forChildren }) => ({
    adult: forAdults ? share : NONE,
    child: forChildren ? (children ?? share) : NONE,
  }));
  const adults = plain.reduce((sum, { adult }) => sum.add(adult), NONE);
  const children = plain.reduce((sum, { child }) => sum.add(child), NONE);
  const spread = childrenStated || children.n === 0n ? new Fraction(1n) : children;
  return {
    shares: plain.map(({ adult, child }) => ({ adult, child: child.div(spread) })),
    adults,
    children,
    childrenStated,
  };
}
