import type { FastifyInstance } from 'fastify';
import type { Say } from '../words/words-in.ts';
import { formFor, refusePlainly } from './plain-answers.ts';

/**
 * Answers only who asks for this machine by its loopback name: a page elsewhere on the web whose own name was turned
 * to 127.0.0.1 sends that name along, and gets nothing.
 */
export function answerLoopbackNamesOnly(app: FastifyInstance, say: Say): void {
  app.addHook('onRequest', async (request, reply) => {
    const { localPort } = request.socket;
    const { host = '' } = request.headers;
    if (![`127.0.0.1:${localPort}`, `localhost:${localPort}`].includes(host.toLowerCase()))
      return refusePlainly(reply, 421, formFor(request), say);
  });
}
