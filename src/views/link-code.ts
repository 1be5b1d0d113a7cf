import { encode } from 'uqr';

/** An address as a QR code (ISO/IEC 18004), drawn as one path of unit squares. */
export interface LinkCode {
  /** Width and height in modules, the quiet zone included. */
  readonly size: number;
  /** SVG path data in modules; what it leaves out is white. */
  readonly path: string;
}

/** The margin that ISO/IEC 18004 asks to be left white on every side, in modules. */
const QUIET_ZONE = 4;

/** The code of an address, with the standard's level M: up to 15 % of it may be soiled and it still is read. */
export function linkCode(address: string): LinkCode {
  const { size, data } = encode(address, { ecc: 'M', border: QUIET_ZONE });
  return { size, path: data.map(rowPath).join('') };
}

/** The dark runs of a row, a rectangle each. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = '';
  for (let x = 0; x < row.length; x += 1) {
    if (!row[x]) continue;
    const start = x;
    while (row[x + 1]) x += 1;
    const width = x - start + 1;
    path += `M${start} ${y}h${width}v1h-${width}z`;
  }
  return path;
}
