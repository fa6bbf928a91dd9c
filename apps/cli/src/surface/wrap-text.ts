/** What a terminal does not show: the codes that color, built from a number so that no control character stands here. */
const codes = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, 'gu');

/** Characters that a person sees of a line. */
export function visibleLength(line: string): number {
  return line.replace(codes, '').length;
}

/**
 * Breaks lines that are too long at spaces; what follows is indented by two more than the line itself where that is
 * indented, and not at all in a paragraph. Lines that fit, such as those of a table, stay as they are.
 *
 * @param text - lines
 * @param width - characters a line
 * @returns the lines, none longer than the width unless one word is
 */
export function wrapText(text: string, width: number): string {
  return text
    .split('\n')
    .map((line) => (visibleLength(line) <= width ? line : wrapLine(line, width)))
    .join('\n');
}

function wrapLine(line: string, width: number): string {
  const [indent = ''] = /^ */u.exec(line) ?? [];
  const hanging = indent === '' ? '' : `${indent}  `;
  const lines: string[] = [];
  let current = '';
  for (const word of line.slice(indent.length).split(' ')) {
    const start = lines.length === 0 ? indent : hanging;
    const longer = current === '' ? `${start}${word}` : `${current} ${word}`;
    if (current === '' || visibleLength(longer) <= width) current = longer;
    else {
      lines.push(current);
      current = `${hanging}${word}`;
    }
  }
  return [...lines, current].map((each) => each.trimEnd()).join('\n');
}
