/**
 * Does the work for each item, in their order, so many at a time. Once one fails no other is begun; its error is thrown
 * when those under way have ended, so that nothing goes on behind the caller's back.
 */
export async function severalAtOnce<T>(
  items: Iterable<T>,
  atOnce: number,
  work: (item: T) => Promise<void>,
): Promise<void> {
  const left = items[Symbol.iterator]();
  const failures: unknown[] = [];
  async function lane(): Promise<void> {
    for (let next = left.next(); !next.done && failures.length === 0; next = left.next()) {
      try {
        await work(next.value);
      } catch (error) {
        failures.push(error);
      }
    }
  }
  await Promise.all(Array.from({ length: atOnce }, lane));
  if (failures.length > 0) throw failures[0];
}
