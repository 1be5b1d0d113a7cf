import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';
import type { WordKey } from '../words/catalogues.ts';
import type { Say } from '../words/words-in.ts';

/** Every refusal that comes before a page or the receiver is reached, by status, as its sender reads it. */
const SENTENCES: Readonly<Record<number, WordKey>> = {
  400: 'server.unreadable',
  403: 'server.not-allowed',
  404: 'server.no-page',
  405: 'server.wrong-method',
  408: 'server.too-slow',
  413: 'server.too-large',
  415: 'server.not-json',
  421: 'server.other-name',
  429: 'server.too-many',
  431: 'server.headers-too-large',
  500: 'server.failed',
};

/** The sentence for a status. */
export function sentenceFor(status: number, say: Say): string {
  return say(SENTENCES[status] ?? (status < 500 ? 'server.unreadable' : 'server.failed'));
}

/** Refuses with a status: JSON where answers are posted, plain text where people look at pages. */
export function refusePlainly(
  reply: FastifyReply,
  status: number,
  form: 'json' | 'text',
  say: Say,
): FastifyReply {
  const refused = sentenceFor(status, say);
  reply.code(status).header('cache-control', 'no-store');
  return form === 'json'
    ? reply.type('application/json; charset=utf-8').send(JSON.stringify({ refused }))
    : reply.type('text/plain; charset=utf-8').send(`${refused}\n`);
}

/** The status of whatever failed while a request was handled; what is nobody's fault outside is 500. */
export function statusOf(error: Partial<FastifyError>): number {
  const { statusCode: status = 500 } = error;
  return status >= 400 && status < 500 ? status : 500;
}

/** The form in which a request is refused. */
export function formFor({ method }: Pick<FastifyRequest, 'method'>): 'json' | 'text' {
  return method === 'GET' || method === 'HEAD' ? 'text' : 'json';
}
