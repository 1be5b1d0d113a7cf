/** Outlines that stand for dishes on cards, told from one another without colour and from any side; then the same filled. */
export const SHAPES = [
  'circle',
  'square',
  'triangle',
  'diamond',
  'hexagon',
  'cross',
  'full circle',
  'full square',
  'full triangle',
  'full diamond',
  'full hexagon',
  'full cross',
] as const;
export type Shape = (typeof SHAPES)[number];
