import type { Socket } from 'node:net';
import fastify, { type FastifyInstance } from 'fastify';
import type { Say } from '../words/words-in.ts';
import type { Limits } from './limits.ts';
import { formFor, refusePlainly, sentenceFor, statusOf } from './plain-answers.ts';
import { SECURITY_HEADERS } from './security-headers.ts';

/** A server that has no routes yet, holds to the limits, and says what it refuses in one sentence of `say`’s language. */
export function newServer(limits: Limits, say: Say): FastifyInstance {
  const app = fastify({
    bodyLimit: limits.bodyBytes,
    connectionTimeout: limits.idleTime,
    requestTimeout: limits.requestTime,
    keepAliveTimeout: 5_000,
    forceCloseConnections: 'idle',
    http: { headersTimeout: limits.headersTime, connectionsCheckingInterval: 500 },
    routerOptions: { maxParamLength: 1_000 },
    frameworkErrors: (error, request, reply) =>
      refusePlainly(reply.headers(SECURITY_HEADERS), statusOf(error), formFor(request), say),
    clientErrorHandler: (error, socket) => hangUp(error, socket, say),
  });
  app.server.maxConnections = limits.connections;
  app.addHook('onRequest', async (request, reply) => {
    reply.headers(SECURITY_HEADERS);
    // A proxy's form, `GET http://other.example/…`: this server stands for itself alone.
    if (!request.raw.url?.startsWith('/')) return refusePlainly(reply, 400, formFor(request), say);
  });
  app.setErrorHandler((error, request, reply) => {
    const status = statusOf(error as Error);
    if (status === 500) process.stderr.write(`${say('server.request-failed', { error: String(error) })}\n`);
    return refusePlainly(reply, status, formFor(request), say);
  });
  app.setNotFoundHandler((request, reply) => {
    const reads = formFor(request) === 'text';
    if (!reads) reply.header('allow', 'GET, HEAD');
    return refusePlainly(reply, reads ? 404 : 405, formFor(request), say);
  });
  return app;
}

/** Answers what is no HTTP, or too slow or too large to become a request, and hangs up. */
function hangUp(error: NodeJS.ErrnoException, socket: Socket, say: Say): void {
  if (error.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy();
    return;
  }
  const status =
    error.code === 'ERR_HTTP_REQUEST_TIMEOUT' ? 408 : error.code === 'HPE_HEADER_OVERFLOW' ? 431 : 400;
  const body = `${sentenceFor(status, say)}\n`;
  const head = [
    `HTTP/1.1 ${status} Refused`,
    'Connection: close',
    'Content-Type: text/plain; charset=utf-8',
    `Content-Length: ${Buffer.byteLength(body)}`,
    'X-Content-Type-Options: nosniff',
  ].join('\r\n');
  socket.end(`${head}\r\n\r\n${body}`, () => socket.destroy());
}
