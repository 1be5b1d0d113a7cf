import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { MOST_WAITING } from '../../../src/offers/answers/inbox.ts';
import type { Acceptance } from '../../../src/schema/acceptance.ts';
import {
  acceptanceOf,
  acceptedKitchen,
  forged,
  issuedKitchen,
  offerIn,
} from '../../commands/accepted-kitchen.ts';
import { change, pictureOf } from '../../commands/kitchen-copy.ts';
import { run } from '../../commands/run.ts';
import { request, sendRaw } from './raw-request.ts';
import { post, running } from './running.ts';

const RECEIVED = 'Your acceptance has arrived. We will look at it and write back to you.';
const manyPosts = { postsAMinute: 100_000 };

/** An acceptance that differs from all others of its offer. */
function noted(acceptance: Acceptance, note: string): Acceptance {
  return forged(acceptance, { note }) as Acceptance;
}

const waiting = (dir: string) =>
  existsSync(join(dir, 'inbox')) ? readdirSync(join(dir, 'inbox')).filter((name) => name !== 'taken') : [];

describe('a posted acceptance', () => {
  test('waits in the inbox as it was sent, and `accept` takes it from there', async () => {
    const dir = await issuedKitchen();
    const { publicUrl, said } = await running(dir);
    const acceptance = acceptanceOf(offerIn(dir));
    const answer = await post(publicUrl, JSON.stringify(acceptance));
    expect([answer.status, answer.json]).toEqual([202, { received: acceptance.digest, message: RECEIVED }]);
    const [name = ''] = waiting(dir);
    expect(name).toBe(`2027-04-28-${acceptance.offer.slice(0, 12)}-${acceptance.digest.slice(0, 16)}.json`);
    expect(JSON.parse(readFileSync(join(dir, 'inbox', name), 'utf8'))).toEqual(acceptance);
    expect(said).toEqual([`An acceptance has come in: inbox/${name}.`]);
    expect((await run(dir, 'accept', '--inbox', name, '--today', '2027-04-28')).code).toBe(0);
  });

  test('is stored once however often it is sent, and answered the same, also after it was taken', async () => {
    const dir = await issuedKitchen();
    const { publicUrl, said } = await running(dir);
    const text = JSON.stringify(acceptanceOf(offerIn(dir)));
    const answers = await Promise.all(Array.from({ length: 10 }, () => post(publicUrl, text)));
    expect(new Set(answers.map(({ status, json }) => `${status} ${JSON.stringify(json)}`)).size).toBe(1);
    const [name = ''] = waiting(dir);
    expect(waiting(dir)).toEqual([name]);
    expect((await run(dir, 'accept', '--inbox', name, '--today', '2027-04-28')).code).toBe(0);
    expect((await post(publicUrl, text)).json).toEqual(answers[0]?.json);
    expect(waiting(dir)).toEqual([]);
    expect(said).toHaveLength(1);
  });

  test('of an offer issued while the server runs is known', async () => {
    const dir = await issuedKitchen();
    const aside = join(dir, 'later.json');
    const file = join(dir, 'offers/lifeboat-evening-r1.json');
    const acceptance = JSON.stringify(acceptanceOf(offerIn(dir)));
    renameSync(file, aside);
    const { publicUrl } = await running(dir);
    expect((await post(publicUrl, acceptance)).status).toBe(422);
    renameSync(aside, file);
    expect((await post(publicUrl, acceptance)).status).toBe(202);
    rmSync(file);
    expect((await post(publicUrl, acceptance)).status).toBe(422);
  });
});

describe('what cannot be taken is refused in a sentence and nothing is written', () => {
  test.each<[string, RegExp, (acceptance: Acceptance) => string | object, string?]>([
    ['no JSON', /not JSON/, () => 'hello'],
    ['nothing', /not JSON/, () => ''],
    ['another JSON', /not an acceptance that Salver knows/, () => [1, 2]],
    ['deep nesting', /not an acceptance|not JSON/, () => '['.repeat(30_000) + ']'.repeat(30_000)],
    ['a further field', /Unrecognized key/, (sound) => ({ ...sound, extra: 1 })],
    [
      'a reach for the prototype',
      /Unrecognized key|not an acceptance/,
      (sound) => JSON.stringify(sound).replace('{', '{"__proto__":{"agreed":true},'),
    ],
    ['a changed word', /altered or damaged/, (sound) => ({ ...sound, name: 'Somebody Else' })],
    ['a total of its own', /its total is €1\.00/, (sound) => forged(sound, { total: '1.00' })],
    ['terms not agreed to', /agreed/, (sound) => forged(sound, { agreed: false })],
    ['a line break in the name', /one line/, (sound) => forged(sound, { name: 'A\nBcc: all@x.example' })],
    ['a terminal’s control code', /control character/, (sound) => forged(sound, { note: '\u009b2J' })],
    ['an unknown offer', /names no offer/, (sound) => forged(sound, { offer: '0'.repeat(64) })],
    ['another proposal’s name', /names no offer/, (sound) => forged(sound, { proposal: 'other' })],
    ['another revision', /names no offer/, (sound) => forged(sound, { revision: 2 })],
    ['a path for a proposal', /proposal/, (sound) => forged(sound, { proposal: '../../etc' })],
    [
      'tomorrow’s date',
      /is dated Thursday, 29 April 2027, and today is Wednesday, 28 April 2027/,
      (sound) => forged(sound, { accepted: '2027-04-29' }),
    ],
    ['a date that is none', /accepted/, (sound) => forged(sound, { accepted: '../../x' })],
    ['a date before the offer', /before the offer/, (sound) => forged(sound, { accepted: '2027-04-01' })],
    [
      'an old date after the offer’s end',
      /was valid until Monday, 10 May 2027/,
      (sound) => sound,
      '2027-05-11',
    ],
  ])('%s', async (_what, sentence, change, today = '2027-04-28') => {
    const dir = await issuedKitchen();
    const { publicUrl, said } = await running(dir, { today });
    const before = pictureOf(dir);
    const sent = change(acceptanceOf(offerIn(dir)));
    const answer = await post(publicUrl, typeof sent === 'string' ? sent : JSON.stringify(sent));
    expect(answer.status).toBe(422);
    expect(Object.keys(answer.json)).toEqual(['refused']);
    expect(answer.json.refused).toMatch(sentence);
    expect(String(answer.json.refused)).not.toMatch(/ at \/|node_modules|\/tmp\//);
    expect(pictureOf(dir)).toEqual(before);
    expect(said).toEqual([]);
  });

  test('a replaced offer, an altered offer, and one accepted already', async () => {
    const dir = await issuedKitchen();
    const { publicUrl } = await running(dir);
    const first = acceptanceOf(offerIn(dir));
    change(dir, ['proposals/lifeboat-evening.md', 'valid until: 2027-05-10', 'valid until: 2027-05-11']);
    expect((await run(dir, 'issue', 'lifeboat-evening', '--today', '2027-04-27')).code).toBe(0);
    expect((await post(publicUrl, JSON.stringify(first))).json.refused).toMatch(/newer offer has replaced/);
    const second = acceptanceOf(offerIn(dir, 2));
    change(dir, [
      'offers/lifeboat-evening-r2.json',
      '"validUntil": "2027-05-11"',
      '"validUntil": "2027-05-31"',
    ]);
    expect((await post(publicUrl, JSON.stringify(second))).json.refused).toMatch(/names no offer/);

    const done = await acceptedKitchen();
    const { publicUrl: url } = await running(done);
    const late = noted(acceptanceOf(offerIn(done)), 'once more');
    expect((await post(url, JSON.stringify(late))).json.refused).toMatch(/accepted already/);
  });

  test('an offer that was withdrawn, until it stands again; while nobody can tell, it is kept for `accept`', async () => {
    const dir = await issuedKitchen();
    const { publicUrl, said } = await running(dir);
    const sent = JSON.stringify(acceptanceOf(offerIn(dir)));
    const file = 'proposals/lifeboat-evening.md';
    change(dir, [file, 'valid until:', 'withdrawn: yes\nvalid until:']);
    const before = pictureOf(dir);
    const { status, json } = await post(publicUrl, sent);
    expect([status, json]).toEqual([
      422,
      { refused: 'This offer was withdrawn. Please write to us if you have questions.' },
    ]);
    expect([pictureOf(dir), said]).toEqual([before, []]);

    change(dir, [file, 'withdrawn: yes', 'withdrawn: [yes']);
    expect((await post(publicUrl, sent)).status).toBe(202);
    const [name = ''] = waiting(dir);
    expect((await run(dir, 'accept', '--inbox', name, '--today', '2027-04-28')).code).toBe(1);
    rmSync(join(dir, 'inbox', name));
    change(dir, [file, 'withdrawn: [yes', 'withdrawn: no']);
    expect((await post(publicUrl, sent)).status).toBe(202);
  });
});

describe('the receiver', () => {
  test('takes JSON alone, and only so much of it', async () => {
    const dir = await issuedKitchen();
    const { publicUrl, port } = await running(dir);
    const text = JSON.stringify(acceptanceOf(offerIn(dir)));
    for (const type of [
      'text/plain',
      'application/x-www-form-urlencoded',
      'multipart/form-data; boundary=x',
      'x',
    ]) {
      const answer = await post(publicUrl, text, { 'content-type': type });
      expect([type, answer.status, answer.json.refused]).toEqual([type, 415, 'Answers are sent as JSON.']);
    }
    const bare = await sendRaw(
      port,
      `${request('POST /acceptances', `127.0.0.1:${port}`, ['Content-Length: 2'])}{}`,
    );
    expect(bare.status).toBe(415);
    const large = await post(publicUrl, JSON.stringify('x'.repeat(70_000)));
    expect([large.status, large.json.refused]).toEqual([
      413,
      'This is too large to be an answer to an offer.',
    ]);
    const head = ['Content-Type: application/json', 'Transfer-Encoding: chunked'];
    const chunks = `8000\r\n${'x'.repeat(0x8000)}\r\n`.repeat(3);
    const chunked = await sendRaw(port, `${request('POST /acceptances', 'x', head)}${chunks}0\r\n\r\n`);
    expect(chunked.status).toBe(413);
    const claimed = ['Content-Type: application/json', 'Content-Length: 99999999999'];
    expect((await sendRaw(port, request('POST /acceptances', 'x', claimed))).status).toBe(413);
    expect(waiting(dir).length).toBe(0);
  });

  test.each(['GET', 'PUT', 'PATCH', 'DELETE'])('answers %s with what it does answer', async (method) => {
    const { port } = await running(await issuedKitchen());
    const answer = await sendRaw(port, request(`${method} /acceptances`, `127.0.0.1:${port}`));
    expect([answer.status, answer.headers.allow]).toEqual([405, 'POST, OPTIONS']);
    expect(JSON.parse(answer.body).refused).toBe('This address does not take this kind of request.');
  });

  test('takes posts from its own pages and the kitchen’s site, and from no other page', async () => {
    const dir = await issuedKitchen();
    const site = 'https://strand.example/food';
    const { publicUrl } = await running(dir, { site });
    const text = JSON.stringify(acceptanceOf(offerIn(dir)));
    const from = (origin: string) => post(publicUrl, text, { 'content-type': 'application/json', origin });
    for (const origin of [
      'https://evil.example',
      'null',
      'https://strand.example.evil.example',
      'http://strand.example',
    ])
      expect([origin, (await from(origin)).status]).toEqual([origin, 403]);
    expect(waiting(dir)).toEqual([]);
    const own = await from(new URL(publicUrl).origin);
    expect([own.status, own.headers.get('access-control-allow-origin')]).toEqual([202, null]);
    const foreign = await from('https://strand.example');
    expect(foreign.headers.get('access-control-allow-origin')).toBe('https://strand.example');

    const ask = (origin: string) =>
      fetch(new URL('acceptances', publicUrl), {
        method: 'OPTIONS',
        headers: { origin, 'access-control-request-method': 'POST' },
      });
    const allowed = await ask('https://strand.example');
    expect(allowed.status).toBe(204);
    expect(allowed.headers.get('access-control-allow-methods')).toBe('POST');
    const refused = await ask('https://evil.example');
    expect([refused.status, refused.headers.get('access-control-allow-origin')]).toEqual([403, null]);
  });

  test('lets one sender post so often in a minute, and says when to come again', async () => {
    const dir = await issuedKitchen();
    const { publicUrl } = await running(dir, { limits: { postsAMinute: 3 } });
    const text = JSON.stringify(acceptanceOf(offerIn(dir)));
    const statuses = [];
    for (let time = 0; time < 5; time += 1) statuses.push((await post(publicUrl, text)).status);
    expect(statuses).toEqual([202, 202, 202, 429, 429]);
    const { json, headers } = await post(publicUrl, text);
    expect(json.refused).toMatch(/^Too many answers came from here within a minute\./);
    expect(Number(headers.get('retry-after'))).toBeGreaterThan(0);
  });

  test('hangs up on whoever sends headers or body slowly, and serves others meanwhile', async () => {
    const dir = await issuedKitchen();
    // Nobody is cut off for being idle, so that whoever is hung up on is so for being slow.
    const limits = { headersTime: 600, requestTime: 1200, idleTime: 3_600_000 };
    const { port, publicUrl } = await running(dir, { limits });
    const dripping = Array.from({ length: 20 }, (_, index) => {
      const head =
        'POST /acceptances HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 5000\r\n';
      return drip(port, index % 2 === 0 ? 'POST /acceptances HTTP/1.1\r\nX-Slow: ' : `${head}\r\n`);
    });
    expect((await post(publicUrl, JSON.stringify(acceptanceOf(offerIn(dir))))).status).toBe(202);
    const answers = await Promise.all(dripping);
    for (const answer of answers) expect(answer).toMatch(/^HTTP\/1\.1 408 /);
    expect(waiting(dir)).toHaveLength(1);
  });

  test('holds so many acceptances of one offer, and so many in all', async () => {
    const dir = await issuedKitchen();
    const { publicUrl } = await running(dir, { limits: manyPosts });
    const sound = acceptanceOf(offerIn(dir));
    const posts = await Promise.all(
      Array.from({ length: MOST_WAITING.ofOneOffer + 5 }, (_, index) =>
        post(publicUrl, JSON.stringify(noted(sound, `note ${index}`))),
      ),
    );
    expect(posts.filter(({ status }) => status === 202)).toHaveLength(MOST_WAITING.ofOneOffer);
    expect(posts.find(({ status }) => status === 429)?.json.refused).toMatch(/waiting already/);
    expect(waiting(dir)).toHaveLength(MOST_WAITING.ofOneOffer);

    const full = await issuedKitchen();
    mkdirSync(join(full, 'inbox'));
    for (let index = 0; index < MOST_WAITING.inAll; index += 1)
      writeFileSync(join(full, `inbox/2027-04-01-${String(index).padStart(12, '0')}-x.json`), '{}');
    const { publicUrl: url } = await running(full);
    const answer = await post(url, JSON.stringify(acceptanceOf(offerIn(full))));
    expect([answer.status, answer.json.refused]).toEqual([503, expect.stringMatching(/email yours/)]);
  });

  test('says so where the inbox cannot be written, and goes on', async () => {
    const dir = await issuedKitchen();
    const { publicUrl, said } = await running(dir);
    writeFileSync(join(dir, 'inbox'), 'a file where the folder should be');
    const text = JSON.stringify(acceptanceOf(offerIn(dir)));
    const answer = await post(publicUrl, text);
    expect([answer.status, answer.json.refused]).toEqual([503, expect.stringMatching(/could not be saved/)]);
    expect(said).toEqual([
      expect.stringMatching(/^An acceptance of lifeboat-evening could not be saved \(E/),
    ]);
    rmSync(join(dir, 'inbox'));
    expect((await post(publicUrl, text)).status).toBe(202);
  });

  test('under a load of twenty at once stores every sound acceptance once or refuses it with a reason', async () => {
    const dir = await issuedKitchen();
    const { publicUrl } = await running(dir, { limits: manyPosts });
    const sound = acceptanceOf(offerIn(dir));
    const texts = Array.from({ length: 40 }, (_, index) => noted(sound, `guest ${index}`));
    const told = new Map<string, number>();
    let turn = 0;
    let before = 0;
    await Promise.all(
      Array.from({ length: 20 }, async () => {
        while (turn < 400) {
          turn += 1;
          const chosen = texts[turn % texts.length] as Acceptance;
          const broken = turn % 7 === 0;
          const { status, json } = await post(
            publicUrl,
            JSON.stringify(broken ? { ...chosen, name: 'x' } : chosen),
          );
          if (broken) expect(status).toBe(422);
          else {
            expect([202, 429]).toContain(status);
            expect(Object.keys(json).sort()).toEqual(status === 202 ? ['message', 'received'] : ['refused']);
            if (status === 202) told.set(chosen.digest, status);
          }
          if (turn === 100) before = heapUsed();
        }
      }),
    );
    expect(heapUsed() - before).toBeLessThan(60 * 1024 * 1024);
    const stored = waiting(dir).map(
      (name) => JSON.parse(readFileSync(join(dir, 'inbox', name), 'utf8')).digest,
    );
    expect(stored).toHaveLength(MOST_WAITING.ofOneOffer);
    expect(stored.sort()).toEqual([...told.keys()].sort());
  });
});

/** What is held, without what is garbage already. */
function heapUsed(): number {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
  return process.memoryUsage().heapUsed;
}

/** Sends a beginning and then one byte at a time; what came back when the server hung up. */
function drip(port: number, beginning: string): Promise<string> {
  return new Promise((done) => {
    let answer = '';
    const socket = connect(port, '127.0.0.1', () => socket.write(beginning));
    const timer = setInterval(() => socket.write('x'), 100);
    socket.on('data', (chunk) => {
      answer += String(chunk);
    });
    socket.on('error', () => undefined);
    socket.on('close', () => {
      clearInterval(timer);
      done(answer);
    });
  });
}
