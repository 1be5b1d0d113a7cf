/** A task's minutes on the clock of its date. */
export interface Hours {
  readonly begins: number;
  readonly handsOff: number;
  readonly ends: number;
}

/** What a task of a list is at a minute: being done, in the oven or the like, next to do; nothing for the others. */
export type TaskState = 'now' | 'unattended' | 'next' | 'first' | 'then' | '';

/**
 * What each task of a station is at a minute of its date; null on any other day, when the first two stand for what the day
 * begins with. Tasks are in order of their beginnings.
 */
export function taskStates(tasks: readonly Hours[], minute: number | null): TaskState[] {
  if (minute === null) return tasks.map((_, index) => (index === 0 ? 'first' : index === 1 ? 'then' : ''));
  const next = tasks.findIndex(({ begins }) => begins > minute);
  return tasks.map(({ begins, handsOff, ends }, index) => {
    if (index === next) return 'next';
    if (begins > minute || ends <= minute) return '';
    return minute < handsOff ? 'now' : 'unattended';
  });
}

/** Minutes from the midnight with which a date begins, by the clock of the kitchen; by the device's own where it knows no such zone. */
export function minuteOn(date: string, now: Date, timeZone: string): number {
  const parts = new Map(
    clockIn(timeZone)
      .formatToParts(now)
      .map(({ type, value }) => [type, Number(value)]),
  );
  const part = (name: Intl.DateTimeFormatPartTypes) => parts.get(name) ?? 0;
  const today = Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'));
  return Math.floor((today - Date.parse(`${date}T00:00:00Z`)) / 60_000);
}

/** As `kitchenDay` has it: a file that the scripts of two pages share is one that a page opened from the disk can’t load. */
function clockIn(timeZone: string): Intl.DateTimeFormat {
  const fields = {
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    hourCycle: 'h23',
    calendar: 'gregory',
    numberingSystem: 'latn',
  } as const;
  try {
    return new Intl.DateTimeFormat('en', { ...fields, timeZone });
  } catch {
    return new Intl.DateTimeFormat('en', fields);
  }
}

const LOOKS_EVERY_MILLISECONDS = 15_000;

/** Keeps the day's page showing, station by station, what is done now and what comes next, by the device's clock. */
export function startNowNext(): void {
  const panel = document.querySelector<HTMLElement>('[data-now-next]');
  if (!panel) return;
  const { nowNext: date = '', zone = '' } = panel.dataset;
  const lists = [...panel.querySelectorAll<HTMLElement>('ol')].map((list) => ({
    list,
    tasks: [...list.querySelectorAll<HTMLElement>('li')].map((line) => {
      const [begins = 0, handsOff = 0, ends = 0] = (line.dataset.hours ?? '').split(' ').map(Number);
      return { line, begins, handsOff, ends };
    }),
  }));
  const all = lists.flatMap(({ tasks }) => tasks);
  const first = Math.min(0, ...all.map(({ begins }) => begins));
  const last = Math.max(1440, ...all.map(({ ends }) => ends));
  show();
  setInterval(show, LOOKS_EVERY_MILLISECONDS);
  // A phone that was in a pocket shows the hour it is now at once.
  document.addEventListener('visibilitychange', show);
  addEventListener('pageshow', show);

  function show(): void {
    const minute = minuteOn(date, new Date(), zone);
    const shown = minute >= first && minute < last ? minute : null;
    for (const { list, tasks } of lists) {
      const states = taskStates(tasks, shown);
      for (const [index, { line }] of tasks.entries()) {
        const state = states[index] ?? '';
        line.hidden = state === '';
        line.dataset.state = state;
        const word = line.querySelector('.now-state');
        if (word && state !== '') word.textContent = panel?.dataset[state] ?? '';
      }
      const done = list.parentElement?.querySelector<HTMLElement>('.now-done');
      if (done) done.hidden = states.some((state) => state !== '');
    }
  }
}
