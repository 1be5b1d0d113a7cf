import type { AnswerWay } from '../engine/kitchen/answer-way.ts';
import { say } from './words.ts';

/** An answer that is finished, as a file. */
export interface AnswerFile {
  readonly name: string;
  readonly type: string;
  readonly text: string;
  /** The record that is posted; the text itself where left out. */
  readonly posted?: string;
  /** The subject of a mail with it. */
  readonly subject: string;
}

/** How an answer left the page. After a failed post it is still here, to be sent as a file. */
export type HandedOver =
  | { readonly by: 'download' | 'mail' | 'post' }
  | { readonly by: 'failed post'; readonly why: string };

/** What of a browser is used, so that a test can stand in for it. */
export interface Outlet {
  readonly fetch: typeof fetch;
  readonly open: (address: string) => void;
  readonly download: (file: AnswerFile) => void;
}

const POST_SECONDS = 15;
/** Where the site that serves a proposal takes answers, from the proposal's page. */
const OWN_SITE = '../../acceptances';

/** Sends an answer the way that the kitchen has set. A post that fails, for whatever reason, ends in the file instead. */
export async function handOver(file: AnswerFile, way: AnswerWay, outlet: Outlet): Promise<HandedOver> {
  if (way.by === 'post') {
    const why = await postProblem(file, way.to ?? OWN_SITE, outlet);
    if (why === null) return { by: 'post' };
    outlet.download(file);
    return { by: 'failed post', why };
  }
  outlet.download(file);
  if (way.by === 'mail') outlet.open(mailDraft(file, way.to));
  return { by: way.by };
}

/** The address that opens a mail with the answer in it. */
export function mailDraft({ subject, text }: AnswerFile, to: string): string {
  const address = encodeURIComponent(to).replace('%40', '@');
  return `mailto:${address}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(text.replaceAll('\n', '\r\n'))}`;
}

async function postProblem(file: AnswerFile, to: string, outlet: Outlet): Promise<string | null> {
  try {
    const answer = await outlet.fetch(to, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: file.posted ?? file.text,
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
      redirect: 'error',
      signal: AbortSignal.timeout(POST_SECONDS * 1000),
    });
    if (answer.ok) return null;
    const words = (await answer.text()).slice(0, 2000);
    return sentenceIn(words) ?? say('sent.status', { status: answer.status });
  } catch {
    return say('sent.unreachable');
  }
}

/** The reason in a refusal that is JSON with a sentence, shown as text whatever it holds. */
function sentenceIn(words: string): string | null {
  try {
    const { refused } = JSON.parse(words) as { readonly refused?: unknown };
    return typeof refused === 'string' ? refused.slice(0, 300) : null;
  } catch {
    return null;
  }
}
