import { sayOfTicks } from './tick-words.ts';

/** What a device remembers of one ticked line. */
interface Kept {
  /** The day it was ticked, ISO 8601. */
  on: string;
  /** What the line said then. */
  amount: string;
}

const PREFIX = 'salver tick ';
/** Ticks older than this are of events long over. */
const KEPT_DAYS = 90;

/**
 * Boxes that stay ticked on this device, on every page of the kitchen that has the same line. A line whose amount has
 * changed since is not ticked any more and says so. Where the browser keeps nothing, boxes are ticked all the same.
 */
export function startTicks(): void {
  const boxes = [...document.querySelectorAll<HTMLInputElement>('input[data-tick]')];
  if (boxes.length === 0) return;
  forgetOld();
  const lists = Map.groupBy(boxes, (box) => box.closest('ul, ol, table') ?? box);
  const shows = [...lists].flatMap(([list, all]) =>
    [...Map.groupBy(all, ({ dataset }) => dataset.counts ?? 'done')].map(([counts, own]) =>
      addState(list, own, counts, set),
    ),
  );
  show();
  document.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement) || target.dataset.tick === undefined) return;
    set([target], target.checked);
  });
  // Another page of the kitchen on this device.
  addEventListener('storage', show);
  // A page that the browser kept while another one was worked on.
  addEventListener('pageshow', show);

  function set(some: readonly HTMLInputElement[], ticked: boolean): void {
    for (const box of some) {
      keep(box, ticked);
      // The same line may stand on the page twice, in the day's list and on its recipe's card.
      for (const twin of boxes)
        if (twin.dataset.tick === box.dataset.tick) {
          twin.checked = ticked;
          said(twin, '');
        }
    }
    for (const each of shows) each();
  }

  function show(): void {
    for (const box of boxes) {
      const kept = readKept(box.dataset.tick ?? '');
      if (kept === undefined) continue;
      box.checked = kept !== null && kept.amount === box.dataset.amount;
      said(box, kept !== null && !box.checked ? sayOfTicks('was', { amount: kept.amount }) : '');
    }
    for (const each of shows) each();
  }
}

/** How much of a list is done, and a way to clear it that can be taken back: hands are wet. */
function addState(
  list: Element,
  boxes: readonly HTMLInputElement[],
  counts: string,
  set: (some: readonly HTMLInputElement[], ticked: boolean) => void,
): () => void {
  const row = document.createElement('p');
  const count = document.createElement('span');
  const button = document.createElement('button');
  row.className = 'tick-state';
  row.hidden = true;
  button.type = 'button';
  row.append(count, button);
  list.before(row);
  let cleared: readonly HTMLInputElement[] = [];
  button.addEventListener('click', () => {
    const ticked = boxes.filter((box) => box.checked);
    if (ticked.length > 0) {
      set(ticked, false);
      cleared = ticked;
    } else {
      const back = cleared;
      cleared = [];
      set(back, true);
    }
    update();
  });
  return update;

  function update(): void {
    const done = boxes.filter((box) => box.checked).length;
    if (done > 0) cleared = [];
    row.hidden = done === 0 && cleared.length === 0;
    count.textContent = sayOfTicks('state', { done, all: boxes.length, counts });
    button.textContent = sayOfTicks(done > 0 ? 'clear' : 'restore');
  }
}

/** Writes what has become of a tick at the end of its line; nothing where there is nothing to say. */
function said(box: HTMLInputElement, text: string): void {
  const line = box.closest('li') ?? box.parentElement!;
  let note = line.querySelector(':scope > .tick-note');
  if (text === '') {
    note?.remove();
    return;
  }
  if (!note) {
    note = document.createElement('p');
    note.className = 'tick-note';
    line.append(note);
  }
  note.textContent = text;
}

/** What was kept of a line: null where it was not ticked, undefined where the browser keeps nothing. */
function readKept(line: string): Kept | null | undefined {
  let text: string | null;
  try {
    text = localStorage.getItem(PREFIX + line);
  } catch {
    return undefined;
  }
  try {
    const kept = JSON.parse(text ?? 'null') as Partial<Kept> | null;
    return typeof kept?.amount === 'string' && typeof kept.on === 'string' ? (kept as Kept) : null;
  } catch {
    return null;
  }
}

function keep(box: HTMLInputElement, ticked: boolean): void {
  const name = PREFIX + box.dataset.tick;
  const kept: Kept = { on: new Date().toISOString().slice(0, 10), amount: box.dataset.amount ?? '' };
  try {
    if (ticked) localStorage.setItem(name, JSON.stringify(kept));
    else localStorage.removeItem(name);
  } catch {
    // A browser that keeps nothing still ticks, until the page is closed.
  }
}

function forgetOld(): void {
  const oldest = new Date(Date.now() - KEPT_DAYS * 86_400_000).toISOString().slice(0, 10);
  try {
    for (const name of Object.keys(localStorage)) {
      if (!name.startsWith(PREFIX)) continue;
      const kept = readKept(name.slice(PREFIX.length));
      if (!kept || kept.on < oldest) localStorage.removeItem(name);
    }
  } catch {
    // Nothing is kept, so nothing is old.
  }
}
