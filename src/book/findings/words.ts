/** An id in words, for names that nobody wrote: `full-pan-2` → `Full pan 2`. */
export function idInWords(id: string): string {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/**
 * A sentence of the engine as a finding tells it: what is wrong up to its first full stop or semicolon, and the
 * rest as the way out, both without full stop.
 */
export function asFinding(sentence: string): { readonly what: string; readonly wayOut: string } {
  const [, what = sentence, wayOut = ''] = /^(.+?)[.;] (.+)$/s.exec(sentence) ?? [];
  return { what: lowerFirst(withoutStop(what)), wayOut: lowerFirst(withoutStop(wayOut)) };
}

function withoutStop(text: string): string {
  return text.replace(/\.$/, '');
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
