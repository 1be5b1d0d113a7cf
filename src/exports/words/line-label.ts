import type { QuoteLine } from '../../engine/quote/quote.ts';
import type { ScriptKey, ScriptSay } from '../../words/script-words.ts';

/** What lines are called that are more than what they are named after, by their keys. */
const LABELS: Readonly<Record<string, ScriptKey>> = {
  'menu-children': 'line.children',
  'menu-vendors': 'line.vendors',
  'menu-minimum': 'line.minimum',
  'menu-floor': 'line.floor',
  'minimum-spend': 'line.minimum-spend',
  'tax-exempt': 'line.tax-exempt',
};

/** What a line of a quote is called: `Quay Supper, children`; an add-on, a role or a label of the terms by its own name. */
export function lineLabel(say: ScriptSay, { key, name }: Pick<QuoteLine, 'key' | 'name'>): string {
  if (key.startsWith('supplement:')) return say('line.supplement', { dish: name });
  const words = Object.hasOwn(LABELS, key) ? LABELS[key] : undefined;
  return words ? say(words, { menu: name }) : name;
}
