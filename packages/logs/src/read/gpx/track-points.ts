import { SaxesParser } from 'saxes';
import { numberField } from '../csv/number-field.ts';
import type { TrackPoint } from './track-point.ts';

/** Where a file breaks off or breaks the rules of XML. */
export interface XmlBreak {
  readonly line: number;
  readonly column: number;
  /** Whether the file simply ends too early. */
  readonly isTruncated: boolean;
}

export interface GpxContent {
  readonly points: readonly TrackPoint[];
  /** How many points are no track's: waypoints and points of routes. */
  readonly otherPoints: number;
  readonly broken: XmlBreak | null;
}

/** Elements below a point that are read, by their name without a namespace. */
const fields = new Set(['time', 'ele', 'speed', 'course', 'cog', 'sat', 'hdop']);
/** Characters; no value that is read is longer. */
const longestValue = 64;

/** Elements within each other; a parser holds each of them, and no track has so many. */
const deepest = 100;

interface OpenPoint {
  readonly latitude: number;
  readonly longitude: number;
  readonly texts: Map<string, string>;
}

/**
 * Reads the track points of a GPX file, 1.0 or 1.1, with or without namespaces, piece by piece. Entities that the file
 * itself declares are not expanded; the first break of XML's rules ends the reading, and so do more than 100 elements
 * within each other.
 *
 * @param chunks - the text in pieces
 * @returns the points before the end or the break, and where it broke
 */
export function trackPoints(chunks: Iterable<string>): GpxContent {
  const points: TrackPoint[] = [];
  let [depth, pointDepth] = [0, 0];
  let otherPoints = 0;
  let segment = -1;
  let open: OpenPoint | null = null;
  let text = '';
  let isClosing = false;
  let broken: XmlBreak | null = null;
  const parser = new SaxesParser({ xmlns: false, position: true });
  parser.on('error', () => {
    broken ??= { line: parser.line, column: parser.column, isTruncated: isClosing };
  });
  parser.on('opentag', ({ name, attributes }) => {
    const local = localName(name);
    depth += 1;
    if (depth > deepest) broken ??= { line: parser.line, column: parser.column, isTruncated: false };
    text = '';
    if (local === 'trkseg') segment += 1;
    else if (local === 'wpt' || local === 'rtept') otherPoints += 1;
    else if (local === 'trkpt') {
      pointDepth = depth;
      open = {
        latitude: within(numberField(attributes['lat'] ?? '', false), 90),
        longitude: within(numberField(attributes['lon'] ?? '', false), 180),
        texts: new Map(),
      };
    }
  });
  const addText = (piece: string): void => {
    if (open !== null && text.length < longestValue) text += piece;
  };
  parser.on('text', addText);
  parser.on('cdata', addText);
  parser.on('closetag', ({ name }) => {
    const local = localName(name);
    const below = depth - pointDepth;
    depth -= 1;
    if (open === null || broken !== null) return;
    if (local === 'trkpt') {
      points.push(finishedPoint(open, Math.max(0, segment), parser.line));
      open = null;
    } else if (fields.has(local)) {
      const key = below === 1 ? local : `extended ${local}`;
      if (!open.texts.has(key)) open.texts.set(key, text.trim());
    }
    text = '';
  });
  for (const chunk of chunks) {
    parser.write(chunk);
    if (broken !== null) break;
  }
  if (broken === null) {
    isClosing = true;
    parser.close();
  }
  return { points, otherPoints, broken };
}

function localName(name: string): string {
  return name.slice(name.indexOf(':') + 1);
}

function within(degrees: number, limit: number): number {
  return Math.abs(degrees) <= limit ? degrees : NaN;
}

function finishedPoint({ latitude, longitude, texts }: OpenPoint, segment: number, line: number): TrackPoint {
  const number = (...keys: readonly string[]): number => {
    const found = keys.map((key) => texts.get(key)).find((value) => value !== undefined);
    return found === undefined ? NaN : numberField(found, false);
  };
  return {
    time: texts.get('time') ?? '',
    latitude,
    longitude,
    elevation: number('ele'),
    speed: number('speed'),
    extendedSpeed: number('extended speed'),
    course: number('course', 'cog', 'extended course', 'extended cog'),
    satellites: number('sat', 'extended sat'),
    dilution: number('hdop', 'extended hdop'),
    segment,
    line,
  };
}
