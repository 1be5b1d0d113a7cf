import { type MdastNode, markdownToMdast, mdxToMdast } from 'satteri';
import { placeInText } from '../files/plain-text.ts';
import { type Finding, finding, type Place } from '../findings/finding.ts';
import type { Body } from './front-matter.ts';
import { bodyRefusal, DEEPEST_BODY } from './limits.ts';
import { linkProblem, pictureProblem } from './links.ts';
import { beginsText, isInCode, type MaskedText, maskProgram, unmasked } from './mask.ts';
import { type BodyProblem, expressionProblem, moduleProblem, nodeProblem } from './nodes.ts';
import { mdxSyntaxProblem } from './syntax.ts';

/**
 * What of Markdown is read in notes, stories and letters. The site reads them the same way, so that nothing
 * means one thing to the checker and another to the page.
 */
export const BODY_FEATURES = { frontmatter: false, smartPunctuation: false } as const;

/** A picture or link that a text holds. */
export interface Reference {
  /** The address as the text means it (escapes resolved). */
  readonly to: string;
  readonly place: Place;
}

/** What a text holds, and what is wrong with it. */
export interface CheckedBody {
  readonly findings: Finding[];
  /** Files of the content folder, relative to the text's own folder. Only allowed ones. */
  readonly pictures: readonly Reference[];
  /** Only allowed ones. */
  readonly links: readonly Reference[];
}

/**
 * Checks the text below the data: Markdown, or Markdown with the listed components (`mdx`). Raw HTML,
 * expressions, imports, other components, attributes that are no plain text, other links than http, https,
 * mailto, tel and headings, pictures from elsewhere, link references and footnotes are findings, each with its
 * place. Never throws. A text with findings must not be given to the site's own MDX compiler, which can be held
 * up without end by what is refused here.
 */
export function checkBody(
  file: string,
  body: Body,
  kind: 'markdown' | 'mdx',
  components: readonly string[],
): CheckedBody {
  const refused = bodyRefusal(file, body, kind);
  if (refused) return { findings: [refused], pictures: [], links: [] };
  const place = (line: number, column: number): Place => ({ file, line: body.line + line - 1, column });
  const mask = kind === 'mdx' ? maskProgram(body.text) : undefined;
  let root: MdastNode;
  try {
    const options = { features: BODY_FEATURES };
    root = mask ? mdxToMdast(mask.text, options) : markdownToMdast(body.text, options);
  } catch (error) {
    const { code, line, column, what, wayOut } = mdxSyntaxProblem(
      body.text,
      String((error as Error).message),
    );
    return { findings: [finding(code, place(line, column), what, wayOut)], pictures: [], links: [] };
  }

  const findings: Finding[] = [];
  const pictures: Reference[] = [];
  const links: Reference[] = [];
  const { nodes, tooDeep } = nodesOf(root);
  for (const node of nodes) {
    const { line = 1, column = 1 } = node.position?.start ?? {};
    const at = place(line, column);
    const tell = ({ code, what, wayOut }: BodyProblem): void => {
      findings.push(finding(code, at, what, wayOut));
    };
    if (node === tooDeep) tell(TOO_DEEP);
    const problem = nodeProblem(node, components);
    if (problem) {
      if (!(isClosingTag(node) && findings.some(isAboutHtml))) tell(problem);
    } else if (node.type === 'link') {
      const to = unmasked(node.url);
      const wrong = linkProblem(to);
      if (wrong) tell({ code: 'body-link', ...wrong });
      else links.push({ to, place: at });
    } else if (node.type === 'image') {
      const to = unmasked(node.url);
      const wrong = pictureProblem(to);
      if (wrong) tell({ code: 'body-picture', ...wrong });
      else {
        pictures.push({ to, place: at });
        if (unmasked(node.alt ?? '').trim() === '') tell(UNDESCRIBED);
      }
    }
  }
  if (mask) findings.push(...programFindings(file, body, mask, nodes));
  return { findings, pictures, links };
}

/**
 * Every node in the order of the text, down to a depth beyond which no text goes; `tooDeep` is the first that
 * lies deeper. By a list of what is still to see: a hostile text may be deeper than calls can nest.
 */
function nodesOf(root: MdastNode): { nodes: MdastNode[]; tooDeep: MdastNode | undefined } {
  const nodes: MdastNode[] = [];
  let tooDeep: MdastNode | undefined;
  const rest: { node: MdastNode; depth: number }[] = [{ node: root, depth: 0 }];
  for (let next = rest.pop(); next; next = rest.pop()) {
    const { node, depth } = next;
    nodes.push(node);
    if (depth > DEEPEST_BODY * 2) {
      tooDeep ??= node;
      continue;
    }
    const children = 'children' in node ? (node.children as MdastNode[]) : [];
    for (const child of children.toReversed()) rest.push({ node: child, depth: depth + 1 });
  }
  return { nodes, tooDeep };
}

/** Expressions and modules, found in the masked text by where they stand. */
function programFindings(
  file: string,
  { text, line }: Body,
  mask: MaskedText,
  nodes: readonly MdastNode[],
): Finding[] {
  const found = (offset: number, { code, what, wayOut }: BodyProblem): Finding =>
    finding(code, placeInText(file, text, offset, line), what, wayOut);
  return [
    ...mask.braces
      .filter((offset) => !isInCode(nodes, offset))
      .map((offset) => found(offset, expressionProblem(text.slice(offset)))),
    ...mask.modules
      .filter((offset) => beginsText(nodes, offset))
      .map((offset) => found(offset, moduleProblem(text.slice(offset)))),
  ];
}

/** One pair of tags is one slip: the closing one is told only where no opening one was. */
function isClosingTag(node: MdastNode): boolean {
  return node.type === 'html' && /^<\/[a-z]/i.test(node.value);
}

function isAboutHtml({ code }: Finding): boolean {
  return code === 'body-html';
}

const UNDESCRIBED: BodyProblem = {
  code: 'picture-undescribed',
  what: 'a picture has no description for people who can’t see it',
  wayOut: 'describe it in the square brackets, such as ![the hall at dusk](hall.jpg)',
};

const TOO_DEEP: BodyProblem = {
  code: 'body-too-deep',
  what: 'lists, quotations, emphasis or components are nested too deep',
  wayOut: 'use fewer levels',
};
