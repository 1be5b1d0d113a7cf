import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMAIL_FORM, signatureIn, signatureProblems } from '../../../src/client/signature.ts';
import { acceptanceSchema } from '../../../src/schema/acceptance.ts';

const ASKS = ['name', 'email', 'note', 'agreed'];
const { name, email, note } = acceptanceSchema.shape;

describe('who answers', () => {
  it('is taken by the page just where the file’s schema takes it', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 260 }),
        fc.oneof(fc.emailAddress(), fc.string()),
        fc.string({ unit: 'binary', maxLength: 4100 }),
        (nameText, emailText, noteText) => {
          const texts = new Map(
            Object.entries({ name: nameText, email: emailText, note: noteText, agreed: 'on' }),
          );
          if (signatureProblems(texts, ASKS).length > 0) return;
          const signature = signatureIn(texts);
          expect(name.safeParse(signature.name).success).toBe(true);
          expect(email.safeParse(signature.email).success).toBe(true);
          expect(note.safeParse(signature.note).success).toBe(true);
        },
      ),
    );
  });

  it('may have every address that the schema takes', () => {
    fc.assert(
      fc.property(fc.oneof(fc.emailAddress(), fc.string(), fc.constant("o'neil+x@a-b.example")), (text) => {
        expect(EMAIL_FORM.test(text)).toBe(email.safeParse(text).success && text.length <= 254);
      }),
    );
  });

  it('is asked for what is missing, at its field, as far as the form has it', () => {
    const fields = (texts: Record<string, string>, asks = ASKS) =>
      signatureProblems(new Map(Object.entries(texts)), asks).map(({ field }) => field);
    expect(fields({})).toEqual(['name', 'email', 'agreed']);
    expect(fields({ name: ' \u0000 ', email: 'a@b', agreed: 'on' })).toEqual(['name', 'email']);
    expect(fields({ name: 'Ada' }, ['name', 'note'])).toEqual([]);
    expect(fields({ name: 'Ada', email: 'a@b.example', agreed: 'on', note: 'x'.repeat(4001) })).toEqual([
      'note',
    ]);
  });
});
