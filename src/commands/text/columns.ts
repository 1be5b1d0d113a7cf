/** Rows as aligned text columns; those named in `right` are set flush right, as sums are. */
export function columns(rows: readonly (readonly string[])[], right: readonly number[] = []): string {
  const widths: number[] = [];
  for (const row of rows)
    for (const [index, cell] of row.entries()) widths[index] = Math.max(widths[index] ?? 0, [...cell].length);
  return rows
    .map((row) =>
      row
        .map((cell, index) => {
          const gap = ' '.repeat((widths[index] ?? 0) - [...cell].length);
          return right.includes(index) ? gap + cell : cell + gap;
        })
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
