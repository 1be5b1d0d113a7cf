import fc from 'fast-check';
import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { linkCode } from '../../../src/views/link-code.ts';

/** Fills the path's rectangles, eight dots to a module, as RGBA. */
function drawn({ size, path }: ReturnType<typeof linkCode>) {
  const dots = size * 8;
  const pixels = new Uint8ClampedArray(dots * dots * 4).fill(255);
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let row = Number(y) * 8; row < (Number(y) + 1) * 8; row += 1) {
      const start = (row * dots + Number(x) * 8) * 4;
      for (let at = start; at < start + Number(width) * 32; at += 4) pixels.fill(0, at, at + 3);
    }
  }
  return { pixels, dots };
}

test('the code of any proposal’s address is read back by another reader', () => {
  const link = fc.string({
    unit: fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz234567'),
    minLength: 26,
    maxLength: 26,
  });
  fc.assert(
    fc.property(fc.webUrl({ withFragments: false, withQueryParameters: false }), link, (site, token) => {
      const address = `${site.replace(/\/$/, '')}/proposals/${token}/`;
      const { pixels, dots } = drawn(linkCode(address));
      expect(jsQR(pixels, dots, dots)?.data).toBe(address);
    }),
    { numRuns: 25, seed: 4 },
  );
});

// ISO/IEC 18004: four modules stay white on every side, and each finder pattern begins with a run of seven (from memory).
test('the code keeps its quiet zone', () => {
  const { size, path } = linkCode('https://quillwater.example/proposals/abc/');
  const runs = [...path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map(([, x, y, width]) => [
    Number(x),
    Number(y),
    Number(width),
  ]);
  expect(runs[0]).toEqual([4, 4, 7]);
  for (const [x = 0, y = 0, width = 0] of runs) {
    expect(Math.min(x, y)).toBeGreaterThanOrEqual(4);
    expect(Math.max(x + width, y + 1)).toBeLessThanOrEqual(size - 4);
  }
});
