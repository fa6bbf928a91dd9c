/** One value of one signal at one moment. */
export interface JsonEvent {
  readonly name: string;
  readonly value: number | boolean | string | null;
  /** s since 1970. */
  readonly clock: number;
}

/** s; larger numbers are taken as milliseconds since 1970 (as seconds they would be past the year 5000). */
const millisecondsFrom = 1e11;

/** A key that stands twice, as where a line lost its end and ran into the next, makes the value another signal's. */
const keys = /"(name|value|timestamp)"\s*:/g;

/**
 * Reads one line of a trace: an object with name, value and timestamp (s or ms since 1970).
 *
 * @param line - the line
 * @returns the event; 'other' for an object of another kind; null where the line is no JSON
 */
export function jsonEvent(line: string): JsonEvent | 'other' | null {
  const read = parsed(line.replace(/,\s*$/, ''));
  if (read === undefined) return null;
  if ((line.match(keys) ?? []).length > 3) return 'other';
  if (typeof read !== 'object' || read === null) return 'other';
  const { name, value, timestamp } = read as Readonly<Record<string, unknown>>;
  if (typeof name !== 'string' || typeof timestamp !== 'number' || !Number.isFinite(timestamp))
    return 'other';
  const isPlain = value === null || ['number', 'boolean', 'string'].includes(typeof value);
  if (!isPlain) return 'other';
  return {
    name,
    value: value as JsonEvent['value'],
    clock: timestamp > millisecondsFrom ? timestamp / 1000 : timestamp,
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
