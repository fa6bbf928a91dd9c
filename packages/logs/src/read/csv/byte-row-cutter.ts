import { longestQuotedRow, splitRow, type CutRow, type RowShape } from './split-row.ts';

/** A row with its extent in bytes. */
export interface CutByteRow extends CutRow {
  /** Index of the first byte behind the row. */
  readonly byteEnd: number;
}

/** Bytes that a row with an open quote may have: as many as its characters can take. */
const longest = 4 * longestQuotedRow;

/**
 * Cuts rows off bytes with `splitRow`, whatever quotation marks they hold.
 *
 * @param text - makes text of bytes
 * @param shape - delimiter and line end
 * @returns takes bytes, the beginning of the row and whether nothing follows; null where the bytes end before the row
 */
export function byteRowCutter(
  text: (bytes: Uint8Array, from: number, to: number) => string,
  shape: RowShape,
): (bytes: Uint8Array, at: number, isLast: boolean) => CutByteRow | null {
  const newline = shape.newline.charCodeAt(0);
  const lineAfter = (bytes: Uint8Array, at: number): number => {
    const end = bytes.indexOf(newline, at);
    return end < 0 ? bytes.length : end + 1;
  };
  return (bytes, at, isLast) => {
    // Most rows are one line; only a row that goes on is looked at in ever longer pieces.
    let to = lineAfter(bytes, at);
    for (let length = 2048; ; length *= 8) {
      const cut = splitRow(text(bytes, at, to), 0, shape, isLast && to === bytes.length);
      if (cut !== null) {
        let byteEnd = at;
        for (let line = 0; line < cut.lines; line += 1) byteEnd = lineAfter(bytes, byteEnd);
        return { ...cut, byteEnd };
      }
      if (to === bytes.length || to - at > longest) return null;
      to = Math.min(bytes.length, at + length);
    }
  };
}
