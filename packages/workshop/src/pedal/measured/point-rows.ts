import { parseQuantity } from '@standstill/units';

/** One push as it was written. */
export interface PointRow {
  /** From 0. */
  readonly index: number;
  /** Of the text, from 1. */
  readonly line: number;
  readonly text: string;
  /** Force or pressure with its unit; empty where none was found. */
  readonly load: string;
  /** Travel with its unit; empty where none was found. */
  readonly travel: string;
  readonly plugged: readonly string[];
}

/**
 * Takes a text with measured pushes apart, by the headings where it has some.
 *
 * @param text - a table, or pushes with semicolons or line ends between them
 * @returns the pushes, unread
 */
export function pointRows(text: string): PointRow[] {
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  const first = lines.findIndex((line) => line.trim() !== '' && !line.trim().startsWith('#'));
  const heading = lines[first] ?? '';
  return /travel/i.test(heading) && !/\d/.test(heading) ? tableRows(lines, first) : typedRows(lines);
}

function typedRows(lines: readonly string[]): PointRow[] {
  return lines
    .flatMap((line, index) => line.split(';').map((text) => ({ text: text.trim(), line: index + 1 })))
    .filter(({ text }) => text !== '' && !text.startsWith('#'))
    .map(({ text, line }, index) => {
      const [push = '', ...plugs] = text.split(/\bplugged\b/i);
      return { index, line, text, ...halves(push.trim()), plugged: words(plugs.join(' ')) };
    });
}

/** The first place between two words where the rest reads as a length: `20 lbf 1 1/8 in`. */
function halves(push: string): Pick<PointRow, 'load' | 'travel'> {
  const tokens = push.split(/\s*[:@,]\s+|\s+/);
  for (let cut = 1; cut < tokens.length; cut += 1) {
    const [load, travel] = [tokens.slice(0, cut).join(' '), tokens.slice(cut).join(' ')];
    const isLoad = parseQuantity(load, 'force').ok || parseQuantity(load, 'pressure').ok;
    if (isLoad && parseQuantity(travel, 'length').ok) return { load, travel };
  }
  return { load: '', travel: '' };
}

interface Column {
  readonly place: number;
  /** Unit of the heading; empty where the cells carry their own. */
  readonly unit: string;
}

function tableRows(lines: readonly string[], first: number): PointRow[] {
  const heading = lines[first] ?? '';
  const delimiter = ['\t', ';', ','].find((sign) => heading.includes(sign)) ?? ',';
  const names = heading.split(delimiter);
  const column = (pattern: RegExp): Column | null => {
    const place = names.findIndex((name) => pattern.test(name));
    return place < 0
      ? null
      : { place, unit: /[([]\s*([^)\]]+?)\s*[)\]]/.exec(names[place] ?? '')?.[1] ?? '' };
  };
  const [load, travel] = [column(/force|pressure/i), column(/travel/i)];
  const plugged = column(/plugged/i);
  return lines
    .map((text, index) => ({ text, line: index + 1 }))
    .slice(first + 1)
    .filter(({ text }) => text.trim() !== '' && !text.trim().startsWith('#'))
    .map(({ text, line }, index) => {
      const cells = text.split(delimiter).map((cell) => cell.trim());
      const shut = plugged === null ? '' : (cells[plugged.place] ?? '');
      return {
        index,
        line,
        text: text.trim(),
        load: cellOf(cells, load),
        travel: cellOf(cells, travel),
        plugged: words(shut),
      };
    });
}

function cellOf(cells: readonly string[], column: Column | null): string {
  const cell = column === null ? '' : (cells[column.place] ?? '');
  if (cell === '' || column === null || column.unit === '' || /[a-z"'µ²³]/i.test(cell)) return cell;
  return `${cell} ${column.unit}`;
}

function words(text: string): string[] {
  return text.split(/[\s,+/|]+/).filter((word) => word !== '');
}
