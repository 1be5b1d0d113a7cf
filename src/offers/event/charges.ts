import { exactMoneyText, money } from '../../engine/money/money.ts';
import type { Charge } from '../../engine/quote/with-charges.ts';
import type { BrokenFact, EventFact } from '../../schema/event-fact.ts';

/** What is recorded as broken or missing of one thing at one price: the facts of it summed. */
export interface Loss {
  readonly item: string;
  readonly name: string;
  readonly what: BrokenFact['what'];
  /** Never below 0. */
  readonly count: number;
  /** What the client is charged for each; null where nothing is. */
  readonly each: string | null;
  readonly class: BrokenFact['class'];
  /** The reasons given, each once. */
  readonly why: readonly string[];
}

/** What is broken or missing of an event, in the order first recorded; what was taken back in full is left out. */
export function lossesOf(facts: readonly EventFact[]): Loss[] {
  const broken = facts.filter((fact) => fact.kind === 'broken');
  const same = Map.groupBy(broken, ({ item, what, each, class: of }) =>
    [item, what, each ?? '', of].join('\n'),
  );
  return [...same.values()].flatMap((some): Loss[] => {
    const { item, name, what, each, class: of } = some[0]!;
    const count = some.reduce((sum, fact) => sum + fact.count, 0);
    const why = [...new Set(some.flatMap((fact) => fact.why ?? []))];
    return count > 0 ? [{ item, name, what, count, each, class: of, why }] : [];
  });
}

/** What of it the client is billed for. `nameOf` is what a line of it is called. */
export function chargesFor(
  facts: readonly EventFact[],
  currency: string,
  nameOf: (loss: Loss) => string,
): Charge[] {
  return lossesOf(facts).flatMap((loss) =>
    loss.each === null
      ? []
      : [
          {
            name: nameOf(loss),
            class: loss.class,
            count: loss.count,
            each: exactMoneyText(money(loss.each, currency)),
          },
        ],
  );
}
