import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { inboxName, putInInbox } from '../../../src/offers/answers/inbox.ts';
import {
  ACCEPTED,
  acceptanceOf,
  fileWith,
  forged,
  issuedKitchen,
  offerIn,
} from '../../commands/accepted-kitchen.ts';
import { run } from '../../commands/run.ts';

const accept = (dir: string, ...words: string[]) => run(dir, 'accept', ...words, '--today', ACCEPTED);

/** An issued kitchen with one sound acceptance waiting. */
async function withWaiting() {
  const dir = await issuedKitchen();
  const acceptance = acceptanceOf(offerIn(dir));
  await putInInbox(dir, acceptance);
  return { dir, acceptance, name: inboxName(acceptance) };
}

describe('accept --inbox', () => {
  test('lists who accepts which offer for how much, and what cannot be taken and why', async () => {
    const { dir, acceptance, name } = await withWaiting();
    writeFileSync(
      join(dir, 'inbox/z.json'),
      JSON.stringify(forged(acceptance, { total: '1.00', name: 'Mallory' })),
    );
    writeFileSync(join(dir, 'inbox/zz.json'), 'hello');
    const ran = await accept(dir, '--inbox');
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran.out).toBe(
      [
        `inbox/${name}`,
        '  Aine Trask (aine@lifeboat.example), 2027-04-28: lifeboat-evening, revision 1, 34 adults, 3 children, 1 vendor meal, €711.75',
        `  to record it: accept --inbox ${basename(name, '.json')}`,
        'inbox/z.json',
        '  Mallory (aine@lifeboat.example), 2027-04-28: lifeboat-evening, revision 1, 34 adults, 3 children, 1 vendor meal, €1.00',
        '  can’t be recorded: its total is €1.00, but by the offer’s terms it is €711.75 — ask the client to accept again from the page',
        'inbox/zz.json',
        '  can’t be recorded: this is not an acceptance file: it is not JSON — ask the client to send the page’s file again, unchanged',
        '',
      ].join('\n'),
    );
    const data = JSON.parse((await accept(dir, '--inbox', '--json')).out);
    expect(
      data.map((each: Record<string, unknown>) => [each.file, each.name, each.total, 'refused' in each]),
    ).toEqual([
      [`inbox/${name}`, 'Aine Trask', '711.75', false],
      ['inbox/z.json', 'Mallory', '1.00', true],
      ['inbox/zz.json', undefined, undefined, true],
    ]);
  });

  test('says so where nothing waits', async () => {
    expect(await accept(await issuedKitchen(), '--inbox')).toEqual({
      code: 0,
      out: 'The inbox is empty.\n',
      err: '',
    });
  });

  test.each<[string, (name: string, dir: string) => string[]]>([
    ['the name that the list gives', (name) => ['--inbox', basename(name, '.json')]],
    ['the file’s name', (name) => ['--inbox', name]],
    ['the name that check gives', (name) => [`inbox/${name}`]],
    ['its path', (name, dir) => [join(dir, 'inbox', name)]],
  ])('takes one by %s, and puts it with those taken', async (_how, words) => {
    const { dir, acceptance, name } = await withWaiting();
    const ran = await accept(dir, ...words(name, dir));
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran.out).toContain('Accepted: lifeboat-evening');
    expect(readdirSync(join(dir, 'inbox'))).toEqual(['taken']);
    const kept = JSON.parse(readFileSync(join(dir, 'inbox/taken', name), 'utf8'));
    expect(kept).toEqual(acceptance);
    expect((await run(dir, 'check', '--today', ACCEPTED)).out).not.toContain('inbox');
  });

  test('leaves one that is refused where it is, with the reason', async () => {
    const { dir, acceptance, name } = await withWaiting();
    writeFileSync(join(dir, 'inbox/other.json'), JSON.stringify(forged(acceptance, { note: 'again' })));
    expect((await accept(dir, '--inbox', name)).code).toBe(0);
    const ran = await accept(dir, '--inbox', 'other');
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toMatch(/has been accepted already/);
    expect(existsSync(join(dir, 'inbox/other.json'))).toBe(true);
  });

  test('puts away one that was recorded by a run that was stopped before it could', async () => {
    const { dir, acceptance, name } = await withWaiting();
    expect((await accept(dir, fileWith(JSON.stringify(acceptance)))).code).toBe(0);
    expect(existsSync(join(dir, 'inbox', name))).toBe(true);
    writeFileSync(join(dir, 'inbox/again.json'), JSON.stringify(acceptance));
    const ran = await accept(dir, '--inbox', name);
    expect(ran).toEqual({ code: 0, out: 'It was recorded before; it is now in inbox/taken.\n', err: '' });
    const asData = await accept(dir, '--inbox', 'again', '--json');
    expect({ ...asData, out: JSON.parse(asData.out) }).toEqual({
      code: 0,
      out: { takenBefore: true },
      err: '',
    });
    rmSync(join(dir, 'inbox/taken/again.json'));
    expect(readdirSync(join(dir, 'inbox/taken'))).toEqual([name]);
  });

  test('loses none of two files that had the same name', async () => {
    const { dir, acceptance } = await withWaiting();
    mkdirSync(join(dir, 'inbox/taken'));
    writeFileSync(join(dir, 'inbox/taken/acceptance.json'), 'an earlier one');
    writeFileSync(join(dir, 'inbox/acceptance.json'), JSON.stringify(acceptance));
    expect((await accept(dir, '--inbox', 'acceptance')).code).toBe(0);
    const taken = readdirSync(join(dir, 'inbox/taken'));
    expect(taken).toHaveLength(2);
    expect(readFileSync(join(dir, 'inbox/taken/acceptance.json'), 'utf8')).toBe('an earlier one');
  });

  test.each([
    [['--inbox', '../kitchen.yaml'], 2, /Can’t read \.\.\/kitchen\.yaml: no such file/],
    [['--inbox', 'a', 'b'], 2, /Give one acceptance file/],
    [['--inbox', '--signed', 'lifeboat-evening'], 2, /Give one acceptance file/],
    [['--inbox', '--note', 'x'], 2, /--note goes only with --signed/],
  ])('answers %j in one sentence', async (words, code, sentence) => {
    const ran = await accept(await issuedKitchen(), ...words);
    expect([ran.code, ran.out]).toEqual([code, '']);
    expect(ran.err).toMatch(sentence);
  });
});
