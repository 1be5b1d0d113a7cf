import { PassThrough } from 'node:stream';
import { text } from 'node:stream/consumers';
import { expect, test } from 'vitest';
import { ask, type Question } from '../../src/commands/ask.ts';

const QUESTIONS: Question[] = [
  {
    key: 'client',
    text: 'Client',
    fallback: undefined,
    problem: (answer) => (answer === '' ? 'Please enter something.' : undefined),
  },
  { key: 'time', text: 'Served at', fallback: '18:00', problem: () => undefined },
  {
    key: 'adults',
    text: 'Adults',
    fallback: '',
    problem: (answer) => (/^\d*$/.test(answer) ? undefined : 'Write a number.'),
  },
];

async function asked(typed: readonly string[], end = true) {
  const input = new PassThrough();
  const output = new PassThrough();
  for (const chunk of typed) input.write(chunk);
  if (end) input.end();
  const answers = await ask(QUESTIONS, { input, output });
  output.end();
  return { answers, shown: await text(output) };
}

test('a question is put until its answer will do; nothing typed takes what stands in brackets', async () => {
  const { answers, shown } = await asked(['\n', '  Maeve \n', '\n', 'many\n', '40\n'], false);
  expect(answers).toEqual({ client: 'Maeve', time: '18:00', adults: '40' });
  expect(shown).toBe(
    'Client: Please enter something.\nClient: Served at [18:00]: Adults: Write a number.\nAdults: ',
  );
});

test('several answers pasted at once are taken one after the other', async () => {
  const { answers } = await asked(['Maeve\n19:30\n40\n'], false);
  expect(answers).toEqual({ client: 'Maeve', time: '19:30', adults: '40' });
});

test('breaking off answers nothing, instead of waiting for ever', async () => {
  const { answers } = await asked(['Maeve\n']);
  expect(answers).toBeUndefined();
});
