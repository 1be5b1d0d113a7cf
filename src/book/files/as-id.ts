/** The id that a name which is none comes nearest to: `Olive Oil` → `olive-oil`; empty where it has no letter or digit. */
export function asId(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
}
