import { expect, it } from 'vitest';
import { z } from 'zod';
import { formOf } from '../../../src/schema/form-of.ts';

interface Dish {
  readonly name: string;
  readonly unit: 'tray' | 'jar';
  readonly marks: readonly string[];
  readonly note?: string;
}

const { name, unit, marks, note } = {
  name: z.string(),
  unit: z.enum(['tray', 'jar']),
  marks: z.array(z.string()),
  note: z.string().optional(),
};
const form = formOf<Dish>();
const whole = form(z.strictObject({ name, unit, marks, note }));

/** The type check fails on any of these lines that compiles; none of them is ever run. */
function others(): unknown[] {
  return [
    // @ts-expect-error a field is missing
    form(z.strictObject({ unit, marks, note })),
    // @ts-expect-error an optional field is missing
    form(z.strictObject({ name, unit, marks })),
    // @ts-expect-error there is a field besides
    form(z.strictObject({ name, unit, marks, note, supplement: note })),
    // @ts-expect-error what is optional is asked for
    form(z.strictObject({ name, unit, marks, note: name })),
    // @ts-expect-error what is asked for is optional
    form(z.strictObject({ name: note, unit, marks, note })),
    // @ts-expect-error a value is missing
    form(z.strictObject({ name, unit: z.literal('tray'), marks, note })),
    // @ts-expect-error any text is taken for one of two words
    form(z.strictObject({ name, unit: name, marks, note })),
  ];
}

it('holds a schema to a type declared elsewhere, field by field, and leaves it as it is', () => {
  expect(typeof others).toBe('function');
  expect(whole.parse({ name: 'Barley with leeks', unit: 'tray', marks: [] })).toEqual({
    name: 'Barley with leeks',
    unit: 'tray',
    marks: [],
  });
});
