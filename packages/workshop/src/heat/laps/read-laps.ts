import type { BrakingPoint } from '@standstill/braking';
import { parse } from 'yaml';
import { readQuantity } from '../../job/document/read-quantity.ts';
import type { QuantityTrouble } from '../../job/document/read-quantity.ts';
import type { Problem } from '../../results/problem.ts';
import { lapFacts } from './lap-facts.ts';

export type LapsReading =
  | { readonly ok: true; readonly points: readonly BrakingPoint[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

type Key = keyof typeof lapFacts;
/** Cells of one braking point as written, by fact. */
interface Row {
  readonly line: number | null;
  readonly cells: Readonly<Partial<Record<Key, string>>>;
  readonly strange: readonly string[];
}

const keys = Object.keys(lapFacts) as readonly Key[];
const mostPoints = 200;
const accepted =
  'points such as "110 mph, 45 mph, 22 s; 95 mph, 50 mph, 18 s": speed before, speed after, time to the next';

/**
 * Reads the braking points of a lap: a table with headings (`from (mph), to (mph), next (s)`), a YAML list of points
 * (`- { from: 110 mph, to: 45 mph, next: 22 s }`), or points with semicolons between them.
 *
 * @param text - the table, the list or the points
 * @param file - name of the file; null where the text was typed
 * @returns the points, m/s, s, m/s², or every mistake in them with its place
 */
export function readLaps(text: string, file: string | null): LapsReading {
  const problems: Problem[] = [];
  const points: BrakingPoint[] = [];
  const refuse = (row: Row | null, path: string, found: string, what: string, words = accepted): void => {
    const line = file === null ? null : (row?.line ?? null);
    problems.push({
      code: 'lap-not-read',
      file,
      line,
      column: null,
      path,
      found,
      accepted: words,
      message: what,
    });
  };
  const rows = rowsOf(text);
  if (rows === null || rows.length === 0 || rows.length > mostPoints)
    refuse(
      null,
      'points',
      shortened(text),
      `there are no braking points to read; give 1 to ${mostPoints} ${accepted}`,
    );
  rows?.forEach((row, index) => {
    const place = `points[${index}]`;
    for (const key of row.strange)
      refuse(row, place, key, `point ${index + 1} has "${key}"; accepted: ${keys.join(', ')}`);
    const point = pointOf(row, (key, { found, accepted: words, message }) =>
      refuse(
        row,
        `${place}.${key}`,
        found,
        `point ${index + 1}, ${lapFacts[key].title.toLowerCase()}: ${message}`,
        words,
      ),
    );
    if (point === null) return;
    if (point.to < point.from) points.push(point);
    else refuse(row, place, row.cells.to ?? '', `point ${index + 1} does not get slower`);
  });
  return problems.length === 0 ? { ok: true, points } : { ok: false, problems };
}

function pointOf(row: Row, trouble: (key: Key, found: QuantityTrouble) => void): BrakingPoint | null {
  const values: Partial<Record<Key, number>> = {};
  let isSound = true;
  for (const key of keys) {
    const text = row.cells[key]?.trim() ?? '';
    if (text === '' && key === 'deceleration') continue;
    const reading = readQuantity(text, lapFacts[key]);
    if (reading.ok) values[key] = reading.value;
    else {
      trouble(key, reading);
      isSound = false;
    }
  }
  const { from, to, next, deceleration } = values;
  if (!isSound || from === undefined || to === undefined || next === undefined) return null;
  return { from, to, next, ...(deceleration === undefined ? {} : { deceleration }) };
}

function rowsOf(text: string): readonly Row[] | null {
  if (/^\s*(?:-|\[|\w+\s*:\s)/m.test(text) && /\bfrom\s*:/.test(text)) return yamlRows(text);
  const lines = text.split(/\r?\n|;/).map((content, at) => ({ content: content.trim(), line: at + 1 }));
  const filled = lines.filter(({ content }) => content !== '' && !content.startsWith('#'));
  const [head] = filled;
  if (head === undefined) return null;
  const headings = headingsOf(head.content);
  if (headings === null)
    return filled.map(({ content, line }) =>
      cellsRow(
        content,
        line,
        keys.map((key) => [key, '']),
      ),
    );
  return filled.slice(1).map(({ content, line }) => cellsRow(content, line, headings));
}

/** Columns with their units where the first line has headings; null where it is a point already. */
function headingsOf(line: string): readonly (readonly [string, string])[] | null {
  if (!/[a-z]/i.test(line.split(/[,\t]/)[0]?.replace(/\(.*/, '') ?? '') || /^\s*[\d.]/.test(line))
    return null;
  return line.split(/[,\t]/).map((cell) => {
    const [, name = '', unit = ''] = /^\s*([a-z]+)\s*(?:[([]\s*(.*?)\s*[)\]])?\s*$/i.exec(cell) ?? [];
    return [name.toLowerCase(), unit] as const;
  });
}

function cellsRow(content: string, line: number, columns: readonly (readonly [string, string])[]): Row {
  const cells: Partial<Record<Key, string>> = {};
  const strange: string[] = [];
  content.split(/[,\t]/).forEach((cell, at) => {
    const [name, unit] = columns[at] ?? [`column ${at + 1}`, ''];
    if (isKey(name))
      cells[name] = /^\s*$|[a-z²%]/i.test(cell) || unit === '' ? cell.trim() : `${cell.trim()} ${unit}`;
    else if (cell.trim() !== '') strange.push(name === '' ? `column ${at + 1}` : name);
  });
  return { line, cells, strange };
}

function yamlRows(text: string): readonly Row[] | null {
  let value: unknown;
  try {
    value = parse(text);
  } catch {
    return null;
  }
  if (!Array.isArray(value)) return null;
  return value.map((point: unknown) => {
    const entries = typeof point === 'object' && point !== null ? Object.entries(point) : [];
    const cells = Object.fromEntries(
      entries.filter(([key]) => isKey(key)).map(([key, cell]) => [key, String(cell)]),
    );
    return { line: null, cells, strange: entries.map(([key]) => key).filter((key) => !isKey(key)) };
  });
}

function isKey(name: string): name is Key {
  return (keys as readonly string[]).includes(name);
}

function shortened(text: string): string {
  return text.trim().slice(0, 60);
}
