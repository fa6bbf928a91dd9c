import { mark, type MarkLook } from '../road/mark-shape.ts';
import type { Block } from '../sheet/block.ts';
import { widthOf } from '../sheet/break-words.ts';
import { sheetEdges } from '../sheet/sheet-size.ts';
import { words } from '../svg/words.ts';

export interface KeyEntry {
  readonly look: MarkLook;
  readonly text: string;
}

const size = 12;
const row = 20;

/** What the marks mean, in as many rows as it takes. */
export function keyBlock(entries: readonly KeyEntry[]): Block {
  let [x, level] = [sheetEdges.left as number, 0];
  const places = entries.map((entry) => {
    const width = 22 + widthOf(entry.text, size) + 16;
    if (x > sheetEdges.left && x + width > sheetEdges.right) [x, level] = [sheetEdges.left, level + 1];
    const place = { ...entry, x, level };
    x += width;
    return place;
  });
  return {
    height: (level + 1) * row + 8,
    draw: (top) =>
      places.flatMap(({ look, text, x: left, level: below }) => [
        mark(look, [left + 7, top + 9 + below * row]),
        words(text, [left + 20, top + 13 + below * row], { soft: true, size }),
      ]),
  };
}
