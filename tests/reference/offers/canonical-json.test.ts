import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { digestOfRecord } from '../../../src/offers/digest.ts';

/** What the digest must be if the canonical text is this one. */
function sha256(text: string): string {
  return createHash('sha256').update(text, 'utf8').digest('hex');
}

describe('a record is digested in the form of RFC 8785', () => {
  it('writes literals, numbers and strings as the sample of section 3.2.2 does', () => {
    // RFC 8785, 3.2.2 (input) and 3.2.4 (output); read in a copy of its reference implementation's page.
    const sample = JSON.parse(
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
        '"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
    );
    const canonical =
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
      '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}';
    expect(digestOfRecord(sample)).toBe(sha256(canonical));
  });

  it('sorts keys by UTF-16 code units, as the example of section 3.2.3 does', () => {
    // RFC 8785, 3.2.3, from memory: a surrogate pair comes before U+FB33, though its code point is higher.
    const record = { '€': 1, '\r': 2, '\ufb33': 3, '1': 4, '😀': 5, '\u0080': 6, ö: 7 };
    const canonical = '{"\\r":2,"1":4,"\u0080":6,"ö":7,"€":1,"😀":5,"\ufb33":3}';
    expect(digestOfRecord(record)).toBe(sha256(canonical));
  });

  it('leaves out the digest itself and nothing else', () => {
    expect(digestOfRecord({ b: [{ digest: 'inner' }], a: 1, digest: 'outer' })).toBe(
      sha256('{"a":1,"b":[{"digest":"inner"}]}'),
    );
  });
});
