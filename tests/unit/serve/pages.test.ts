import { renameSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { contentWith } from '../../findings/small-content.ts';
import { request, sendRaw } from './raw-request.ts';
import { LINK, running, smallOutput } from './running.ts';

const get = (port: number, path: string) => sendRaw(port, request(`GET ${path}`, `127.0.0.1:${port}`));

describe('clients’ pages', () => {
  test('are served with the headers that keep them private, and asked for again each time', async () => {
    const { port } = await running(contentWith());
    const page = await get(port, `/proposals/${LINK}/`);
    expect(page).toMatchObject({
      status: 200,
      body: '<!doctype html><title>Supper</title>',
      headers: {
        'content-type': 'text/html; charset=utf-8',
        'content-security-policy': "frame-ancestors 'none'",
        'referrer-policy': 'no-referrer',
        'x-content-type-options': 'nosniff',
        'x-robots-tag': 'noindex, nofollow',
        'cache-control': 'no-cache',
      },
    });
    expect(page.headers['permissions-policy']).toContain('geolocation=()');
    expect((await get(port, '/_astro/page.Ab12.css')).headers['cache-control']).toContain('immutable');
    expect((await get(port, `/proposals/${LINK}/proposal.pdf`)).headers['content-type']).toBe(
      'application/pdf',
    );
  });

  test('have an address that ends in a slash, so that their own files are found', async () => {
    const { port } = await running(contentWith());
    const answer = await get(port, `/proposals/${LINK}`);
    expect([answer.status, answer.headers.location]).toEqual([301, `/proposals/${LINK}/`]);
    expect((await get(port, '//other.example/..')).headers.location).toBeUndefined();
  });

  test('are those of the newest build while the server runs', async () => {
    const outDir = smallOutput();
    const { port } = await running(contentWith(), { outDir });
    const next = smallOutput();
    writeFileSync(join(next, `public/proposals/${LINK}/index.html`), 'built again');
    renameSync(outDir, `${outDir}.last`);
    renameSync(next, outDir);
    expect((await get(port, `/proposals/${LINK}/`)).body).toBe('built again');
    renameSync(`${outDir}.last`, next);
  });

  test.each([
    '/',
    '/proposals/',
    '/.hidden',
    '/%2ehidden',
    '/.well-known/x.txt',
    '/_astro/page.Ab12.js.map',
    '/_astro/page.Ab12.js.MAP',
    '/_astro/page.Ab12.js.%6dap',
    '/kitchen/',
    '/private/kitchen/',
    '/../private/kitchen/index.html',
    '/..%2fprivate/kitchen/index.html',
    '/%2e%2e/private/kitchen/index.html',
    '/%2e%2e%2fprivate%2fkitchen%2findex.html',
    '/..%5cprivate%5ckitchen%5cindex.html',
    '/..\\private\\kitchen\\index.html',
    '/proposals/../../private/kitchen/index.html',
    '/proposals/..%2f..%2fprivate/kitchen/index.html',
    '/%252e%252e/private/kitchen/index.html',
    '/..%c0%afprivate/kitchen/index.html',
    '/../.salver-build.json',
    '/robots.txt%00.html',
    '/%00',
    '/%zz',
    '/robots.txt/',
    '/robots.txt/../../private/kitchen/index.html',
    '//private/kitchen/index.html',
    '/./../private/kitchen/index.html',
    'http://other.example/robots.txt',
    'http://127.0.0.1/../private/kitchen/index.html',
    'file:///etc/passwd',
    '*',
    '/etc/passwd',
    '//etc/passwd',
    `/${'a/'.repeat(3000)}`,
    '/acceptances',
    '/acceptances/',
    '/inbox/',
  ])('are all there is: nothing comes of %s', async (path) => {
    const { port } = await running(contentWith());
    const { status, body, headers } = await get(port, path);
    expect(status).toBeGreaterThanOrEqual(400);
    expect(status).toBeLessThan(500);
    expect(body).not.toMatch(/secret|root:|node_modules|Error|\/tmp\//);
    expect(headers['x-content-type-options']).toBe('nosniff');
  });

  test.each([
    ['POST', '/'],
    ['PUT', `/proposals/${LINK}/`],
    ['DELETE', '/robots.txt'],
    ['PATCH', '/x'],
    ['TRACE', '/'],
    ['OPTIONS', '/robots.txt'],
    ['PROPFIND', '/'],
  ])('answer no %s of %s', async (method, path) => {
    const { port } = await running(contentWith());
    const answer = await sendRaw(port, request(`${method} ${path}`, `127.0.0.1:${port}`));
    expect([answer.status, answer.headers.allow]).toEqual([405, 'GET, HEAD']);
    expect(JSON.parse(answer.body)).toEqual({ refused: 'This address does not take this kind of request.' });
  });

  test('do not answer what is no HTTP, nor become a tunnel', async () => {
    const { port } = await running(contentWith());
    expect((await sendRaw(port, 'HELLO\r\n\r\n')).status).toBe(400);
    expect((await sendRaw(port, request('CONNECT other.example:443', 'x'))).status).toBe(0);
    const split =
      'POST /acceptances HTTP/1.1\r\nHost: x\r\nContent-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n';
    expect((await sendRaw(port, split)).status).toBe(400);
    const long = request('GET /', 'x', [`X-Long: ${'a'.repeat(40_000)}`]);
    expect((await sendRaw(port, long)).status).toBe(431);
  });

  test('follow no link out of the folder to what is private', async () => {
    const outDir = smallOutput();
    symlinkSync(join(outDir, 'private'), join(outDir, 'public/out'));
    const { port } = await running(contentWith(), { outDir });
    expect((await get(port, '/out/kitchen/index.html')).status).toBe(404);
  });
});

describe('the kitchen’s pages', () => {
  test('are served on their own port, to this machine’s names alone', async () => {
    const { privatePort: port, port: publicPort } = await running(contentWith());
    for (const host of [`127.0.0.1:${port}`, `localhost:${port}`, `LOCALHOST:${port}`]) {
      const page = await sendRaw(port, request('GET /kitchen/', host));
      expect([page.status, page.body]).toEqual([200, '<!doctype html><title>secret kitchen</title>']);
    }
    for (const host of [
      'rebound.example',
      `rebound.example:${port}`,
      '127.0.0.1',
      `127.0.0.1:${publicPort}`,
      '',
    ]) {
      const page = await sendRaw(port, request('GET /kitchen/', host));
      expect([page.status, page.body]).toEqual([421, 'This server has a different name.\n']);
    }
    const old = await sendRaw(port, 'GET /kitchen/ HTTP/1.0\r\n\r\n');
    expect(old.status).toBe(421);
  });

  test('begin with the coming events, and take nothing in', async () => {
    const { privatePort: port } = await running(contentWith());
    expect((await get(port, '/')).headers.location).toBe('/kitchen/');
    const posted = await sendRaw(
      port,
      request('POST /acceptances', `127.0.0.1:${port}`, ['Content-Length: 0']),
    );
    expect(posted.status).toBe(405);
    expect((await get(port, '/../public/robots.txt')).status).toBeGreaterThanOrEqual(400);
  });
});
