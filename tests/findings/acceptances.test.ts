import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { foundIn } from './found-in.ts';
import { contentWith, SMALL_CONTENT } from './small-content.ts';

const kitchen = (more: string) => ({ 'kitchen.yaml': `${SMALL_CONTENT['kitchen.yaml']}${more}` });
const wayIn = async (more: string) => (await readBook(contentWith(kitchen(more)))).book?.kitchen.acceptances;

describe('how acceptances come back', () => {
  test('is by download where nothing is said', async () => {
    expect(await wayIn('')).toEqual({ by: 'download' });
  });

  test('is by mail to the kitchen’s own address, or to another', async () => {
    expect(await wayIn('email: cook@lantern.example\nacceptances: mail\n')).toEqual({
      by: 'mail',
      to: 'cook@lantern.example',
    });
    expect(await wayIn('acceptances: { by: mail, to: desk@lantern.example }\n')).toEqual({
      by: 'mail',
      to: 'desk@lantern.example',
    });
  });

  test('is by post to the site that serves the page, or to another address', async () => {
    expect(await wayIn('acceptances: post\n')).toEqual({ by: 'post', to: null });
    expect(await wayIn('acceptances: { by: post, to: "http://127.0.0.1:7480/acceptances" }\n')).toEqual({
      by: 'post',
      to: 'http://127.0.0.1:7480/acceptances',
    });
  });

  test.each([
    [
      'acceptances: pigeon',
      '17:14 error unknown-word “by” can’t be “pigeon” — write one of download, mail, post',
    ],
    [
      'acceptances: mail',
      '17:14 error missing-field there is no address to email acceptances to — write “acceptances: { by: mail, to: hello@quillwater.example }”, or the kitchen’s “email”',
    ],
    [
      'acceptances: { by: download, to: x }',
      '17:34 error not-understood a download has no address to go to — leave `to` out, or write `by: mail` or `by: post`',
    ],
    [
      'acceptances: { by: mail, to: "a@b.example, c@d.example" }',
      '17:30 error not-understood “a@b.example, c@d.example” is not an email address — write it as hello@quillwater.example',
    ],
    [
      'acceptances: { by: post, to: "http://lantern.example/acceptances" }',
      '17:30 error not-understood “http://lantern.example/acceptances” is not an address that acceptances can be posted to — write it as https://quillwater.example/acceptances',
    ],
  ])('is refused as %j, with a way out', async (more, finding) => {
    expect(await foundIn(contentWith(kitchen(`${more}\n`)))).toBe(`content/kitchen.yaml:${finding}`);
  });
});

describe('the inbox', () => {
  const waiting = {
    version: 1,
    kind: 'acceptance',
    proposal: 'gale',
    revision: 1,
    offer: 'a'.repeat(64),
    accepted: '2027-04-20',
    choice: {
      package: 'supper',
      guests: { adults: 40, children: 0, vendors: 2, staff: 0 },
      courses: {},
      mains: {},
      addOns: {},
      needs: {},
    },
    total: '1200.00',
    name: 'Tamsin Gale',
    email: 'tamsin@gale.example',
    note: '',
    agreed: true,
    digest: 'b'.repeat(64),
  };

  test('is told of by a note for each acceptance, whatever its file is called; those taken are passed over', async () => {
    const dir = contentWith({
      'inbox/From Tamsin (1).json': JSON.stringify(waiting),
      'inbox/taken/old.json': 'anything',
    });
    expect(await foundIn(dir)).toBe(
      'content/inbox/From Tamsin (1).json:1:1 note acceptance-waiting Tamsin Gale accepts gale, revision 1 — to record it: accept inbox/From Tamsin (1).json',
    );
  });

  test('is told of by kind, with the command that takes each', async () => {
    const { version, offer, digest, choice } = waiting;
    const later = { version, event: 'gale', offer, made: '2027-05-02', digest };
    const { guests, needs, mains } = choice;
    const dir = contentWith({
      'inbox/count.json': JSON.stringify({
        ...later,
        kind: 'count change',
        guests,
        needs,
        mains,
        name: 'Tamsin',
        note: '',
      }),
      'inbox/list.json': JSON.stringify({ ...later, kind: 'guest list', csv: 'name\r\nAda\r\n' }),
    });
    expect((await foundIn(dir)).split('\n')).toEqual([
      'content/inbox/count.json:1:1 note count-change-waiting Tamsin gives a new count for gale: 40 guests — to record it: guarantee --from inbox/count.json',
      'content/inbox/list.json:1:1 note guest-list-waiting a guest list has come in for gale — to record it: guests --from inbox/list.json',
    ]);
  });

  test('warns of what is no acceptance, and of what lies too deep', async () => {
    const dir = contentWith({
      'inbox/a.json': JSON.stringify({ ...waiting, agreed: false }, null, 2),
      'inbox/taken/2027/b.json': '{}',
    });
    expect((await foundIn(dir)).split('\n')).toEqual([
      'content/inbox/a.json:25:13 warning inbox-unusable agreed is not as it was written: expected true — ask the client to send it again from the page, and delete this file',
      'content/inbox/taken/2027/b.json:1:1 note stray-file this file is not used — name it inbox/taken/<name>.json, or move it',
    ]);
  });
});
