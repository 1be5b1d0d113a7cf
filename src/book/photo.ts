/** A picture of the content folder that texts may show. */
export interface Photo {
  /** Absolute. */
  readonly path: string;
  /** Its bytes' digest with its kind as ending: another picture is another name. */
  readonly name: string;
}
