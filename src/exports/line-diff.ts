/** Lines that stand unchanged before and after a change. */
const CONTEXT = 3;

/**
 * The change from one text to another as a unified diff of one hunk, which `patch` takes: from the first line that
 * differs to the last, with three lines around. Both are taken to end in a line break. Empty where they are the same.
 */
export function lineDiff(file: string, before: string, after: string): string {
  if (before === after) return '';
  const [old, young] = [before, after].map((text) => text.replace(/\n$/, '').split('\n')) as [
    string[],
    string[],
  ];
  const same = (a: string | undefined, b: string | undefined) => a !== undefined && a === b;
  let head = 0;
  while (same(old[head], young[head])) head += 1;
  let tail = 0;
  while (tail < Math.min(old.length, young.length) - head && same(old.at(-1 - tail), young.at(-1 - tail)))
    tail += 1;
  const start = Math.max(0, head - CONTEXT);
  const end = Math.min(old.length, old.length - tail + CONTEXT);
  const last = old.length - tail;
  const youngLast = young.length - tail;
  const lines = [
    ...old.slice(start, head).map((line) => ` ${line}`),
    ...old.slice(head, last).map((line) => `-${line}`),
    ...young.slice(head, youngLast).map((line) => `+${line}`),
    ...old.slice(last, end).map((line) => ` ${line}`),
  ];
  const span = (count: number) => `${start + 1},${count}`;
  return [
    `--- ${file}`,
    `+++ ${file}`,
    `@@ -${span(end - start)} +${span(end - start + youngLast - last)} @@`,
    ...lines,
  ].join('\n');
}
