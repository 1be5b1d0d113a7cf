import { isScalar, type Node, type Pair, type YAMLMap } from 'yaml';
import { quoted } from '../findings/quoted.ts';

type Words = [what: string, wayOut: string];

/** A key of a block mapping, or a key with a colon in braces, that nothing follows: its value would begin at `from`. */
export function noValueOnLine(text: string, name: string, from: number): Words {
  const rest =
    text
      .slice(from, from + 200)
      .split('\n', 1)[0]
      ?.trim() ?? '';
  const colour = rest.match(/^#\S+/)?.[0];
  if (colour) {
    return [`${quoted(name)} has no value: anything after a # is a comment`, `write ${name}: "${colour}"`];
  }
  return [`${quoted(name)} has no value`, 'write it after the colon, or delete the key'];
}

/**
 * A key without colon in braces: `{ potatoes, peeled: 18 lb }`, `{ rate: 20 %, on: food, drink }`. In braces a
 * comma always ends what stands before it.
 */
export function noValueInBraces(map: YAMLMap<Node, Node | null>, pair: Pair<Node, Node | null>): Words {
  const index = map.items.indexOf(pair);
  const name = textOf(pair.key) ?? '';
  const before = map.items[index - 1];
  const after = map.items[index + 1];
  const what = `${quoted(name)} has no value: inside braces a comma ends the value before it`;
  const beforeValue = before && textOf(before.value);
  const afterValue = after && textOf(after.value);
  if (before && after) return [what, 'write each key on its own line, without braces'];
  if (beforeValue) return [what, `write ${textOf(before.key)}: "${beforeValue}, ${name}"`];
  if (afterValue)
    return [what, `write each line on its own, without braces: ${name}, ${textOf(after.key)}: ${afterValue}`];
  return [what, `write ${name}: and its value`];
}

function textOf(node: Node | null | undefined): string | undefined {
  return isScalar(node) && typeof node.value === 'string' && node.value !== '' ? node.value : undefined;
}
