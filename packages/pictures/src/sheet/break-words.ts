/** px of a letter over the px of its size: on the wide side of the usual sans-serif fonts, so that nothing runs out. */
const letter = 0.56;

/** px that a text takes, about. */
export function widthOf(text: string, size: number): number {
  return [...text].length * letter * size;
}

/**
 * Breaks a text into lines that fit, at its spaces; a word that is too long by itself is cut.
 *
 * @param text - one paragraph
 * @param width - of a line, px
 * @param size - of the letters, px
 * @returns the lines
 */
export function breakWords(text: string, width: number, size: number): readonly string[] {
  const most = Math.max(1, Math.floor(width / (letter * size)));
  const pieces = text
    .split(/\s+/u)
    .filter((word) => word !== '')
    .flatMap((word) => cut(word, most));
  const lines: string[] = [];
  for (const piece of pieces) {
    const last = lines.at(-1);
    const longer = last === undefined ? piece : `${last} ${piece}`;
    if (last !== undefined && [...longer].length <= most) lines[lines.length - 1] = longer;
    else lines.push(piece);
  }
  return lines;
}

function cut(word: string, most: number): readonly string[] {
  const letters = [...word];
  return Array.from({ length: Math.ceil(letters.length / most) }, (_, index) =>
    letters.slice(index * most, (index + 1) * most).join(''),
  );
}
