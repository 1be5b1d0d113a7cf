import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';

/** Every refusal that comes before a page or the receiver is reached, by status, as its sender reads it. */
const SENTENCES: Readonly<Record<number, string>> = {
  400: 'This request could not be read.',
  403: 'This request came from a page that is not allowed to send it.',
  404: 'There is no page here. Please check the link.',
  405: 'This address does not take this kind of request.',
  408: 'The request took too long to arrive.',
  413: 'This is too large to be an answer to an offer.',
  415: 'Answers are sent as JSON.',
  421: 'This server has a different name.',
  429: 'Too many answers came from here within a minute. Please wait a minute and send yours again.',
  431: 'The headers of this request are too large.',
  500: 'Something went wrong here. Please write to us.',
};

/** The sentence for a status. */
export function sentenceFor(status: number): string {
  return SENTENCES[status] ?? SENTENCES[status < 500 ? 400 : 500] ?? '';
}

/** Refuses with a status: JSON where answers are posted, plain text where people look at pages. */
export function refusePlainly(reply: FastifyReply, status: number, form: 'json' | 'text'): FastifyReply {
  const refused = sentenceFor(status);
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
