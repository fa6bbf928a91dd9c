/** A part of a sheet; blocks stand one below the other. */
export interface Block {
  /** px. */
  readonly height: number;
  /** SVG elements, given the block's upper edge in px. */
  readonly draw: (top: number) => readonly string[];
}
