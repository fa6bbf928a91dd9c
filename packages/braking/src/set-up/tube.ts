/** The rigid line that feeds one corner. */
export interface Tube {
  /** m. */
  readonly length: number;
  /** m. */
  readonly innerDiameter: number;
  /** m. */
  readonly wallThickness: number;
  /** E, Pa. */
  readonly elasticModulus: number;
}
