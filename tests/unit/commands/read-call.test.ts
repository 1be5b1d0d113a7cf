import { describe, expect, test } from 'vitest';
import { readCall } from '../../../src/commands/call/read-call.ts';

const surroundings = { projectDir: '/salver', callerDir: '/home/cook' };
const command = {
  options: {
    guests: { type: 'string', value: 'COUNT', summary: 'how many' },
    add: { type: 'string', multiple: true, summary: 'an add-on' },
    'no-pdf': { type: 'boolean', summary: 'no PDFs' },
  },
} as const;
const read = (...words: string[]) => readCall(words, command, surroundings);

describe('reading a call', () => {
  test('paths count from where the caller stands, and default to the project', () => {
    expect(read('--content', 'mine')).toMatchObject({
      contentDir: '/home/cook/mine',
      outDir: '/salver/dist',
    });
  });

  test('words, own flags and shared flags are told apart, and a dash alone is a word', () => {
    expect(
      read('-', '--guests=90', '--json', '--add', 'bar', '--add', 'cake', '--today', '2027-04-26'),
    ).toEqual({
      args: ['-'],
      flags: { guests: '90', add: ['bar', 'cake'] },
      contentDir: '/salver/content',
      outDir: '/salver/dist',
      today: '2027-04-26',
      json: true,
      help: false,
    });
  });

  test('a negative number is no flag, as a word and as a value', () => {
    expect(read('supper', '-5', '-$12.50', '--guests', '-3', '--add', '-1')).toMatchObject({
      args: ['supper', '-5', '-$12.50'],
      flags: { guests: '-3', add: ['-1'] },
    });
    expect(read('-x5')).toEqual({ sentence: "There is no flag '-x'; `--help` lists the flags." });
  });

  test.each([
    [['--gests', '90'], "There is no flag '--gests'; did you mean '--guests'?"],
    [['--xylophone'], "There is no flag '--xylophone'; `--help` lists the flags."],
    [['--__proto__'], "There is no flag '--__proto__'; `--help` lists the flags."],
    [['--guests'], "'--guests' needs a value, as in '--guests COUNT'."],
    [['--guests', '--json'], "'--guests' needs a value, as in '--guests COUNT'."],
    [['--no-pdf=yes'], "'--no-pdf' takes no value."],
    [['--guests', '1', '--guests', '2'], "'--guests' is given twice; give it once."],
    [
      ['--today', '2027-02-29'],
      "'--today': 2027-02-29 does not exist; that month runs from 2027-02-01 to 2027-02-28.",
    ],
  ])('%j is answered in one sentence', (words, sentence) => {
    expect(read(...words)).toEqual({ sentence });
  });
});
