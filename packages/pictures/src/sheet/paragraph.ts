import { words, type WordsLook } from '../svg/words.ts';
import type { Block } from './block.ts';
import { breakWords } from './break-words.ts';
import { sheetEdges } from './sheet-size.ts';

/** Lines of text over the whole width; nothing at all where there is no text. */
export function paragraph(text: string, look: WordsLook & { readonly after?: number } = {}): Block {
  const { size = 13, after = 6, ...rest } = look;
  const lines = breakWords(text, sheetEdges.right - sheetEdges.left, size);
  const step = size * 1.4;
  return {
    height: lines.length === 0 ? 0 : lines.length * step + after,
    draw: (top) =>
      lines.map((line, index) =>
        words(line, [sheetEdges.left, top + size + index * step], { size, ...rest }),
      ),
  };
}
