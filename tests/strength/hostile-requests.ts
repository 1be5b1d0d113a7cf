import { connect } from 'node:net';
import type { Seeded } from '../bench/seeded.ts';
import { LINK } from '../unit/serve/running.ts';

const POST = ['Content-Type: application/json'];

/** Ways into the private side, out of the folder or into the content, as nobody's browser writes them. */
const PATHS = [
  '/../private/kitchen/index.html',
  '/%2e%2e/private/kitchen/index.html',
  '/%2e%2e%2fprivate%2fkitchen%2findex.html',
  '/..%5cprivate%5ckitchen%5cindex.html',
  '/..\\private\\kitchen\\index.html',
  '/%252e%252e%252fprivate/kitchen/index.html',
  '/..%c0%afprivate/kitchen/index.html',
  `/proposals/${LINK}/../../../private/kitchen/index.html`,
  `/proposals/${LINK}/%00/../../../private/kitchen/index.html`,
  '/robots.txt%00.html',
  '/kitchen/',
  '/private/kitchen/',
  '/.salver-build.json',
  '/../.salver-build.json',
  '/../content/kitchen.yaml',
  '/inbox/',
  '/.hidden',
  '/_astro/page.Ab12.js.map',
  '//etc/passwd',
  '/etc/passwd',
  '/proc/self/environ',
  'http://127.0.0.1/../private/kitchen/index.html',
  'http://other.example/robots.txt',
  'file:///etc/passwd',
  '*',
  '/acceptances',
  '/proposals/',
  '/',
];
const METHODS = ['PUT', 'DELETE', 'PATCH', 'TRACE', 'PROPFIND', 'OPTIONS', 'BREW', 'POST'];
const TYPES = [
  'text/plain',
  'application/xml',
  'multipart/form-data; boundary=x',
  'application/jsonp',
  '',
  'x',
];

/** One request that is to be refused, byte for byte; `private` is the port of the kitchen's side. */
export function hostileRequest(random: Seeded, host: string, privateHost: string): string {
  const ask = (line: string, headers: readonly string[] = [], named = host) =>
    `${[`${line} HTTP/1.1`, `Host: ${named}`, 'Connection: close', ...headers].join('\r\n')}\r\n\r\n`;
  const body = (text: string, headers: readonly string[]) =>
    `${ask('POST /acceptances', [...headers, `Content-Length: ${Buffer.byteLength(text)}`])}${text}`;
  return random.of<() => string>([
    () => ask(`GET ${random.of(PATHS)}`),
    () => ask(`GET ${random.of(PATHS)}`, [], random.of([privateHost, 'localhost', 'other.example', ''])),
    () =>
      ask(`GET ${random.of(PATHS)}`, ['X-Forwarded-Host: localhost', 'X-Original-URL: /private/kitchen/']),
    () => ask(`${random.of(METHODS.slice(0, -1))} ${random.of(PATHS.slice(0, -3))}`),
    () => body('{"version":1}', [`Content-Type: ${random.of(TYPES)}`]),
    () => body('x'.repeat(70_000), POST),
    () => body(`{"a":${'['.repeat(30_000)}`, POST),
    () => body(random.of(['', '{}', 'null', '[]', '"', '\u0000', '{"__proto__":{"version":1}}']), POST),
    () => ask('POST /acceptances', [...POST, 'Content-Length: 99999999999']),
    () => ask('POST /acceptances', [...POST, 'Content-Length: -1']),
    () => ask('POST /acceptances', [...POST, 'Content-Length: 4', 'Transfer-Encoding: chunked']),
    () => `${ask('POST /acceptances', [...POST, 'Transfer-Encoding: chunked'])}zz\r\n`,
    () =>
      `${ask('POST /acceptances', [...POST, 'Transfer-Encoding: chunked'])}ffff\r\n${'x'.repeat(0xffff)}\r\n4\r\n`,
    () => ask('GET /', [`X-Long: ${'a'.repeat(40_000)}`]),
    () => ask('CONNECT other.example:443'),
    () => `GET ${'/a'.repeat(20_000)} HTTP/1.1\r\n\r\n`,
    () => '\u0016\u0003\u0001\u0002\u0000\r\n\r\n',
    () => 'HELLO\r\n\r\n',
  ])();
}

/** Sends bytes from an address of this machine; what came back, or nothing, when the server hung up. */
export function sendFrom(from: string, port: number, bytes: string): Promise<string> {
  return new Promise((done) => {
    let answer = '';
    const socket = connect({ port, host: '127.0.0.1', localAddress: from }, () =>
      socket.write(bytes, 'latin1'),
    );
    socket.on('data', (part) => {
      answer += String(part);
    });
    socket.on('error', () => undefined);
    socket.on('close', () => done(answer));
  });
}

/** A connection that sends a beginning and then a byte now and again, until the server hangs up; for how long, in milliseconds. */
export function dripping(port: number, beginning: string): Promise<number> {
  return new Promise((done) => {
    const started = performance.now();
    const socket = connect(port, '127.0.0.1', () => socket.write(beginning));
    const timer = setInterval(() => socket.write('x'), 200);
    socket.on('data', () => undefined);
    socket.on('error', () => undefined);
    socket.on('close', () => {
      clearInterval(timer);
      done(performance.now() - started);
    });
  });
}
