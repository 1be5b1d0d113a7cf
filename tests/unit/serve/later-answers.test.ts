import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readSite } from '../../../src/build/read-site.ts';
import { countChange, sendGuestList } from '../../../src/client/answers.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { makeCountChange } from '../../../src/offers/answers/make-count-change.ts';
import { digestOfRecord } from '../../../src/offers/digest.ts';
import type { ClientTerms } from '../../../src/views/client/terms.ts';
import { fileWith } from '../../commands/accepted-kitchen.ts';
import { pictureOf } from '../../commands/kitchen-copy.ts';
import { run } from '../../commands/run.ts';
import { done, EVENT, factsIn, supperKitchen } from '../events/supper-kitchen.ts';
import { whole } from '../views/whole-site.ts';
import { post, running } from './running.ts';

const TODAY = '2027-04-26' as Day;

/** The kitchen with its supper accepted, and what its client's page would send a month later. */
async function accepted() {
  const dir = await supperKitchen();
  const offer = String(factsIn(dir)[0]?.fact.digest);
  const guests = { adults: 90, children: 0, vendors: 0, staff: 0 };
  const mains = { Main: { 'lamb-stew': 60, 'pea-pot': 30 } };
  const by = { event: EVENT, offer, made: TODAY, name: 'Tamsin Pell', note: '' };
  const change = makeCountChange({ guests, needs: { milk: 2, vegan: 6 }, mains }, by);
  const list = sealed({
    version: 1,
    kind: 'guest list',
    event: EVENT,
    offer,
    made: TODAY,
    csv: 'name,table,main,need\r\nAda Lund,1,Pea pot,vegan\r\n',
  });
  return { dir, change, list };
}

function sealed<T extends object>(record: T): T & { digest: string } {
  return { ...record, digest: digestOfRecord(record) };
}

const waiting = (dir: string) => (existsSync(join(dir, 'inbox')) ? readdirSync(join(dir, 'inbox')) : []);

describe('a client’s later answers', () => {
  test('wait in the inbox, are told of by kind, and are taken by the command that `check` names', async () => {
    const { dir, change, list } = await accepted();
    const { publicUrl, said } = await running(dir, { today: TODAY });
    const first = await post(publicUrl, JSON.stringify(change));
    expect([first.status, first.json]).toEqual([
      202,
      {
        received: change.digest,
        message: 'Your count change has arrived. We will look at it and write back to you.',
      },
    ]);
    expect((await post(publicUrl, JSON.stringify(list))).status).toBe(202);
    expect((await post(publicUrl, JSON.stringify(list))).status).toBe(202);
    expect(said.map((each) => each.replace(/:.*/, ''))).toEqual([
      'A count change has come in',
      'A guest list has come in',
    ]);
    const told = await done(dir, TODAY, 'accept', '--inbox');
    expect(told).toContain('a new count for pell-supper, 90 adults');
    const commands = [...told.matchAll(/to record it: (.+)/g)].map(([, words = '']) => words.split(' '));
    expect(commands.map(([name]) => name).sort()).toEqual(['guarantee', 'guests']);
    for (const [name = '', ...words] of commands) await done(dir, TODAY, name, ...words);
    expect(waiting(dir)).toEqual(['taken']);
    expect(factsIn(dir).map(({ fact }) => fact.kind)).toEqual(
      expect.arrayContaining(['guarantee', 'guest list']),
    );
    // Sent once more it is known, and no second one waits.
    expect((await post(publicUrl, JSON.stringify(change))).json).toEqual(first.json);
    expect(waiting(dir)).toEqual(['taken']);
  });

  test('made by the client’s page itself are taken as it posts them', async () => {
    const { dir, change, list } = await accepted();
    const { publicUrl } = await running(dir, { today: TODAY });
    const answers = { by: 'post', to: String(new URL('acceptances', publicUrl)) };
    const data = {
      proposal: EVENT,
      digest: change.offer,
      occasion: 'Supper',
      answers,
    } as unknown as ClientTerms;
    const sent = await sendGuestList(data, list.csv, TODAY);
    expect(sent.way).toEqual({ by: 'post' });
    const form = countChange(
      data,
      () => TODAY,
      () => {},
    );
    const file = form.file(change as unknown as Choice, new Map([['name', 'Tamsin Pell']]));
    expect(await form.send(file)).toEqual({ by: 'post' });
    expect(waiting(dir)).toHaveLength(2);
  });

  test('that a stopped run recorded and left are put away by the next', async () => {
    const { dir, change, list } = await accepted();
    const { publicUrl } = await running(dir, { today: TODAY });
    for (const [answer, name] of [
      [change, 'guarantee'],
      [list, 'guests'],
    ] as const) {
      await done(dir, TODAY, name, '--from', fileWith(JSON.stringify(answer)));
      await post(publicUrl, JSON.stringify(answer));
      const [left = ''] = waiting(dir).filter((each) => each !== 'taken');
      expect(await done(dir, TODAY, name, '--from', `inbox/${left}`)).toBe(
        'It was recorded before; it is now in inbox/taken.\n',
      );
      expect(waiting(dir)).toEqual(['taken']);
    }
    expect(factsIn(dir)).toHaveLength(4);
  });

  test('stand on the kitchen’s front page with the command that takes each, and on no other page', async () => {
    const { dir, list } = await accepted();
    const { publicUrl } = await running(dir, { today: TODAY });
    await post(publicUrl, JSON.stringify(list));
    const { shown } = await readSite(dir, () => TODAY);
    const views = (shown ? (await whole(shown.site)).pages : []).map(({ view }) => view);
    const front = views.find((view) => view.kind === 'kitchen');
    expect(front?.banner?.waiting).toEqual([
      `a guest list has come in for ${EVENT} — to record it: guests --from inbox/${waiting(dir)[0]}`,
    ]);
    expect(views.find((view) => view.kind === 'event')?.banner).toBeNull();
    expect(front?.banner?.errors).toBe(0);
  });

  test('given to `accept` are sent to their own command', async () => {
    const { dir, change } = await accepted();
    const { publicUrl } = await running(dir, { today: TODAY });
    await post(publicUrl, JSON.stringify(change));
    const [name = ''] = waiting(dir);
    const ran = await run(dir, 'accept', `inbox/${name}`, '--today', TODAY);
    expect(ran.err).toContain(
      `this is a count change, not an acceptance — record it with \`guarantee --from inbox/${name}\``,
    );
  });

  type Sent = Awaited<ReturnType<typeof accepted>>;
  test.each<[string, RegExp, (sent: Sent) => object, string?]>([
    [
      'another event',
      /^This count change names no offer/,
      ({ change }) => sealed({ ...change, event: 'other' }),
    ],
    [
      'an unknown offer',
      /^This guest list names no offer/,
      ({ list }) => sealed({ ...list, offer: '0'.repeat(64) }),
    ],
    ['a changed number', /count change was altered/, ({ change }) => ({ ...change, name: 'Mallory' })],
    ['a further field', /Unrecognized key/, ({ list }) => sealed({ ...list, extra: 1 })],
    [
      'mains that are not those of the guests',
      /^These counts can’t be accepted/,
      ({ change }) => sealed({ ...change, mains: { Main: { 'lamb-stew': 1, 'pea-pot': 2 } } }),
    ],
    [
      'tomorrow’s date',
      /dated Tuesday, April 27, 2027, and today is/,
      ({ change }) => sealed({ ...change, made: '2027-04-27' }),
    ],
    [
      'a date before the acceptance',
      /dated Wednesday, March 31, 2027/,
      ({ list }) => sealed({ ...list, made: '2027-03-31' }),
    ],
    ['a count after the deadline', /until Saturday, May 8, 2027/, ({ change }) => change, '2027-05-09'],
    ['a list after the day', /This event is over/, ({ list }) => list, '2027-05-16'],
    [
      'a dish that the menu has not',
      /^This guest list can’t be accepted: row 2: “goose”/,
      ({ list }) => sealed({ ...list, csv: 'name,main\r\nAda,goose\r\n' }),
    ],
  ])('are refused for %s, and nothing is written', async (_what, sentence, change, today = TODAY) => {
    const sent = await accepted();
    const { publicUrl, said } = await running(sent.dir, { today });
    const before = pictureOf(sent.dir);
    const answer = await post(publicUrl, JSON.stringify(change(sent)));
    expect(answer.status).toBe(422);
    expect(answer.json.refused).toMatch(sentence);
    expect(pictureOf(sent.dir)).toEqual(before);
    expect(said).toEqual([]);
  });

  test('are refused where the event was called off, a list is taken after the deadline', async () => {
    const { dir, change, list } = await accepted();
    const late = await running(dir, { today: '2027-05-10' });
    expect((await post(late.publicUrl, JSON.stringify(list))).status).toBe(202);
    await done(dir, TODAY, 'cancel', EVENT);
    const { publicUrl } = await running(dir, { today: TODAY });
    const answer = await post(publicUrl, JSON.stringify(change));
    expect(answer.json.refused).toBe('This event was canceled. Please write to us.');
  });
});
