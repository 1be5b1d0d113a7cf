/** What a document says about itself, besides its title and language, which its page gives. */
export interface DocumentFacts {
  title: string;
  author: string;
}

/**
 * Makes two prints of one page byte-identical, and names the author. Chromium stamps each print with its time and
 * with numbers of its inner nodes, all of fixed width: they are replaced in place, so that no offset moves. The
 * facts are added as the PDF specification's incremental update (ISO 32000-1, 7.5.6), which keeps the tags.
 */
export function stablePdf(pdf: Uint8Array, facts: DocumentFacts): Uint8Array {
  // One character for each byte, so that positions in the text are positions in the file.
  let text = Buffer.from(pdf).toString('latin1');
  text = text.replace(/(\/(?:Creation|Mod)Date \(D:)\d{14}/g, '$120000101000000');
  text = text.replace(/\/ID \[<[0-9A-Fa-f]+>\s*<[0-9A-Fa-f]+>\]/g, (id) =>
    id.replace(/[0-9A-Fa-f](?=[^<]*>)/g, '0'),
  );
  const nodes = [...new Set(text.match(/\(node\d{8}\)/g))].sort();
  const renumbered = new Map(
    nodes.map((node, index) => [node, `(node${String(index + 1).padStart(8, '0')})`]),
  );
  text = text.replace(/\(node\d{8}\)/g, (node) => renumbered.get(node) ?? node);
  return Buffer.from(text + factsUpdate(text, facts), 'latin1');
}

/** A new version of the information object, with its own cross-reference section and trailer. */
function factsUpdate(text: string, { title, author }: DocumentFacts): string {
  const trailer =
    /trailer\s*<<\/Size (\d+)\s*\/Root (\d+ \d+ R)\s*\/Info (\d+) 0 R[\s\S]*?startxref\s*(\d+)\s*%%EOF\s*$/.exec(
      text,
    );
  if (!trailer) throw new Error('the browser wrote a PDF whose trailer is not understood');
  const [, size, root, info, previous] = trailer;
  const start = text.endsWith('\n') ? '' : '\n';
  const at = text.length + start.length;
  const object = `${info} 0 obj\n<</Title ${textString(title)}\n/Author ${textString(author)}\n/Creator (Salver)>>\nendobj\n`;
  return [
    `${start}${object}xref\n`,
    `${info} 1\n${String(at).padStart(10, '0')} 00000 n \n`,
    `trailer\n<</Size ${size}\n/Root ${root}\n/Info ${info} 0 R\n/Prev ${previous}>>\n`,
    `startxref\n${at + object.length}\n%%EOF\n`,
  ].join('');
}

/** A text string of the PDF specification (7.9.2.2): UTF-16, big end first, in hex. */
function textString(text: string): string {
  const bytes = Buffer.from(text, 'utf16le').swap16().toString('hex').toUpperCase();
  return `<FEFF${bytes}>`;
}
