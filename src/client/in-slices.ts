const SLICE_MILLISECONDS = 6;

/**
 * Works through items a few milliseconds at a time, so that the page answers in between. Returns what stops it; once
 * stopped, `done` is not called.
 */
export function inSlices<T>(items: readonly T[], work: (item: T) => void, done: () => void): () => void {
  let at = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const slice = () => {
    const end = performance.now() + SLICE_MILLISECONDS;
    while (at < items.length && performance.now() < end) {
      work(items[at] as T);
      at += 1;
    }
    if (at < items.length) timer = setTimeout(slice);
    else done();
  };
  timer = setTimeout(slice);
  return () => clearTimeout(timer);
}
