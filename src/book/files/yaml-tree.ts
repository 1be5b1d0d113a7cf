import {
  isAlias,
  isMap,
  isScalar,
  type Node,
  type Pair,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import type { FindingCode } from '../findings/catalogue.ts';
import { type Finding, finding, type Place } from '../findings/finding.ts';
import { quoted } from '../findings/quoted.ts';
import type { Spot } from './place-of.ts';
import { controlFindingAt, indexOfControl } from './plain-text.ts';
import { DEEPEST } from './yaml-limits.ts';
import { noValueInBraces, noValueOnLine } from './yaml-no-value.ts';

/** A parsed document as plain data, and the tree of its places. */
export interface Tree {
  readonly data: unknown;
  readonly root: Spot;
  readonly findings: Finding[];
}

/** What one walk shares. */
interface Walk {
  readonly text: string;
  readonly placeAt: (offset: number) => Place;
  readonly findings: Finding[];
}

/** A node read: its data, and its spot. A reported node has no data. */
interface Read {
  readonly data: unknown;
  readonly spot: Spot;
}

/**
 * Turns a document of the failsafe schema into texts, lists and mappings without prototype, noting where each
 * of them stands, and refuses what content has no use for: aliases, anchors, merge keys, tags, keys that are no
 * plain text, keys that stand twice, and keys and items with nothing after them. A document with nothing in it
 * is a mapping without keys.
 */
export function readTree(contents: Node | null, text: string, placeAt: (offset: number) => Place): Tree {
  const walk: Walk = { text, placeAt, findings: [] };
  const start = placeAt(0);
  if (!contents) {
    const root = {
      at: start,
      key: start,
      children: new Map<string, Spot>(),
      reported: false,
    };
    return { data: Object.create(null), root, findings: [] };
  }
  const { data, spot } = readNode(walk, contents, start, 1);
  return {
    data: spot.reported ? Object.create(null) : data,
    root: spot,
    findings: walk.findings,
  };
}

function readNode(walk: Walk, node: Node, key: Place, depth: number): Read {
  const at = walk.placeAt(node.range?.[0] ?? 0);
  if (isAlias(node))
    return refused(walk, at, key, 'yaml-alias', `${quoted(`*${node.source}`)} refers to another value`);
  const { anchor, tag } = node as Scalar;
  if (anchor)
    return refused(walk, at, key, 'yaml-alias', `${quoted(`&${anchor}`)} gives a value a second name`);
  if (tag) return refused(walk, at, key, 'yaml-tag', `the tag ${quoted(tag)} comes before a value`);
  if (isScalar(node)) return readText(walk, node, at, key);
  if (depth > DEEPEST) {
    return refused(walk, at, key, 'yaml-too-deep', `lists and mappings are nested more than ${DEEPEST} deep`);
  }
  if (isMap(node)) return readMap(walk, node as YAMLMap<Node, Node | null>, at, key, depth);
  return readList(walk, node as YAMLSeq<Node>, at, key, depth);
}

function readText(walk: Walk, node: Scalar, at: Place, key: Place): Read {
  const data = String(node.value ?? '');
  // Escapes in double quotation marks can name any character.
  const control = indexOfControl(data);
  if (control === -1) return { data, spot: { at, key, children: undefined, reported: false } };
  walk.findings.push(controlFindingAt(at, data, control));
  return reported(at, key);
}

function readList(walk: Walk, list: YAMLSeq<Node>, at: Place, key: Place, depth: number): Read {
  const children = new Map<number, Spot>();
  const data: unknown[] = [];
  for (const item of list.items) {
    const place = walk.placeAt(item.range?.[0] ?? 0);
    if (isEmpty(item)) {
      walk.findings.push(
        finding('no-value', place, 'this list item is empty', 'write the item, or delete the line'),
      );
      continue;
    }
    const read = readNode(walk, item, place, depth + 1);
    if (read.spot.reported) continue;
    children.set(data.length, read.spot);
    data.push(read.data);
  }
  // A list with a hole means something else than its author wrote.
  if (data.length < list.items.length) return reported(at, key);
  return { data, spot: { at, key, children, reported: false } };
}

function readMap(walk: Walk, map: YAMLMap<Node, Node | null>, at: Place, key: Place, depth: number): Read {
  const children = new Map<string, Spot>();
  const data: Record<string, unknown> = Object.create(null);
  const spot: Spot = { at, key, children, reported: false };
  for (const pair of map.items) {
    const keyAt = walk.placeAt(pair.key?.range?.[0] ?? map.range?.[0] ?? 0);
    const name = readKey(walk, pair, keyAt);
    if (name === undefined) continue;
    const first = children.get(name);
    if (first) {
      const what = `${quoted(name)} is there twice, first on line ${first.key.line}`;
      walk.findings.push(finding('duplicate-key', keyAt, what, 'keep one of them'));
      continue;
    }
    if (pair.value === null && map.flow) {
      // In braces without a colon: commas have cut a text, and nobody can tell which of its neighbours it was.
      walk.findings.push(finding('no-value', keyAt, ...noValueInBraces(map, pair)));
      return reported(at, key);
    }
    if (pair.value === null || isEmpty(pair.value)) {
      const from = pair.value?.range?.[0] ?? pair.key.range?.[2] ?? 0;
      walk.findings.push(finding('no-value', keyAt, ...noValueOnLine(walk.text, name, from)));
      children.set(name, reported(keyAt, keyAt).spot);
      continue;
    }
    const read = readNode(walk, pair.value, keyAt, depth + 1);
    children.set(name, read.spot);
    if (!read.spot.reported) data[name] = read.data;
  }
  return { data, spot };
}

/** The key's text; undefined where it was refused. */
function readKey(walk: Walk, { key }: Pair<Node, Node | null>, at: Place): string | undefined {
  const refuse = (code: FindingCode, what: string, wayOut: string): undefined => {
    walk.findings.push(finding(code, at, what, wayOut));
  };
  if (!isScalar(key) || key.anchor || key.tag) {
    if (isAlias(key) || (key as Scalar | null)?.anchor)
      return refuse('yaml-alias', 'a key starts with * or &', ALIAS);
    return refuse('key-form', 'a key is not a plain text', 'write a word or text before the colon');
  }
  const name = String(key.value ?? '').trim();
  if (name === '<<') return refuse('yaml-alias', 'merge keys are not used here', ALIAS);
  if (name === '') return refuse('key-form', 'there is no key before the colon', 'write one');
  if (name === '__proto__' || /\n/.test(name) || indexOfControl(name) !== -1) {
    return refuse('key-form', `${quoted(name)} can’t be a key`, 'write a word or text on one line');
  }
  return name;
}

const ALIAS = 'write the value out where it is used; text that starts this way needs quotation marks';

function refused(walk: Walk, at: Place, key: Place, code: FindingCode, what: string): Read {
  const wayOut = code === 'yaml-too-deep' ? 'use fewer levels' : ALIAS;
  walk.findings.push(finding(code, at, what, wayOut));
  return reported(at, key);
}

function reported(at: Place, key: Place): Read {
  return {
    data: undefined,
    spot: { at, key, children: undefined, reported: true },
  };
}

/** Nothing written; an empty text in quotation marks is a text. */
function isEmpty(node: Node): boolean {
  if (!isScalar(node) || node.anchor || node.tag) return false;
  return node.type === 'PLAIN' && node.value === '';
}
