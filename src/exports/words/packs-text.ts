/** So many packs of a kind: `3 × 2 lb bag`; a pack that a list writes as one of itself, `1 x 1 pt`, is `1 pt`. */
export function packsText(count: number, pack: string): string {
  return `${count} × ${pack.replace(/^1 [x×] /, '')}`;
}
