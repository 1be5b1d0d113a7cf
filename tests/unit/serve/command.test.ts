import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import { issuedKitchen } from '../../commands/accepted-kitchen.ts';
import { run } from '../../commands/run.ts';
import { contentWith } from '../../findings/small-content.ts';
import { request, sendRaw } from './raw-request.ts';
import { LINK, smallOutput } from './running.ts';

const main = fileURLToPath(new URL('../../../src/commands/main.ts', import.meta.url));

/** The command in a process of its own, once it says where it serves. */
async function started(content: string, ...words: string[]) {
  const all = [main, 'serve', '--content', content, '--out', smallOutput(), '--json', ...words];
  const child = spawn(process.execPath, all, { stdio: ['ignore', 'pipe', 'pipe'] });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  const [first] = (await once(child.stdout, 'data')) as [Buffer];
  const { public: publicUrl, private: privateUrl } = JSON.parse(String(first));
  return { child, port: Number(new URL(publicUrl).port), privatePort: Number(new URL(privateUrl).port) };
}

const ended = (child: ChildProcess) => once(child, 'exit') as Promise<[number | null, string | null]>;

describe('serve', () => {
  test.each(['SIGINT', 'SIGTERM'] as const)(
    'serves until %s and ends well, open connections or not',
    async (signal) => {
      const { child, port, privatePort } = await started(
        await issuedKitchen(),
        '--port',
        '0',
        '--private-port',
        '0',
      );
      const page = await sendRaw(port, request(`GET /proposals/${LINK}/`, `127.0.0.1:${port}`));
      expect(page.status).toBe(200);
      const kitchen = await sendRaw(privatePort, request('GET /kitchen/', `127.0.0.1:${privatePort}`));
      expect(kitchen.status).toBe(200);
      const lingering = fetch(`http://127.0.0.1:${port}/robots.txt`);
      await lingering;
      const over = ended(child);
      child.kill(signal);
      expect(await over).toEqual([0, null]);
      await expect(fetch(`http://127.0.0.1:${port}/robots.txt`)).rejects.toThrow();
    },
  );

  test('serves what was built though kitchen.yaml cannot be read now', async () => {
    const { port } = await started(
      contentWith({ 'kitchen.yaml': 'name: [' }),
      '--port',
      '0',
      '--private-port',
      '0',
    );
    expect((await sendRaw(port, request('GET /robots.txt', 'x'))).status).toBe(200);
  });

  test('says in a sentence that a port is taken, and leaves neither server running', async () => {
    const taken = createServer().listen(0, '127.0.0.1');
    await once(taken, 'listening');
    onTestFinished(() => void taken.close());
    const { port } = taken.address() as { port: number };
    const free = createServer().listen(0, '127.0.0.1');
    await once(free, 'listening');
    const { port: other } = free.address() as { port: number };
    free.close();
    const words = ['--out', smallOutput(), '--port', String(other), '--private-port', String(port)];
    expect(await run(contentWith(), 'serve', ...words)).toEqual({
      code: 1,
      out: '',
      err: `Port ${port} is in use; stop what runs there, or give another with --private-port.\n`,
    });
    await expect(fetch(`http://127.0.0.1:${other}/`)).rejects.toThrow();
  });

  test.each<[string[], number, RegExp]>([
    [['--out', '/nowhere/at/all'], 1, /nothing to serve in \/nowhere\/at\/all yet; run build first/],
    [['x'], 2, /takes no arguments/],
    [['--port', '70000'], 2, /'--port' must be a number from 0 to 65535/],
    [['--private-port', '-1'], 2, /'--private-port' must be a number/],
    [['--port', '5000', '--private-port', '5000'], 2, /need a port of their own/],
    [['--host='], 2, /needs an address/],
  ])('answers %j in one sentence', async (words, code, sentence) => {
    const ran = await run(contentWith(), 'serve', ...words);
    expect([ran.code, ran.out]).toEqual([code, '']);
    expect(ran.err).toMatch(sentence);
    expect(ran.err.trim().split('\n')).toHaveLength(1);
  });

  test('is told no address of this machine by --host', async () => {
    const words = ['--out', smallOutput(), '--host', '192.0.2.1', '--port', '0', '--private-port', '0'];
    const ran = await run(contentWith(), 'serve', ...words);
    expect([ran.code, ran.err]).toEqual([2, "'--host 192.0.2.1' is not an address of this machine.\n"]);
  });
});
