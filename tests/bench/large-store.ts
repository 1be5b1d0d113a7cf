import type { Seeded } from './seeded.ts';

/** One invented food of the large kitchen. */
export interface LargeFood {
  readonly id: string;
  /** The store-room file it stands in. */
  readonly shelf: string;
  readonly yaml: string;
}

const SHELVES = ['bins', 'barrels', 'crates', 'tins', 'jars', 'sacks', 'racks', 'chests'];
const CONTAINED = [
  'none',
  'none',
  'none',
  'none',
  'milk',
  'egg',
  'wheat',
  'soy',
  'celery',
  'mustard',
  'hazelnut',
];
const ORIGIN: Readonly<Record<string, string>> = { milk: 'milk', egg: 'egg' };

/** Invented foods, each with what it contains, a conversion and a yield. */
export function largeFoods(random: Seeded, count: number): LargeFood[] {
  return Array.from({ length: count }, (_, index) => {
    const id = `food-${String(index + 1).padStart(3, '0')}`;
    const contains = random.of(CONTAINED);
    const yaml = [
      `${id}:`,
      `  name: Food number ${index + 1}`,
      `  from: ${ORIGIN[contains] ?? 'plant'}`,
      `  contains: ${contains}`,
      '  may contain: none',
      `  conversions: [1 cup = ${120 + random.below(120)} g]`,
      `  yields: { trimmed: ${70 + random.below(28)} % }`,
      `  keeps: ${7 + random.below(300)} days`,
      `  storage: ${random.of(['dry', 'chilled', 'frozen'])}`,
      '',
    ].join('\n');
    return { id, shelf: SHELVES[index % SHELVES.length]!, yaml };
  });
}

/** `suppliers.yaml` with as many sellers as asked. */
export function largeSuppliers(count: number): { ids: string[]; yaml: string } {
  const ids = Array.from({ length: count }, (_, index) => `seller-${index + 1}`);
  const yaml = ids
    .map((id, index) =>
      [
        `${id}:`,
        `  name: Seller number ${index + 1}`,
        `  lead days: ${1 + (index % 2)}`,
        '  delivery days: mon, tue, wed, thu, fri',
        `  minimum order: ${60 + 20 * index}.00`,
        `  delivery fee: ${10 + 5 * index}.00`,
        '',
      ].join('\n'),
    )
    .join('');
  return { ids, yaml };
}

/** Each food is sold by two sellers in two packs each. */
export function largePriceLists(
  random: Seeded,
  foods: readonly LargeFood[],
  suppliers: readonly string[],
): Record<string, string> {
  const rows = new Map(suppliers.map((id) => [id, ['ingredient,pack,price,item number,valid from']]));
  for (const [index, { id }] of foods.entries()) {
    const cents = 90 + random.below(500);
    for (const turn of [0, 1]) {
      const seller = suppliers[(index + turn) % suppliers.length]!;
      for (const pounds of [1 + turn, 10]) {
        const price = Math.ceil((cents * pounds * (pounds > 5 ? 85 : 100)) / 100) + turn * 7;
        const code = `${seller.replace('seller-', 'S')}${1000 + index}${pounds}`;
        rows.get(seller)!.push(`${id},${pounds} lb,${(price / 100).toFixed(2)},${code},2022-01-01`);
      }
    }
  }
  return Object.fromEntries([...rows].map(([id, lines]) => [`prices/${id}.csv`, `${lines.join('\n')}\n`]));
}
