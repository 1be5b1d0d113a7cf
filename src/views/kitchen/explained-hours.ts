import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { laterWays } from '../../engine/plan/clock/later-ways.ts';
import type { ExplainedHours } from '../../exports/explanation.ts';
import { chainText, laterText } from '../../exports/words/chain-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import { plannedTogether } from './schedule-for.ts';

/**
 * For a step of an event on a date: the chain of what holds it where it is, and what would let it begin later. Nothing for
 * events that are over, whose plan is as it was kept.
 */
export function explainedHours(book: Book, event: string, today: Day): ExplainedHours {
  const { kitchen } = book;
  const { plans, schedule } = plannedTogether(book, today);
  const words = {
    say: wordsIn(kitchen.locale),
    system: kitchen.measures,
    stations: kitchen.stations,
    equipment: kitchen.equipment,
    occasions: new Map([...plans].map(([id, { input }]) => [id, input.occasion])),
  };
  const { say } = words;
  return (date, recipe, number) => {
    if (!plans.has(event)) return [];
    const { clock } = schedule.on(date as Day);
    const place = clock.served.find(({ plan }) => plan.input.id === event)?.place;
    const steps = [...clock.steps, ...(place?.steps ?? [])];
    const step = steps.find(
      ({ batch, number: own }) =>
        own === number &&
        batch.recipe.id === recipe &&
        batch.events.some(({ plan }) => plan.input.id === event),
    );
    if (!step) return [];
    const there = step.where !== 'kitchen';
    const chain = there ? (place?.chainOf(step.id) ?? []) : clock.chainOf(step.id);
    const others = chain.filter(({ what }) => what.kind !== 'step' || what.step.id !== step.id);
    const early = step.batch.events.every(({ plan }) => plan.input.date !== date);
    return [
      ...others.map((link) => say('clock.chain.then', { link: chainText(link, words) })),
      ...(there ? [] : laterWays(clock, step, chain).map((way) => laterText(way, words))),
      early ? say('clock.later.prep') : say('clock.later.end'),
    ];
  };
}
