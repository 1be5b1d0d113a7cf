import type { BodyProblem } from './nodes.ts';

/** What stops the parser of components, with the line and column (from 1) of the text. */
export interface BodySyntaxProblem extends BodyProblem {
  readonly line: number;
  readonly column: number;
}

/** The parser's message, `3:7: Expected a closing tag …`, told as what stands in the text at that place. */
export function mdxSyntaxProblem(text: string, message: string): BodySyntaxProblem {
  const [, line = '1', column = '1'] = message.match(/^(\d+):(\d+):/) ?? [];
  const at = { line: Number(line), column: Number(column) };
  const rest = text.split('\n')[at.line - 1]?.slice(at.column - 1) ?? '';
  if (rest.startsWith('<!')) {
    return {
      ...at,
      code: 'body-html',
      what: 'a text can’t contain an HTML comment',
      wayOut: 'delete it',
    };
  }
  if (/^<(?:https?:|mailto:|[^\s<>]+@)/i.test(rest)) {
    const wayOut = 'write the address without the angle brackets, or [text](address)';
    return { ...at, code: 'body-syntax', what: 'an address is in angle brackets', wayOut };
  }
  const attribute = rest.match(/^<([A-Za-z.:]*)[^<>]*?\{/);
  if (attribute) {
    const what = `an attribute of <${attribute[1]}> has an expression`;
    return { ...at, code: 'body-attribute', what, wayOut: 'write name="text", or delete it' };
  }
  const tag = message.match(/closing tag for `(<[^`]{0,60}>)`/)?.[1];
  if (tag) {
    const wayOut = 'close it in the same paragraph, or write each tag on its own line';
    return { ...at, code: 'body-syntax', what: `${tag} is not closed`, wayOut };
  }
  const what = 'an angle bracket starts a component that can’t be read';
  return {
    ...at,
    code: 'body-syntax',
    what,
    wayOut: 'write \\< for the character itself, or close the component',
  };
}
