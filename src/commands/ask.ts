import { createInterface } from 'node:readline/promises';

/** One question: what is asked, what is taken where nothing is typed, and what is wrong with an answer. */
export interface Question {
  readonly key: string;
  readonly text: string;
  readonly fallback: string | undefined;
  /** A sentence on what is wrong, or undefined for an answer that will do. */
  problem(answer: string): string | undefined;
}

/** Asks in the terminal until every answer will do. Answers by key. */
export async function ask(questions: readonly Question[]): Promise<Record<string, string>> {
  const terminal = createInterface({ input: process.stdin, output: process.stderr });
  const answers: Record<string, string> = {};
  try {
    for (const question of questions) answers[question.key] = await answerTo(question);
  } finally {
    terminal.close();
  }
  return answers;

  async function answerTo({ text, fallback, problem }: Question): Promise<string> {
    for (;;) {
      const shown = fallback === undefined || fallback === '' ? '' : ` [${fallback}]`;
      const typed = (await terminal.question(`${text}${shown}: `)).trim();
      const answer = typed === '' ? (fallback ?? '') : typed;
      const wrong = problem(answer);
      if (wrong === undefined) return answer;
      process.stderr.write(`${wrong}\n`);
    }
  }
}
