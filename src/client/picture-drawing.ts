import { elementIn } from './element-in.ts';
import type { Frame, Picture } from './picture.ts';

/** What is written into a picture besides its lines. */
export interface PictureWords {
  readonly crossings: readonly number[];
  readonly money: (total: number) => string;
}

/** Where a side stands in a picture; null where that is outside of it. */
export type Point = { readonly count: number; readonly total: number } | null;

const SVG = 'http://www.w3.org/2000/svg';

/** The most crossings that are drawn; more would only clutter the picture. */
const MOST_CROSSINGS = 3;

/** Draws grid, lines and crossings into the page's picture, which has a group for each. */
export function drawPicture(svg: SVGSVGElement, picture: Picture, words: PictureWords): void {
  const { frame } = picture;
  part(svg, 'grid').replaceChildren(
    ...picture.up.flatMap(({ at, value }) => [
      line(frame.left, at, frame.right, at),
      text(words.money(value), frame.left - 8, at + 4, 'end'),
    ]),
    ...picture.across.map(({ at, value }) => text(String(value), at, frame.bottom + 20, 'middle')),
  );
  for (const [index, letter] of ['a', 'b'].entries()) {
    elementIn(svg, `[data-line="${letter}"]`, SVGPathElement).setAttribute('d', picture.lines[index] ?? '');
  }
  part(svg, 'crossings').replaceChildren(
    ...words.crossings.slice(0, MOST_CROSSINGS).flatMap((count) => crossing(picture, frame, count)),
  );
}

/** Moves the two points; nothing else of the picture changes while a count moves. */
export function placePoints(svg: SVGSVGElement, picture: Picture, points: readonly [Point, Point]): void {
  const [a, b] = points;
  // The letter of the upper point stands above it, that of the lower one below, so that they never meet.
  const upper = (a?.total ?? 0) >= (b?.total ?? 0) ? 'a' : 'b';
  for (const [index, letter] of ['a', 'b'].entries()) {
    const point = points[index];
    const mark = elementIn(svg, `[data-point="${letter}"]`, SVGGElement);
    const place = point ? picture.place(point.count, point.total) : null;
    const { left, right, top, bottom } = picture.frame;
    const inside =
      place && place.x >= left - 1 && place.x <= right + 1 && place.y >= top - 1 && place.y <= bottom + 1;
    mark.setAttribute('visibility', inside ? 'visible' : 'hidden');
    elementIn(mark, 'text', SVGTextElement).setAttribute('y', letter === upper ? '-12' : '22');
    if (inside) mark.setAttribute('transform', `translate(${place.x.toFixed(1)} ${place.y.toFixed(1)})`);
  }
}

function crossing(picture: Picture, frame: Frame, count: number): SVGElement[] {
  const { x } = picture.place(count, 0);
  return [line(x, frame.top, x, frame.bottom), text(`${count}`, x + 5, frame.top + 11, 'start')];
}

function part(svg: SVGSVGElement, name: string): SVGGElement {
  return elementIn(svg, `[data-part="${name}"]`, SVGGElement);
}

function line(x1: number, y1: number, x2: number, y2: number): SVGElement {
  return shape('line', { x1, y1, x2, y2 });
}

function text(words: string, x: number, y: number, anchor: string): SVGElement {
  const element = shape('text', { x, y, 'text-anchor': anchor });
  element.textContent = words;
  return element;
}

function shape(name: string, attributes: Record<string, string | number>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes))
    element.setAttribute(key, typeof value === 'number' ? value.toFixed(1) : value);
  return element;
}
