import { createInterface } from 'node:readline/promises';

/** One question: what is asked, what is taken where nothing is typed, and what is wrong with an answer. */
export interface Question {
  readonly key: string;
  readonly text: string;
  readonly fallback: string | undefined;
  /** A sentence on what is wrong, or undefined for an answer that will do. */
  problem(answer: string): string | undefined;
  /** Keeps an answer that will do before the next question is put, so that breaking off later does not lose it. */
  keep?(answer: string): Promise<void>;
}

/** Where questions are put and answers typed. */
export interface Terminal {
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
}

/**
 * Asks in the terminal until every answer will do. Answers by key; undefined where the person breaks off with
 * Ctrl-C or Ctrl-D. Several answers pasted at once are taken one after the other.
 */
export async function ask(
  questions: readonly Question[],
  { input, output }: Terminal = { input: process.stdin, output: process.stderr },
): Promise<Record<string, string> | undefined> {
  const terminal = createInterface({ input, output });
  const lines = terminal[Symbol.asyncIterator]();
  const answers: Record<string, string> = {};
  let closed = false;
  terminal.once('close', () => {
    closed = true;
  });
  try {
    for (const question of questions) {
      const answer = await answerTo(question);
      if (answer === undefined) return undefined;
      answers[question.key] = answer;
      await question.keep?.(answer);
    }
    return answers;
  } finally {
    terminal.close();
  }

  async function answerTo({ text, fallback, problem }: Question): Promise<string | undefined> {
    const shown = fallback === undefined || fallback === '' ? '' : ` [${fallback}]`;
    terminal.setPrompt(`${text}${shown}: `);
    for (;;) {
      if (!closed) terminal.prompt();
      const typed = await lines.next();
      if (typed.done) return undefined;
      const answer = typed.value.trim() === '' ? (fallback ?? '') : typed.value.trim();
      const wrong = problem(answer);
      if (wrong === undefined) return answer;
      output.write(`${wrong}\n`);
    }
  }
}
