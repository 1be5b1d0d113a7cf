import { QuoteType, Tokenizer, type TokenizerCallbacks } from 'htmlparser2';

/** An attribute as it is written: escapes of HTML are left as they are, so that it can be written back. */
export interface HtmlAttribute {
  readonly name: string;
  readonly value: string;
  /** Where it begins in the page, and where it ends, its closing quote included. */
  readonly from: number;
  readonly to: number;
  /** Where the value begins. */
  readonly valueFrom: number;
}

/** A start tag of a page, `to` being where it ends. */
export interface HtmlTag {
  readonly name: string;
  readonly to: number;
  readonly attributes: readonly HtmlAttribute[];
}

/** A stretch of a page, and what is written in its place. */
export interface HtmlEdit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

const nothing = () => undefined;
const PASSED_OVER = {
  onattribdata: nothing,
  onattribend: nothing,
  onattribentity: nothing,
  onattribname: nothing,
  oncdata: nothing,
  onclosetag: nothing,
  oncomment: nothing,
  ondeclaration: nothing,
  onend: nothing,
  onopentagend: nothing,
  onopentagname: nothing,
  onprocessinginstruction: nothing,
  onselfclosingtag: nothing,
  ontext: nothing,
  ontextentity: nothing,
};

/** Reads a page as browsers do: what looks like a tag in text, comments, scripts or attributes is none. */
function read(html: string, pieces: Partial<TokenizerCallbacks>): void {
  const tokenizer = new Tokenizer({ decodeEntities: false }, { ...PASSED_OVER, ...pieces });
  tokenizer.write(html);
  tokenizer.end();
}

/** The start tags of a page in its order. */
export function tagsOf(html: string): HtmlTag[] {
  const tags: HtmlTag[] = [];
  let name = '';
  let attributes: HtmlAttribute[] = [];
  let attribute = { name: '', value: '', from: 0, to: 0, valueFrom: 0 };
  const ended = (end: number) => {
    tags.push({ name, to: end + 1, attributes });
    attributes = [];
  };
  read(html, {
    onopentagname(start, end) {
      name = html.slice(start, end);
    },
    onattribname(start, end) {
      attribute = { name: html.slice(start, end), value: '', from: start, to: end, valueFrom: end };
      attributes.push(attribute);
    },
    onattribdata(start, end) {
      attribute.value = html.slice(start, end);
      attribute.valueFrom = start;
    },
    onattribend(quote, end) {
      if (quote !== QuoteType.NoValue) attribute.to = end;
    },
    onopentagend: ended,
    onselfclosingtag: ended,
  });
  return tags;
}

/** The stretches of text that a browser shows or reads out, in the page's order: nothing of scripts and styles. */
export function wordsOf(html: string): { from: number; to: number }[] {
  const words: { from: number; to: number }[] = [];
  let inside = '';
  read(html, {
    onopentagname(start, end) {
      inside = html.slice(start, end);
    },
    onclosetag() {
      inside = '';
    },
    ontext(from, to) {
      if (inside !== 'script' && inside !== 'style') words.push({ from, to });
    },
  });
  return words;
}

/** The page with its edits made, which come in its order and do not overlap. */
export function edited(html: string, edits: readonly HtmlEdit[]): string {
  let made = '';
  let done = 0;
  for (const { from, to, text } of edits) {
    made += html.slice(done, from) + text;
    done = to;
  }
  return made + html.slice(done);
}
