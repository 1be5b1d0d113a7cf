import { statementsIn } from '../../../src/exports/words/statement-text.ts';

/** What is stated of an answer or a list, in American words. */
export const inWords = statementsIn('en-US');
