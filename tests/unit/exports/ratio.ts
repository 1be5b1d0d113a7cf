/** An exact ratio of whole numbers, kept here so that plans are reckoned a second time without the engine's numbers. */
export interface Ratio {
  readonly n: bigint;
  readonly d: bigint;
}

export function ratio(n: bigint, d: bigint): Ratio {
  const shared = divisor(n < 0n ? -n : n, d);
  return { n: n / shared, d: d / shared };
}

export const ONE = ratio(1n, 1n);
export const NONE = ratio(0n, 1n);
export const plus = (a: Ratio, b: Ratio) => ratio(a.n * b.d + b.n * a.d, a.d * b.d);
export const times = (a: Ratio, b: Ratio) => ratio(a.n * b.n, a.d * b.d);
export const over = (a: Ratio, b: Ratio) => ratio(a.n * b.d, a.d * b.n);
export const up = (a: Ratio) => ratio((a.n + a.d - 1n) / a.d, 1n);
export const textOf = ({ n, d }: Ratio) => (d === 1n ? `${n}` : `${n}/${d}`);

function divisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : divisor(b, a % b);
}

const GLYPHS: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅒': '1/10',
};

/** `2`, `2.5`, `1/3`, `1 1/2`, `2½`, `5 %` as a ratio. */
export function ratioFrom(text: string): Ratio {
  const plain = [...text.trim()].map((sign) => (GLYPHS[sign] ? ` ${GLYPHS[sign]}` : sign)).join('');
  if (plain.endsWith('%')) return over(ratioFrom(plain.slice(0, -1)), ratio(100n, 1n));
  return plain
    .trim()
    .split(/\s+/)
    .map((part) => {
      const [, whole = '', decimals = '', under = '1'] = /^(\d+)(?:\.(\d+))?(?:\/(\d+))?$/.exec(part) ?? [];
      if (whole === '') throw new Error(`“${text}” is no number`);
      return ratio(BigInt(whole + decimals), 10n ** BigInt(decimals.length) * BigInt(under));
    })
    .reduce(plus, NONE);
}
