import rateLimit from '@fastify/rate-limit';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Say } from '../words/words-in.ts';
import type { Limits } from './limits.ts';
import { refusePlainly } from './plain-answers.ts';
import type { Answer } from './receive.ts';

/** Where clients' answers are posted: acceptances, and later counts and guest lists. */
export const ACCEPTANCES = '/acceptances';

/** How many senders' counts are kept in mind; the longest quiet is forgotten first. */
const MOST_SENDERS = 5_000;

/**
 * Adds the one address that takes something in: `POST /acceptances`, JSON, from this site's own pages or those of
 * the kitchen's `site`. It reads nothing out and lists nothing.
 */
export async function addAcceptanceRoute(
  app: FastifyInstance,
  receive: (text: string) => Promise<Answer>,
  { site, limits, say }: { readonly site: string | undefined; readonly limits: Limits; readonly say: Say },
): Promise<void> {
  const siteOrigin = site === undefined ? undefined : new URL(site).origin;
  await app.register(rateLimit, { global: false, cache: MOST_SENDERS });
  app.removeAllContentTypeParsers();
  // The text itself is read by the same readers as `accept`, `guarantee` and `guests`,
  // with their bounds and their sentences.
  app.addContentTypeParser('application/json', { parseAs: 'string' }, (_request, body, done) =>
    done(null, body),
  );

  const fromOurPages = async (request: FastifyRequest, reply: FastifyReply) => {
    const { origin } = request.headers;
    if (origin === undefined) return;
    if (origin !== siteOrigin && !isOwn(origin, request.headers.host))
      return refusePlainly(reply, 403, 'json', say);
    if (origin === siteOrigin) reply.header('access-control-allow-origin', origin);
    reply.header('vary', 'origin');
  };
  app.post(
    ACCEPTANCES,
    {
      onRequest: fromOurPages,
      config: {
        rateLimit: {
          max: limits.postsAMinute,
          timeWindow: 60_000,
          errorResponseBuilder: (_request, { statusCode }) => Object.assign(new Error(), { statusCode }),
        },
      },
    },
    async (request, reply) => {
      const { status, body } = await receive(String(request.body ?? ''));
      return reply.code(status).header('cache-control', 'no-store').send(body);
    },
  );
  // Asked by a browser before a page of the kitchen's site on another host may post.
  app.options(ACCEPTANCES, { onRequest: fromOurPages }, async (_request, reply) =>
    reply
      .code(204)
      .headers({
        allow: 'POST, OPTIONS',
        'access-control-allow-methods': 'POST',
        'access-control-allow-headers': 'content-type',
        'access-control-max-age': '600',
      })
      .send(),
  );
  app.route({
    method: ['GET', 'HEAD', 'PUT', 'PATCH', 'DELETE'],
    url: ACCEPTANCES,
    onRequest: async (_request, reply) =>
      refusePlainly(reply.header('allow', 'POST, OPTIONS'), 405, 'json', say),
    handler: async () => undefined,
  });
}

/** Whether a page's origin is the address that it posts to, under whatever name this server is reached. */
function isOwn(origin: string, host: string | undefined): boolean {
  return host !== undefined && (origin === `http://${host}` || origin === `https://${host}`);
}
