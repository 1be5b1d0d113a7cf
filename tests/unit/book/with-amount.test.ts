import { expect, test } from 'vitest';
import { withAmount } from '../../../src/book/link/menu/with-amount.ts';

const FILE = `---
name: Supper # the house's own
courses:
  - name: First
    dishes:
      slaw:   3 oz per guest   # as grandmother had it
      rolls: { amount: 1 piece per guest, overage: 5 % }
  - name: Second
    dishes:
      slaw:
        # sparing
        amount: "2 oz per guest"
        others: 15 %
---
slaw: 3 oz per guest is what the story says too.
`;

test.each([
  ['First', 'slaw', '      slaw:   2½ oz per guest   # as grandmother had it'],
  ['First', 'rolls', '      rolls: { amount: 2½ oz per guest, overage: 5 % }'],
  ['Second', 'slaw', '        amount: 2½ oz per guest'],
])('the amount of %s, %s is replaced and all else stays to the letter', (course, recipe, line) => {
  const [before, after] = [FILE, withAmount(FILE, course, recipe, '2½ oz per guest')];
  if (!after.ok) throw new Error(after.what);
  const changed = after.value.split('\n').filter((each, index) => each !== before.split('\n')[index]);
  expect(changed).toEqual([line]);
});

test('line ends of another system stay', () => {
  const windows = FILE.replaceAll('\n', '\r\n');
  expect(withAmount(windows, 'First', 'slaw', '2 oz per guest')).toEqual({
    ok: true,
    value: windows.replace('slaw:   3 oz', 'slaw:   2 oz'),
  });
});

test('a dish that the course has not is refused', () => {
  expect(withAmount(FILE, 'Second', 'rolls', '1 piece per guest')).toMatchObject({
    ok: false,
    what: 'the file has no amount of rolls in Second',
  });
});
