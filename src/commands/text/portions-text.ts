import { perGuestText } from '../../engine/measure/per-guest.ts';
import { type EatenText, fewEventsText } from '../../exports/words/eaten-text.ts';
import { perGuestWords } from '../../exports/words/per-guest-as-read.ts';
import { textAsRead } from '../../exports/words/text-as-read.ts';
import type { EatenDish } from '../../offers/learned/eaten-so-far.ts';
import type { PortionProposal } from '../../offers/learned/portion-proposals.ts';
import { wordsIn } from '../../words/words-in.ts';
import { columns } from './columns.ts';

/** A dish with what events say of it and what that proposes. */
export interface PortionRow {
  readonly eaten: EatenDish;
  readonly text: EatenText;
  readonly proposal: PortionProposal | undefined;
}

/** The proposed line in its file. */
export interface PortionChange {
  readonly proposal: PortionProposal;
  /** In the content folder. */
  readonly file: string;
  readonly after: string;
  readonly diff: string;
}

/** Events so far as a table, with the proposed changes as diffs. */
export function portionsText(
  rows: readonly PortionRow[],
  changes: readonly PortionChange[],
  locale: string,
): string {
  const say = wordsIn(locale);
  const figures = (row: readonly string[]) => row.map((each) => textAsRead(each, locale));
  const table = rows.map(({ eaten, text, proposal }) => [
    eaten.name,
    eaten.packageId,
    eaten.style,
    ...figures([
      String(text.events),
      text.nothingLeft === 0 ? '' : String(text.nothingLeft),
      text.mean === '' ? say('terminal.or-more', { amount: text.atLeast }) : text.mean,
      text.from === text.to ? text.from : say('terminal.range', { from: text.from, to: text.to }),
      text.spread,
      proposal ? perGuestWords(proposal.present, say) : '',
      proposal
        ? proposal.proposed
          ? perGuestWords(proposal.proposed, say)
          : say('terminal.stays')
        : say('terminal.off-menu'),
    ]),
  ]);
  const head = [
    say('terminal.dish'),
    say('terminal.menu'),
    say('terminal.style'),
    say('terminal.events'),
    say('terminal.none-left'),
    say('terminal.eaten-each'),
    say('terminal.interval'),
    say('terminal.spread'),
    say('terminal.now'),
    say('terminal.proposed'),
  ];
  return [
    columns([figures(head), ...table]),
    `\n${say('terminal.until-accepted', { few: fewEventsText(say) })}`,
    ...changes.map(({ diff }) => `\n${diff}`),
    ...(changes.length > 0 ? [`\n${say('terminal.accept-one')}`] : []),
  ].join('\n');
}

/** The same of one dish, for a program. */
export function portionJson({ eaten, text, proposal }: PortionRow, changes: readonly PortionChange[]) {
  const change = changes.find((each) => each.proposal === proposal);
  return {
    recipe: eaten.recipe,
    name: eaten.name,
    package: eaten.packageId,
    course: eaten.course,
    style: eaten.style,
    eaten: text,
    at: eaten.events.map(({ event, date }) => ({ event, date })),
    present: proposal ? perGuestText(proposal.present) : null,
    proposed: proposal?.proposed ? perGuestText(proposal.proposed) : null,
    file: change?.file ?? null,
    diff: change?.diff ?? null,
  };
}
