import Table from 'cli-table3';
import type { Terminal } from '../surface/terminal.ts';
import { visibleLength } from '../surface/wrap-text.ts';

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

/** What stands together where a table is too wide: a row of it, or a column under the label of each row. */
export type Stacked = 'rows' | 'columns';

/**
 * Cells in columns, the first a label; where they don't fit into the terminal, one block for each row or column instead.
 *
 * @param head - of the columns
 * @param rows - of cells
 * @param terminal - its colors and width
 * @param stacked - what a block is made of
 * @returns the lines
 */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  { colors, width }: Pick<Terminal, 'colors' | 'width'>,
  stacked: Stacked = 'columns',
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
  if (Math.max(...lines.map(visibleLength)) <= width) return lines.join('\n');
  return stacked === 'rows' ? rowBlocks(head, rows, colors) : columnBlocks(head, rows, colors);
}

function columnBlocks(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  colors: Terminal['colors'],
): string {
  return head
    .slice(1)
    .map((title, column) => {
      const lines = rows.map((row) => `  ${row[0] ?? ''}: ${row[column + 1] ?? ''}`);
      const [what = ''] = head;
      return [colors.bold(what.trim() === '' ? title : `${what.trim()}: ${title}`), ...lines].join('\n');
    })
    .join('\n\n');
}

/** The cells of a row follow each other in one paragraph, so that a long set stays in sight. */
function rowBlocks(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  colors: Terminal['colors'],
): string {
  return rows
    .map(([label = '', ...cells]) => {
      const title = [head[0] ?? '', label].filter((text) => text !== '').join(' ');
      const named = cells.map((cell, column) => `${head[column + 1] ?? ''} ${cell}`);
      return `${colors.bold(title)}\n  ${named.join('; ')}`;
    })
    .join('\n');
}
