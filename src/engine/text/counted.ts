/** A count with its noun: `1 guest`, `90 guests`, `0 children`. A count that is written already, `87½`, is taken as it stands. The plural where it is not the noun with an s. */
export function counted(count: number | bigint | string, one: string, many = `${one}s`): string {
  return `${count} ${Number(count) === 1 ? one : many}`;
}
