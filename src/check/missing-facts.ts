import type { Book } from '../book/book.ts';
import { usesIn } from '../book/uses.ts';
import { CEREALS, parseAllergen, TREE_NUTS } from '../engine/food/allergen.ts';
import type { Ingredient } from '../engine/food/ingredient.ts';
import { isCompound } from '../engine/food/is-compound.ts';
import { ORIGINS, parseOrigin } from '../engine/food/origin.ts';
import { trimUnstated } from '../engine/food/trim.ts';
import { yieldOf } from '../engine/food/yield.ts';
import { parsePart } from '../engine/kitchen/parse-part.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';

/** A fact missing from an ingredient in use, and how to ask for it. */
export interface MissingFact {
  readonly ingredient: string;
  readonly name: string;
  /** The field of the ingredients file that says it. */
  readonly field: 'contains' | 'may contain' | 'from' | 'parts' | 'yield';
  /** What is asked, short. */
  readonly question: string;
  /** What may be answered. */
  readonly choices: string;
  /** Checks an answer and gives it as the file writes it. */
  read(answer: string): Parsed<string>;
}

const ALLERGEN_CHOICES = `none, milk, egg, peanut, soy, sesame, celery, mustard, lupin, sulphites, ${[...CEREALS, ...TREE_NUTS].join(', ')}, fish (which), crustacean (which), mollusc (which)`;

/**
 * Everything that is missing of the ingredients that something uses, those of an ingredient together, allergens
 * first. Warnings of traces are asked for where a label has them: of compound goods, and of goods whose allergens
 * are asked for as well.
 */
export function missingFacts(book: Book): MissingFact[] {
  const used = usesIn(book).ingredients;
  return [...book.ingredients.values()]
    .filter(({ id }) => used.has(id))
    .flatMap((ingredient) => missingOf(book, ingredient));
}

function missingOf(book: Book, ingredient: Ingredient): MissingFact[] {
  const { id: of, name, contains, from, parts, warningsSaid } = ingredient;
  const ask = (
    field: MissingFact['field'],
    question: string,
    choices: string,
    read: MissingFact['read'],
  ) => ({
    ingredient: of,
    name,
    field,
    question,
    choices,
    read,
  });
  const isOwn = book.placeOf(`ingredient/${of}`)?.file.startsWith('ingredients/') === true;
  const compound = isCompound(ingredient);
  const warns = isOwn && !warningsSaid && (contains === undefined || compound);
  const unsaid = preparationsNotStated(book, ingredient);
  return [
    ...(contains === undefined
      ? [ask('contains', 'which allergens does it contain', ALLERGEN_CHOICES, readAllergens)]
      : []),
    ...(warns
      ? [ask('may contain', 'which allergens does its label warn of', ALLERGEN_CHOICES, readAllergens)]
      : []),
    ...(from === undefined ? [ask('from', 'what does it come from', ORIGINS.join(', '), readOrigins)] : []),
    ...(isOwn && compound && parts === undefined
      ? [
          ask(
            'parts',
            'what ingredients does its label list',
            'the ingredients, in the label’s words',
            readParts,
          ),
        ]
      : []),
    ...(unsaid.length > 0
      ? [ask('yield', `what share is left when ${unsaid.join(' or ')}`, 'a share such as 81 %', readYield)]
      : []),
  ];
}

function preparationsNotStated(book: Book, ingredient: Ingredient): string[] {
  const found = new Set<string>();
  for (const { lines } of book.recipes.values())
    for (const line of lines) {
      const { item, preparation } = line;
      if (item.kind !== 'ingredient' || item.ingredient.id !== ingredient.id) continue;
      if (yieldOf(ingredient, line).basis === 'unsaid' || trimUnstated(ingredient, line))
        found.add(preparation ?? 'made ready');
    }
  return [...found];
}

function readAllergens(answer: string): Parsed<string> {
  const words = wordsOf(answer);
  if (words.includes('none'))
    return words.length === 1
      ? parsed('none')
      : notParsed('“none” is listed with an allergen', 'write none by itself');
  return everyWord(words, parseAllergen);
}

function readOrigins(answer: string): Parsed<string> {
  return everyWord(wordsOf(answer), parseOrigin);
}

function everyWord(words: readonly string[], grammar: (word: string) => Parsed<unknown>): Parsed<string> {
  for (const word of words) {
    const read = grammar(word);
    if (!read.ok) return read;
  }
  return parsed(words.join(', '));
}

function readParts(answer: string): Parsed<string> {
  return answer.length <= 4000
    ? parsed(answer)
    : notParsed('the label is too long', 'write up to 4000 characters');
}

function readYield(answer: string): Parsed<string> {
  const share = parsePart(answer);
  return share.ok ? parsed(answer.trim()) : share;
}

function wordsOf(answer: string): string[] {
  return answer.split(',').flatMap((word) => {
    const clean = word.trim().toLowerCase().replace(/\s+/g, ' ');
    return clean === '' ? [] : [clean];
  });
}
