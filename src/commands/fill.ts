import { randomBytes } from 'node:crypto';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Book } from '../book/book.ts';
import { withField } from '../book/files/add-field.ts';
import { type MissingFact, missingFacts } from '../check/missing-facts.ts';
import { ask, type Question, type Terminal } from './ask.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';

/** The file that new entries go into. */
const OWN_FILE = 'ingredients/own.yaml';

/** Asks for the missing facts of the ingredients in use, and writes each answer as it is given. */
export const command: Command = {
  summary: 'ask for facts missing from the ingredients you use: allergens, origins, yields',
  usage: '[--list]',
  options: { list: { type: 'boolean', summary: 'just list what is missing' } },
  async run(call) {
    const [word] = call.args;
    if (word !== undefined) return wrongCall(call, `fill takes no arguments, but got '${word}'.`);
    const open = await openBook(call);
    if (!open) return 1;
    const missing = missingFacts(open.book);
    const canAsk = process.stdin.isTTY === true && call.flags.list !== true && !call.json;
    if (!canAsk || missing.length === 0) {
      call.write(call.json ? listJson(missing) : listText(missing));
      return missing.length > 0 && call.flags.list !== true ? 1 : 0;
    }
    const written = await fillIn(open.book, call.contentDir, missing);
    call.write(summaryText(written, missing.length));
    return written === missing.length ? 0 : 1;
  },
};

/**
 * Puts one question after another and writes each answer before the next is put, so that breaking off keeps what
 * was said. An empty answer leaves the fact unknown. How many were written.
 */
export async function fillIn(
  book: Book,
  contentDir: string,
  missing: readonly MissingFact[],
  terminal?: Terminal,
): Promise<number> {
  let written = 0;
  const questions = missing.map(
    (fact): Question => ({
      key: `${fact.ingredient}/${fact.field}`,
      text: `${fact.name}: ${fact.question}? (${fact.choices}; leave blank if not known)`,
      fallback: '',
      problem(answer) {
        const read = answer === '' ? undefined : fact.read(answer);
        return read && !read.ok ? `${read.what}; ${read.wayOut}.` : undefined;
      },
      async keep(answer) {
        const read = answer === '' ? undefined : fact.read(answer);
        if (!read?.ok) return;
        await writeFact(book, contentDir, fact, read.value);
        written += 1;
      },
    }),
  );
  await ask(questions, terminal);
  return written;
}

/** Writes a fact into the caterer's file that has the ingredient, else into a file of their own; whole or not at all. */
async function writeFact(book: Book, contentDir: string, fact: MissingFact, value: string): Promise<void> {
  const known = book.placeOf(`ingredient/${fact.ingredient}`)?.file;
  const file = join(contentDir, known?.startsWith('ingredients/') ? known : OWN_FILE);
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return '';
    throw error;
  });
  // Read again for each answer: the file may be open in an editor beside.
  const added = withField(text, fact.ingredient, fact.field, value);
  if (!added.ok) throw new Error(`${file}: ${added.what}; ${added.wayOut}`);
  await mkdir(dirname(file), { recursive: true });
  const scratch = join(dirname(file), `.${randomBytes(6).toString('hex')}.tmp`);
  try {
    await writeFile(scratch, added.value);
    await rename(scratch, file);
  } catch (error) {
    await rm(scratch, { force: true });
    throw error;
  }
}

function listText(missing: readonly MissingFact[]): string {
  if (missing.length === 0) return 'The ingredients in use have all their facts.';
  const lines = missing.map(({ ingredient, field, question }) => `${ingredient}: ${field} (${question})`);
  return [...lines, `${countText(missing.length)} missing. Run fill in a terminal to answer.`].join('\n');
}

function listJson(missing: readonly MissingFact[]): string {
  const facts = missing.map(({ ingredient, name, field, question, choices }) => ({
    ingredient,
    name,
    field,
    question,
    choices,
  }));
  return JSON.stringify(facts, null, 2);
}

function summaryText(written: number, asked: number): string {
  const left = asked - written;
  return `${written} ${written === 1 ? 'answer' : 'answers'} written. ${left === 0 ? 'Nothing is missing now.' : `${countText(left)} still missing.`}`;
}

function countText(facts: number): string {
  return facts === 1 ? '1 fact is' : `${facts} facts are`;
}
