import type { MdastNode, MdxJsxAttributeUnion } from 'satteri';
import type { FindingCode } from '../findings/catalogue.ts';
import { quoted } from '../findings/quoted.ts';
import { RENAMED } from './components.ts';

/** What is wrong with a part of a text. */
export interface BodyProblem {
  readonly code: FindingCode;
  readonly what: string;
  readonly wayOut: string;
}

/** The forms of Markdown that the pages show, beside links and pictures, whose addresses are checked elsewhere. */
const SHOWN: ReadonlySet<string> = new Set<MdastNode['type']>([
  'root',
  'paragraph',
  'heading',
  'text',
  'strong',
  'emphasis',
  'delete',
  'break',
  'thematicBreak',
  'blockquote',
  'list',
  'listItem',
  'inlineCode',
  'code',
  'link',
  'image',
  'table',
  'tableRow',
  'tableCell',
  // Plain text but for a definition, which is told.
  'linkReference',
  'imageReference',
  'footnoteReference',
]);

/** Why a node may not stand in a text, judged by itself: by a list of what may. */
export function nodeProblem(node: MdastNode, components: readonly string[]): BodyProblem | undefined {
  switch (node.type) {
    case 'html':
      return {
        code: 'body-html',
        what: `a text can’t contain HTML: ${quoted(node.value)}`,
        wayOut: 'use Markdown such as **bold** or [text](address), or write \\< for the character itself',
      };
    case 'mdxJsxFlowElement':
    case 'mdxJsxTextElement':
      return componentProblem(node.name, node.attributes, components);
    case 'mdxFlowExpression':
    case 'mdxTextExpression':
      return expressionProblem(`{${node.value}}`);
    case 'mdxjsEsm':
      return moduleProblem(node.value);
    case 'definition':
      return {
        code: 'body-form',
        what: `a link’s address is written somewhere else: ${quoted(`[${node.label ?? node.identifier}]`)}`,
        wayOut: 'write [text](address) where the link is',
      };
    case 'footnoteDefinition':
      return { code: 'body-form', what: 'footnotes are not shown', wayOut: 'put the note in the text' };
  }
  if (SHOWN.has(node.type)) return undefined;
  return {
    code: 'body-form',
    what: `pages can’t show ${quoted(node.type)}`,
    wayOut: 'use plain paragraphs and lists',
  };
}

/** Braces in a text with components. `rest` is the text from the opening brace on. */
export function expressionProblem(rest: string): BodyProblem {
  const shown = rest.match(/^\{[^{}\n]{0,60}\}?/)?.[0] ?? '{';
  return {
    code: 'body-expression',
    what: `there is an expression in braces: ${quoted(shown)}`,
    wayOut: 'delete the braces, or write \\{ for the character itself',
  };
}

/** A paragraph that would be read as program. `rest` is the text from its first letter on. */
export function moduleProblem(rest: string): BodyProblem {
  return {
    code: 'body-import',
    what: `a paragraph starts with import or export: ${quoted(rest.split('\n', 1)[0] ?? '')}`,
    wayOut: 'delete it, or start the paragraph with another word',
  };
}

function componentProblem(
  name: string | null,
  attributes: readonly MdxJsxAttributeUnion[],
  components: readonly string[],
): BodyProblem | undefined {
  const list = components.map((each) => `<${each}>`).join(', ') || 'none';
  if (name !== null && /^[a-z]/.test(name) && !/[.:]/.test(name)) {
    return {
      code: 'body-html',
      what: `a text can’t contain HTML: ${quoted(`<${name}>`)}`,
      wayOut: `use Markdown, or one of the components: ${list}`,
    };
  }
  const renamed = name === null ? undefined : RENAMED.get(name);
  if (name === null || !components.includes(renamed ?? name)) {
    return {
      code: 'body-component',
      what: `there is no component called ${quoted(`<${name ?? ''}>`)}`,
      wayOut: `use one of these: ${list}`,
    };
  }
  for (const attribute of attributes) {
    // Names with a colon steer the site's own machinery, names that begin with `on` run scripts.
    const isPlain =
      attribute.type === 'mdxJsxAttribute' &&
      /^(?!on)[a-z]+$/.test(attribute.name) &&
      (attribute.value == null || typeof attribute.value === 'string');
    if (isPlain) continue;
    const shown = attribute.type === 'mdxJsxAttribute' ? attribute.name : `{${attribute.value}}`;
    return {
      code: 'body-attribute',
      what: `${quoted(shown)} on <${name}> is not a plain attribute`,
      wayOut: `write name="text", or delete it`,
    };
  }
  if (renamed !== undefined)
    return {
      code: 'body-component-renamed',
      what: `<${name}> is now called <${renamed}>`,
      wayOut: 'rename it in the text; the old name still works',
    };
  return undefined;
}
