import { type MdastNode, markdownToMdast, mdxToMdast } from 'satteri';
import { bodyRefusal, DEEPEST_BODY } from './body-limits.ts';
import { linkProblem, pictureProblem } from './body-links.ts';
import { type BodyProblem, nodeProblem } from './body-nodes.ts';
import { mdxSyntaxProblem } from './body-syntax.ts';
import { type Finding, finding, type Place } from './finding.ts';
import type { Body } from './front-matter.ts';

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
 * place. Never throws.
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
  let root: MdastNode;
  try {
    root = (kind === 'mdx' ? mdxToMdast : markdownToMdast)(body.text, { features: BODY_FEATURES });
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
  let isTooDeep = false;
  // A list of what is still to see, in the order of the text: a hostile text may be deeper than calls can nest.
  const rest: { node: MdastNode; depth: number }[] = [{ node: root, depth: 0 }];
  for (let next = rest.pop(); next; next = rest.pop()) {
    const { node, depth } = next;
    const { line = 1, column = 1 } = node.position?.start ?? {};
    const at = place(line, column);
    const tell = ({ code, what, wayOut }: BodyProblem): void => {
      findings.push(finding(code, at, what, wayOut));
    };
    if (depth > DEEPEST_BODY * 2) {
      if (!isTooDeep) tell(TOO_DEEP);
      isTooDeep = true;
      continue;
    }
    const problem = nodeProblem(node, components);
    if (problem === 'passed over' || (isClosingTag(node) && findings.some(isAboutHtml))) continue;
    if (problem) {
      tell(problem);
      continue;
    }
    if (node.type === 'link') {
      const wrong = linkProblem(node.url);
      if (wrong) tell({ code: 'body-link', ...wrong });
      else links.push({ to: node.url, place: at });
    }
    if (node.type === 'image') {
      const wrong = pictureProblem(node.url);
      if (wrong) tell({ code: 'body-picture', ...wrong });
      else pictures.push({ to: node.url, place: at });
    }
    const children = 'children' in node ? (node.children as MdastNode[]) : [];
    for (const child of children.toReversed()) rest.push({ node: child, depth: depth + 1 });
  }
  return { findings, pictures, links };
}

/** One pair of tags is one slip: the closing one is told only where no opening one was. */
function isClosingTag(node: MdastNode): boolean {
  return node.type === 'html' && /^<\/[a-z]/i.test(node.value);
}

function isAboutHtml({ code }: Finding): boolean {
  return code === 'body-html';
}

const TOO_DEEP: BodyProblem = {
  code: 'body-too-deep',
  what: 'lists, quotations, emphasis or components are nested too deep',
  wayOut: 'write less deep ones',
};
