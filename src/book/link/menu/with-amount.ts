import { isMap, isScalar, isSeq, parseDocument, type Scalar, type YAMLMap } from 'yaml';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';

/**
 * The text of a package file with one dish's per-guest amount replaced. All else stays to the letter: comments,
 * order, spacing, line ends, the story below. Fails where the file has no such dish in that course, or its data cannot
 * be read.
 */
export function withAmount(text: string, course: string, recipe: string, amount: string): Parsed<string> {
  const [, open = '', data] = /^(---[ \t]*\r?\n)([\s\S]*?\r?\n)---[ \t]*(?:\r?\n|$)/.exec(text) ?? [];
  if (data === undefined)
    return notParsed('the file does not start with its data', 'fix what `check` reports about it');
  const scalar = amountIn(data, course, recipe);
  if (!scalar?.range)
    return notParsed(
      `the file has no amount of ${recipe} in ${course}`,
      'check whether it was renamed in the meantime',
    );
  const [from, to] = scalar.range;
  const changed = data.slice(0, from) + amount + data.slice(to);
  if (amountIn(changed, course, recipe)?.value !== amount)
    return notParsed(
      `the amount of ${recipe} can’t be replaced automatically`,
      'write it in the file by hand',
    );
  return parsed(open + changed + text.slice(open.length + data.length));
}

function amountIn(data: string, course: string, recipe: string): Scalar<string> | undefined {
  const doc = parseDocument(data, { schema: 'failsafe' });
  const courses = doc.get('courses');
  if (doc.errors.length > 0 || !isSeq(courses)) return undefined;
  const found = courses.items.find((item): item is YAMLMap => isMap(item) && item.get('name') === course);
  const dish = found?.getIn(['dishes', recipe], true);
  const amount = isMap(dish) ? dish.get('amount', true) : dish;
  return isScalar<string>(amount) && typeof amount.value === 'string' ? amount : undefined;
}
