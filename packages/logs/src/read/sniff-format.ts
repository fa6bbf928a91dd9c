import { looksBinary } from './bytes/looks-binary.ts';
import { textChunks } from './bytes/text-chunks.ts';
import { textEncoding } from './bytes/text-encoding.ts';

/** Formats that are read. */
export type LogFormat = 'csv' | 'nmea' | 'gpx' | 'candump' | 'trace' | 'records' | 'json';

/** What a file looks like by its content; `refused` kinds are named for the person and not read. */
export type SniffedFormat =
  { readonly kind: LogFormat | 'empty' } | { readonly kind: 'refused'; readonly looksLike: string };

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

/** What more than half of the lines of a format look like. */
const lineShapes: readonly (readonly [RegExp, LogFormat])[] = [
  [/^\([^()]+\)\s+\S+\s+[0-9A-Fa-f]{3,8}#/, 'candump'],
  [/^(\([^()]+\)\s+)?\S+\s+([RT]X\s+\S\s+\S\s+)?[0-9A-Fa-f]{3,8}\s+\[\d{1,2}\]/, 'candump'],
  [/^\d+\)\s+\d+(\.\d+)?\s+([A-Za-z]{2,5}\s+)?[0-9A-Fa-f]{4,8}\s/, 'trace'],
  [/^\d+(\.\d+)?(,\d+)?\$[A-Z][A-Z0-9_]+[,;]/, 'records'],
  [/^[[{].*[}\]],?$/, 'json'],
  [/\$[A-Z]{2}[A-Z0-9]{1,4},/, 'nmea'],
];

/**
 * What a log looks like, by its content alone: the name of a file is never trusted.
 *
 * @param bytes - the whole file, or its beginning
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
  if (/^<\?xml|^<[A-Za-z!]/.test(start)) return markup(text);
  if (start.startsWith(';$FILEVERSION=')) return { kind: 'trace' };
  const lines = text
    .split(/\r\n|\n|\r/)
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('#') && !line.startsWith(';'));
  const share = (shape: RegExp): number =>
    lines.reduce((count, line) => count + (shape.test(line) ? 1 : 0), 0) / Math.max(1, lines.length);
  const shape = lineShapes.find(([pattern]) => share(pattern) > 0.5);
  if (shape !== undefined) return { kind: shape[1] };
  if (/^[[{]\s*($|["{[])/m.test(start.slice(0, 200)) && /^[[{]/.test(start))
    return { kind: 'refused', looksLike: 'JSON that is not one object a line' };
  if (/^(BO_|SG_|BU_:|VERSION\s+")/m.test(text))
    return { kind: 'refused', looksLike: 'a DBC file, which belongs beside a log of CAN frames' };
  return { kind: 'csv' };
}

function markup(text: string): SniffedFormat {
  if (/<(\w+:)?gpx[\s>]/.test(text)) return { kind: 'gpx' };
  const isPage = /<(!doctype )?html[\s>]/i.test(text);
  return { kind: 'refused', looksLike: isPage ? 'a web page' : 'an XML document that is no GPX' };
}

function hexadecimal(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
