import Table from 'cli-table3';
import type { Terminal } from '../surface/terminal.ts';

const noBorders = {
  top: '',
  'top-mid': '',
  'top-left': '',
  'top-right': '',
  bottom: '',
  'bottom-mid': '',
  'bottom-left': '',
  'bottom-right': '',
  left: '',
  'left-mid': '',
  mid: '',
  'mid-mid': '',
  right: '',
  'right-mid': '',
  middle: '  ',
};

/** Cells in columns, the first a label; where they don't fit into the terminal, one block for each column instead. */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  { colors, width }: Pick<Terminal, 'colors' | 'width'>,
): string {
  const table = new Table({
    head: head.map((cell) => colors.bold(cell)),
    chars: noBorders,
    style: { 'padding-left': 0, 'padding-right': 0, head: [], border: [] },
  });
  table.push(...rows.map((row) => [...row]));
  const lines = table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
  const plain = [head, ...rows].map((row) => row.join('  ').length);
  return Math.max(...plain) <= width ? lines.join('\n') : blocks(head, rows, colors);
}

function blocks(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  colors: Terminal['colors'],
): string {
  return head
    .slice(1)
    .map((title, column) => {
      const lines = rows.map((row) => `  ${row[0] ?? ''}: ${row[column + 1] ?? ''}`);
      return [colors.bold(title), ...lines].join('\n');
    })
    .join('\n\n');
}
