import { readdirSync, readFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect, type Socket } from 'node:net';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filesOf } from '../../src/files/digest.ts';
import { makeAcceptance } from '../../src/offers/answers/make-acceptance.ts';
import { digestOfRecord } from '../../src/offers/digest.ts';
import { acceptanceSchema } from '../../src/schema/acceptance.ts';
import { type Offer, offerSchema } from '../../src/schema/offer.ts';
import { LIMITS } from '../../src/serve/limits.ts';
import { LARGE_TODAY } from '../bench/large-kitchen.ts';
import { seeded } from '../bench/seeded.ts';
import { PATIENCE, STEP_TIME } from '../patience.ts';
import { LINK } from '../unit/serve/running.ts';
import { dripping, hostileRequest, sendFrom } from './hostile-requests.ts';
import { LONG } from './long.ts';
import { type ServedKitchen, servedKitchen } from './served-kitchen.ts';

/** Answers posted, and hostile requests sent among them. */
const [POSTS, ATTACKS] = LONG ? [6_000, 2_000] : [400, 150];
const AT_ONCE = 20;
/** Megabytes that the process may grow by, however long it is under load. */
const GROWTH = 150;

/** Senders on this machine, each with an address of its own, since one address may post so often in a minute only. */
const sender = (number: number) =>
  `127.${1 + (Math.floor(number / 62_500) % 250)}.${1 + (Math.floor(number / 250) % 250)}.${1 + (number % 250)}`;

describe('the receiver in a process of its own', () => {
  let kitchen: ServedKitchen;
  let offers: Offer[];

  beforeAll(async () => {
    kitchen = await servedKitchen();
    const folder = join(kitchen.content, 'offers');
    offers = readdirSync(folder)
      .map((name) => offerSchema.parse(JSON.parse(readFileSync(join(folder, name), 'utf8'))))
      .filter(({ validUntil }) => validUntil >= LARGE_TODAY);
    expect(offers.length).toBeGreaterThan(10);
  });

  afterAll(() => kitchen?.remove());

  const acceptance = (number: number) => {
    const offer = offers[number % offers.length] as Offer;
    const signature = { name: `Guest ${number}`, email: 'guest@client.example', accepted: LARGE_TODAY };
    return makeAcceptance(offer, offer.proposed, { ...signature, note: `note ${number}` });
  };

  /** An acceptance forged by somebody who knows the form and how a digest is made. */
  const forgedPost = (number: number, host: string) => {
    const sound = acceptance(number);
    const other = acceptance(number + 1);
    const change = [
      { total: '1.00' },
      { offer: other.offer },
      { proposal: other.proposal },
      { revision: sound.revision + 1 },
      { accepted: '2026-01-01' },
      { agreed: false },
      { choice: { ...sound.choice, guests: { ...sound.choice.guests, adults: 9999 } } },
    ][number % 7];
    const record = { ...sound, ...change, note: `forged ${number}` };
    const text = JSON.stringify({ ...record, digest: digestOfRecord(record) });
    const head = `POST /acceptances HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\nContent-Type: application/json`;
    return `${head}\r\nContent-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`;
  };

  test('stores each sound acceptance once or refuses it with a reason, whatever else comes in meanwhile', async () => {
    const before = kitchen.memory();
    const slow = [
      'POST /acceptances HTTP/1.1\r\nX-Slow: ',
      'POST /acceptances HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 9000\r\n\r\n{',
      'GET / HTTP/1.1\r\nHost: ',
    ].flatMap((beginning) => Array.from({ length: 10 }, () => dripping(kitchen.port, beginning)));
    const stored = new Set<string>();
    const refusals = new Set<string>();
    const leaked: string[] = [];
    let largest = before ?? 0;
    let [sent, hostile] = [0, 0];
    const post = async () => {
      while (sent < POSTS) {
        sent += 1;
        // Each third one has been sent before, by somebody else.
        const number = sent % 3 === 0 ? Math.floor(sent / 2) : sent;
        const sound = acceptance(number);
        const { status, body } = await posted(sender(sent), kitchen.port, JSON.stringify(sound));
        const told = JSON.parse(body) as { received?: string; refused?: string };
        expect([202, 429, 503]).toContain(status);
        if (status === 202) expect(told.received).toBe(sound.digest);
        else expect(told.refused).toMatch(/^[A-Z].+\.$/);
        if (status === 202) stored.add(sound.digest);
        else refusals.add(String(told.refused));
        largest = Math.max(largest, kitchen.memory() ?? 0);
      }
    };
    const attack = async (_: unknown, seed: number) => {
      const random = seeded(seed);
      const hosts = [`127.0.0.1:${kitchen.port}`, `localhost:${kitchen.privatePort}`] as const;
      while (hostile < ATTACKS) {
        hostile += 1;
        const isForged = hostile % 4 === 0;
        const bytes = isForged ? forgedPost(hostile / 4, hosts[0]) : hostileRequest(random, ...hosts);
        const answer = await sendFrom(sender(100_000 + hostile), kitchen.port, bytes);
        if (isForged && !/"refused":"[^"]*(?:total|offer|agreed|dated|fit)/.test(answer))
          leaked.push(`${bytes.slice(-900)} → ${answer.slice(0, 400)}`);
        if (/secret|root:|node_modules|\bat \S+:\d+|stack/.test(answer) || /^HTTP\/1\.1 (?!4)/.test(answer))
          leaked.push(`${bytes.slice(0, 200)} → ${answer.slice(0, 300)}`);
      }
    };
    await Promise.all([...Array.from({ length: AT_ONCE - 5 }, post), ...Array.from({ length: 5 }, attack)]);
    expect(leaked).toEqual([]);
    const inbox = await filesOf(join(kitchen.content, 'inbox'));
    const inboxDigests = inbox.map(
      (name) =>
        acceptanceSchema.parse(JSON.parse(readFileSync(join(kitchen.content, 'inbox', name), 'utf8'))).digest,
    );
    expect(inboxDigests.sort()).toEqual([...stored].sort());
    expect(stored.size).toBeGreaterThan(10);
    for (const refused of refusals)
      expect(refused).toMatch(/waiting already|No more answers|Too many answers/);
    if (before !== undefined) expect(largest - before).toBeLessThan(GROWTH);
    for (const lasted of await Promise.all(slow))
      expect(lasted).toBeLessThan(LIMITS.requestTime + 5_000 * PATIENCE);
    expect(kitchen.complaints()).not.toMatch(/could not answer|at \S+:\d+:\d+/);
  });

  test('goes on when far too many connect and say nothing, and has served its own pages alone', async () => {
    const idle: Socket[] = [];
    for (let number = 0; number < LIMITS.connections + 100; number += 1) {
      const socket = connect({ port: kitchen.port, host: '127.0.0.1', localAddress: sender(number) });
      socket.on('error', () => undefined);
      idle.push(socket);
    }
    await new Promise((done) => setTimeout(done, 500));
    expect(kitchen.memory() ?? 0).toBeLessThan(600);
    // Those who say nothing are cut off, so that others are served again without anybody's help.
    const asked = performance.now();
    let page = '';
    while (!page.includes('200 OK') && performance.now() - asked < STEP_TIME * PATIENCE) {
      page = await sendFrom(
        '127.0.0.1',
        kitchen.port,
        `GET /proposals/${LINK}/ HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`,
      );
      await new Promise((done) => setTimeout(done, 200));
    }
    expect(page).toContain('<title>Supper</title>');
    for (const socket of idle) socket.destroy();
  });

  test('keeps the kitchen’s side on its own port, to this machine’s own address', async () => {
    const ask = `GET /kitchen/ HTTP/1.1\r\nHost: 127.0.0.1:${kitchen.privatePort}\r\nConnection: close\r\n\r\n`;
    expect(await sendFrom('127.0.0.1', kitchen.port, ask)).toMatch(/^HTTP\/1\.1 404 /);
    expect(await sendFrom('127.0.0.1', kitchen.privatePort, ask)).toContain('secret kitchen');
  });

  test('stops in good order when it is told to', async () => {
    expect(await kitchen.stop()).toBe(0);
  });
});

function posted(from: string, port: number, body: string): Promise<{ status: number; body: string }> {
  return new Promise((done, fail) => {
    const asked = request(
      {
        host: '127.0.0.1',
        port,
        localAddress: from,
        method: 'POST',
        path: '/acceptances',
        headers: { 'content-type': 'application/json', connection: 'close' },
      },
      (answer) => text(answer).then((said) => done({ status: answer.statusCode ?? 0, body: said }), fail),
    );
    asked.on('error', fail).end(body);
  });
}
