import { finding } from '../findings/finding.ts';
import type { Spot } from './place-of.ts';
import type { Tree } from './yaml-tree.ts';

/** A field of content files that has a better name by now. The older one is read for ever. */
export interface OlderName {
  /** The files that have the field, by their paths in the content folder. */
  readonly files: RegExp;
  /** The mappings that hold it, from the top of the file. */
  readonly inside: readonly string[];
  readonly older: string;
  readonly name: string;
}

const KITCHEN = /^kitchen\.yaml$/;
const PROPOSALS = /^proposals\//;

export const OLDER_NAMES: readonly OlderName[] = [
  { files: KITCHEN, inside: [], older: 'e-mail', name: 'email' },
  { files: PROPOSALS, inside: ['client'], older: 'e-mail', name: 'email' },
  { files: KITCHEN, inside: [], older: 'fail to come', name: 'no-shows' },
  { files: PROPOSALS, inside: [], older: 'fail to come', name: 'no-shows' },
  { files: /^recipes\//, inside: [], older: 'beside', name: 'served with' },
];

/** Puts what stands in a file under an older name under the name of today, and tells the author so. */
export function underNewNames(file: string, tree: Tree): void {
  for (const { files, inside, older, name } of OLDER_NAMES) {
    if (!files.test(file)) continue;
    const at = mappingAt(tree, inside);
    const spot = at?.children.get(older);
    if (!at || !spot) continue;
    const { data, children } = at;
    if (children.has(name)) {
      const what = `“${older}” is the old name of “${name}”, and both are here`;
      tree.findings.push(finding('duplicate-key', spot.key, what, 'keep one of them'));
    } else {
      children.set(name, spot);
      if (Object.hasOwn(data, older)) data[name] = data[older];
      // A field without a value has been told of.
      if (!spot.reported)
        tree.findings.push({
          ...finding('older-name', spot.key, `“${older}” is now called “${name}”`, NEW_NAMES),
          rewrite: { from: older, to: name },
        });
    }
    children.delete(older);
    delete data[older];
  }
}

const NEW_NAMES = 'check --rewrite changes it; the old name still works';

interface Mapping {
  readonly data: Record<string, unknown>;
  readonly children: Map<string | number, Spot>;
}

function mappingAt({ data, root }: Tree, path: readonly string[]): Mapping | undefined {
  let [inside, spot]: [unknown, Spot | undefined] = [data, root];
  for (const step of path) {
    if (typeof inside !== 'object' || inside === null || !Object.hasOwn(inside, step)) return undefined;
    [inside, spot] = [(inside as Record<string, unknown>)[step], spot?.children?.get(step)];
  }
  const isMapping = typeof inside === 'object' && inside !== null && !Array.isArray(inside);
  return isMapping && spot?.children
    ? { data: inside as Record<string, unknown>, children: spot.children }
    : undefined;
}
