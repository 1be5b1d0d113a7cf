/** The kitchen's own drawing, checked: it draws, and neither runs, loads nor leads anywhere. */
export interface Mark {
  /** The whole file, SVG. */
  readonly svg: string;
  /** The proportions of its paper, in the drawing's own units. */
  readonly width: number;
  readonly height: number;
}
