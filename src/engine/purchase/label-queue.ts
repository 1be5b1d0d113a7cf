/** A queue that always hands out its least item, by the order given; equal items in any order. */
export class LeastFirst<T> {
  readonly #items: T[] = [];
  readonly #order: (a: T, b: T) => number;

  constructor(order: (a: T, b: T) => number) {
    this.#order = order;
  }

  push(item: T): void {
    const items = this.#items;
    let at = items.length;
    items.push(item);
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (this.#order(items[parent] as T, item) <= 0) break;
      items[at] = items[parent] as T;
      at = parent;
    }
    items[at] = item;
  }

  /** Removes and returns the least item; undefined when there is none. */
  pop(): T | undefined {
    const items = this.#items;
    const least = items[0];
    const last = items.pop();
    if (items.length === 0 || last === undefined) return least;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= items.length) break;
      if (child + 1 < items.length && this.#order(items[child + 1] as T, items[child] as T) < 0) child += 1;
      if (this.#order(last, items[child] as T) <= 0) break;
      items[at] = items[child] as T;
      at = child;
    }
    items[at] = last;
    return least;
  }
}
