import { describe, expect, it } from 'vitest';
import { type AnswerFile, handOver, mailDraft, type Outlet } from '../../../src/client/hand-over.ts';

const file: AnswerFile = {
  name: 'acceptance.json',
  type: 'application/json',
  text: '{ "a": "b&c" }\n',
  subject: 'Acceptance: 100 % & more',
};

function outlet(answer: () => Promise<Response>) {
  const calls: string[] = [];
  const stand: Outlet = {
    fetch: (async (to: string, init: RequestInit) => {
      calls.push(`post ${to} ${String(init.body)}`);
      return answer();
    }) as typeof fetch,
    open: (address) => calls.push(`open ${address.slice(0, 20)}`),
    download: ({ name }) => calls.push(`download ${name}`),
  };
  return { calls, stand };
}

describe('an answer on its way to the kitchen', () => {
  it('is posted, and nothing else, where the kitchen takes it', async () => {
    const { calls, stand } = outlet(async () => new Response('{}', { status: 202 }));
    expect(await handOver(file, { by: 'post', to: 'https://k.example/acceptances' }, stand)).toEqual({
      by: 'post',
    });
    expect(calls).toEqual([`post https://k.example/acceptances ${file.text}`]);
  });

  it('goes to the site that serves the page where no address is set', async () => {
    const { calls, stand } = outlet(async () => new Response('{}', { status: 202 }));
    await handOver(file, { by: 'post', to: null }, stand);
    expect(calls[0]).toMatch(/^post \.\.\/\.\.\/acceptances /);
  });

  it.each([
    [
      'with its reason',
      async () => Response.json({ refused: 'It is too late.' }, { status: 422 }),
      'It is too late.',
    ],
    [
      'that says nothing',
      async () => new Response('<h1>no</h1>', { status: 500 }),
      'the server answered with 500',
    ],
    ['out of reach', () => Promise.reject(new TypeError('network')), 'the server can’t be reached'],
  ])('becomes a file after a refusal %s', async (_, answer, why) => {
    const { calls, stand } = outlet(answer);
    expect(await handOver(file, { by: 'post', to: 'https://k.example/a' }, stand)).toEqual({
      by: 'failed post',
      why,
    });
    expect(calls.at(-1)).toBe('download acceptance.json');
  });

  it('is a mail draft and a file besides, or a file alone', async () => {
    const { calls, stand } = outlet(async () => new Response());
    await handOver(file, { by: 'mail', to: 'cook@k.example' }, stand);
    await handOver(file, { by: 'download' }, stand);
    expect(calls).toEqual([
      'download acceptance.json',
      'open mailto:cook@k.exampl',
      'download acceptance.json',
    ]);
  });

  it('keeps its text whole in a mail, whatever signs are in it', () => {
    const draft = new URL(mailDraft(file, 'cook@k.example'));
    expect(draft.pathname).toBe('cook@k.example');
    expect(draft.searchParams.get('subject')).toBe(file.subject);
    expect(draft.searchParams.get('body')).toBe('{ "a": "b&c" }\r\n');
    expect([...draft.searchParams.keys()]).toEqual(['subject', 'body']);
    const forged = mailDraft(file, 'cook@k.example?bcc=x@y.example');
    expect(new URL(forged).searchParams.get('bcc')).toBeNull();
  });
});
