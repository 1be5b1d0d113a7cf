import { defineHastPlugin, markdownToHtml } from 'satteri';
import { plainText } from '../files/plain-text.ts';
import { bodyRefusal } from './limits.ts';
import { linkProblem, pictureProblem } from './links.ts';
import { BODY_FEATURES } from './source.ts';

/**
 * The HTML of a letter or of terms written in Markdown. Only what `checkBody` allows gets through, whether it
 * was asked or not: HTML becomes text, other links lose their address, other pictures become their description.
 * `pictureUrl` gives the address at which a picture of the content folder is served; without it every picture
 * becomes its description. A text that `checkBody` refuses whole gives an empty text. The same Markdown always
 * gives the same HTML.
 */
export function letterHtml(markdown: string, pictureUrl?: (path: string) => string): string {
  const text = plainText(markdown);
  if (bodyRefusal('', { text, line: 1 }, 'markdown')) return '';
  const safe = defineHastPlugin({
    name: 'only-what-may-stand',
    raw(node, tree): void {
      tree.replaceNode(node, { type: 'text', value: node.value });
    },
    comment(node, tree): void {
      tree.removeNode(node);
    },
    element: [
      {
        filter: ['a'],
        visit(node, tree): void {
          const address = String(node.properties.href ?? '');
          if (linkProblem(address)) {
            tree.replaceNode(node, {
              type: 'element',
              tagName: 'span',
              properties: {},
              children: node.children,
            });
          } else if (!address.startsWith('#')) {
            tree.setProperty(node, 'rel', 'noopener noreferrer nofollow');
          }
        },
      },
      {
        filter: ['img'],
        visit(node, tree): void {
          const path = String(node.properties.src ?? '');
          if (pictureUrl && !pictureProblem(path)) tree.setProperty(node, 'src', pictureUrl(path));
          else tree.replaceNode(node, { type: 'text', value: String(node.properties.alt ?? '') });
        },
      },
    ],
  });
  const features = { ...BODY_FEATURES, gfm: { footnotes: false } };
  return markdownToHtml(text, { features, hastPlugins: [safe] }).html;
}
