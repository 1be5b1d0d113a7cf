import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Book } from '../book/book.ts';
import { nearest } from '../book/findings/nearest.ts';
import { withAmount } from '../book/link/menu/with-amount.ts';
import { perGuestText } from '../engine/measure/per-guest.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { lineDiff } from '../exports/line-diff.ts';
import { eatenText } from '../exports/words/eaten-text.ts';
import { replaceText } from '../files/replace-text.ts';
import { type EatenDish, eatenSoFar, type Season } from '../offers/learned/eaten-so-far.ts';
import { type PortionProposal, portionProposal } from '../offers/learned/portion-proposals.ts';
import { wordsIn } from '../words/words-in.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';
import { type PortionChange, portionJson, portionsText } from './text/portions-text.ts';

/** Prints what events so far say of the amounts per guest, and writes the one that is accepted. */
export const command: Command = {
  summary: 'show what guests ate so far, and propose or accept per-guest amounts',
  usage: '[DISH] [--months 3-5] [--package ID] [--accept]',
  options: {
    months: {
      type: 'string',
      summary: 'only events in these months: 3-5, or 11-2 across the new year',
      value: 'N-N',
    },
    package: { type: 'string', summary: 'only the amounts of this package', value: 'ID' },
    accept: { type: 'boolean', summary: 'write the proposed amount into its file' },
  },
  async run(call) {
    const { months, package: only, accept } = call.flags;
    const season = typeof months === 'string' ? seasonIn(months) : undefined;
    if (season && !season.ok) return wrongCall(call, `--months: ${season.what}; ${season.wayOut}.`);
    const dish = call.args.join(' ');
    if (accept === true && dish === '')
      return wrongCall(call, 'Name the dish whose amount you accept: portions DISH --accept.');
    const open = await openBook(call);
    if (!open) return 1;
    const found = dishesAsked(eatenSoFar(open.book, { season: season?.value }), dish);
    if (!found.ok) return refused(call, found);
    const asked = found.value.filter(({ packageId }) => !only || packageId === only);
    const { locale } = open.book.kitchen;
    const say = wordsIn(locale);
    const rows = asked.map((eaten) => ({
      eaten,
      text: eatenText(eaten, say),
      proposal: portionProposal(open.book, eaten),
    }));
    const changes: PortionChange[] = [];
    for (const { eaten, proposal } of rows) {
      const change = proposal && (await changeFor(call.contentDir, open.book, eaten, proposal));
      if (change && !change.ok) return refused(call, change);
      if (change) changes.push(change.value);
    }
    if (accept === true) {
      const [change, ...others] = changes;
      if (!change)
        return refused(call, {
          what: `no new amount of ${dish} is proposed`,
          wayOut: 'run `portions` to see the amounts',
        });
      if (others.length > 0)
        return refused(call, {
          what: `${changes.length} amounts of ${dish} are proposed, in ${changes.map(({ file }) => file).join(' and ')}`,
          wayOut: 'accept one at a time with --package',
        });
      await replaceText(join(call.contentDir, change.file), change.after);
      if (call.json)
        call.write(JSON.stringify({ accepted: { file: change.file, diff: change.diff } }, null, 2));
      else
        call.write(
          `${change.diff}\nWritten: ${change.file}. Offers already issued keep the amounts they were issued with.`,
        );
      return 0;
    }
    if (call.json)
      call.write(
        JSON.stringify(
          rows.map((row) => portionJson(row, changes)),
          null,
          2,
        ),
      );
    else
      call.write(
        rows.length === 0 ? 'No leftovers have been recorded yet.' : portionsText(rows, changes, locale),
      );
    return 0;
  },
};

/** Months by their numbers, `3-5`, or one month. */
function seasonIn(text: string): Parsed<Season> {
  const [, from = '0', to = from] = /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(text.trim()) ?? [];
  const [first, last] = [Number(from), Number(to)];
  const sound = [first, last].every((month) => month >= 1 && month <= 12);
  return sound
    ? parsed({ from: first, to: last })
    : notParsed(`“${text}” is not a range of months`, 'write 3-5 for March to May');
}

function dishesAsked(all: readonly EatenDish[], dish: string): Parsed<readonly EatenDish[]> {
  const word = dish.trim().toLowerCase();
  if (word === '') return parsed(all);
  const found = all.filter(({ recipe, name }) => recipe === word || name.toLowerCase() === word);
  if (found.length > 0) return parsed(found);
  const close = nearest(
    word,
    all.map(({ recipe }) => recipe),
  );
  return notParsed(
    `no leftovers of “${dish}” have been recorded yet`,
    close ? `did you mean ${close}?` : 'record them after the event with `leftovers`',
  );
}

/** The changed file; undefined where the amount stays. */
async function changeFor(
  contentDir: string,
  book: Book,
  { recipe }: EatenDish,
  proposal: PortionProposal,
): Promise<Parsed<PortionChange> | undefined> {
  if (!proposal.proposed) return undefined;
  const file = book.placeOf(`package/${proposal.packageId}`)?.file ?? `packages/${proposal.packageId}.mdx`;
  const before = await readFile(join(contentDir, file), 'utf8');
  const after = withAmount(before, proposal.course, recipe, perGuestText(proposal.proposed));
  if (!after.ok) return notParsed(`${file}: ${after.what}`, after.wayOut);
  return parsed({ proposal, file, after: after.value, diff: lineDiff(file, before, after.value) });
}
