import { looksBinary } from './bytes/looks-binary.ts';
import { textEncoding } from './bytes/text-encoding.ts';
import { textChunks } from './bytes/text-chunks.ts';

/** What a file looks like by its content; `refused` kinds are named for the person and not read. */
export type SniffedFormat =
  { readonly kind: 'csv' | 'nmea' | 'empty' } | { readonly kind: 'refused'; readonly looksLike: string };

const sampleLength = 1 << 16;

/** First bytes of files that are no text, in hexadecimal. */
const magic: readonly (readonly [string, string])[] = [
  ['504b0304', 'a zip archive or a spreadsheet workbook (unpack it, or save it as CSV)'],
  ['1f8b', 'a gzip archive (unpack it first)'],
  ['377abcaf', 'a 7z archive (unpack it first)'],
  ['25504446', 'a PDF document'],
  ['89504e47', 'a picture'],
  ['ffd8ff', 'a picture'],
];

/** Text that most lines of a file match, and what such a file is. */
const lineShapes: readonly (readonly [RegExp, string])[] = [
  [
    /^\(\d+\.\d+\)\s+\S+\s+[0-9A-Fa-f]+#/,
    'a candump log of raw CAN frames, which needs a description of its signals',
  ],
  [
    /^\s*\d+\)\s+\d+\.\d+\s+\S+\s+[0-9A-F]{2,8}\s/,
    'a trace of raw CAN frames, which needs a description of its signals',
  ],
  [/^\d+\$[A-Z]{2,}[,;]/, 'a recording of named signals, one a line, with mixed separators'],
  [/^\s*[[{].*[}\]],?\s*$/, 'JSON, one object a line'],
];

/**
 * What a log looks like, by its content alone: the name of a file is never trusted.
 *
 * @param bytes - the whole file
 * @returns the format to read it as, or what it looks like where it can't be read
 */
export function sniffFormat(bytes: Uint8Array): SniffedFormat {
  if (bytes.length === 0) return { kind: 'empty' };
  const known = magic.find(([start]) => hexadecimal(bytes.subarray(0, 4)).startsWith(start));
  if (known !== undefined) return { kind: 'refused', looksLike: known[1] };
  const encoding = textEncoding(bytes);
  if (!encoding.startsWith('utf-16') && looksBinary(bytes))
    return { kind: 'refused', looksLike: 'binary data, not text' };
  const [text = ''] = textChunks(bytes.subarray(0, sampleLength), encoding);
  if (text.trim() === '') return { kind: 'empty' };
  return sniffText(text);
}

function sniffText(text: string): SniffedFormat {
  const start = text.slice(0, 2000).trimStart();
  if (/^<\?xml|^<[A-Za-z!]/.test(start)) return { kind: 'refused', looksLike: markupName(start) };
  const lines = text
    .split(/\r\n|\n|\r/)
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('#') && !line.startsWith(';'));
  const share = (shape: RegExp): number =>
    lines.reduce((count, line) => count + (shape.test(line) ? 1 : 0), 0) / Math.max(1, lines.length);
  const shape = lineShapes.find(([pattern]) => share(pattern) > 0.5);
  if (shape !== undefined) return { kind: 'refused', looksLike: shape[1] };
  if (share(/\$[A-Z]{2}[A-Z0-9]{1,4},/) > 0.5) return { kind: 'nmea' };
  if (/^[[{]\s*($|["{[])/m.test(start.slice(0, 200)) && /^[[{]/.test(start))
    return { kind: 'refused', looksLike: 'JSON' };
  return { kind: 'csv' };
}

function markupName(start: string): string {
  if (/<gpx[\s>]/.test(start)) return 'a GPX track';
  if (/<(!doctype )?html[\s>]/i.test(start)) return 'a web page';
  return 'an XML document';
}

function hexadecimal(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
