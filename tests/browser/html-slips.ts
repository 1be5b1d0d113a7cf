import { HtmlValidate } from 'html-validate';

const checker = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: {
    // How markup is written, which the compiler decides, and not whether it conforms.
    'no-trailing-whitespace': 'off',
    'void-style': 'off',
    'attribute-boolean-style': 'off',
    'attribute-empty-style': 'off',
    'doctype-style': 'off',
    'long-title': 'off',
    'tel-non-breaking': 'off',
    // The comparison follows what is typed: it has nothing to send.
    'wcag/h32': 'off',
    // Dots and spaces are told apart: only what HTML itself forbids in an id is wrong.
    'valid-id': ['error', { relaxed: true }],
  },
});

/** Where a page's HTML does not conform, each with its line. */
export async function htmlSlips(html: string): Promise<string[]> {
  const { results } = await checker.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ line, ruleId, message }) => `${line} ${ruleId} ${message}`),
  );
}
