/** One line of an NMEA log. */
export interface NmeaLine {
  readonly text: string;
  /** 1-based. */
  readonly number: number;
}

/**
 * Cuts the pieces of a log into lines at CR LF, LF or a lone CR, all of which receivers and loggers write, in one file
 * too. Lines keep their number as an editor shows it; empty lines are left out.
 *
 * @param chunks - the text in pieces
 * @returns the lines in order
 */
export function* nmeaLines(chunks: Iterable<string>): Generator<NmeaLine> {
  let rest = '';
  let number = 0;
  for (const chunk of chunks) {
    const text = rest + chunk;
    const held = text.endsWith('\r') ? text.slice(0, -1) : text;
    const lines = held.split(/\r\n|\n|\r/);
    rest = (lines.pop() ?? '') + text.slice(held.length);
    if (rest.length > longestLine) rest = '';
    for (const line of lines) {
      number += 1;
      if (line !== '') yield { text: line, number };
    }
  }
  const last = rest.replace(/\r$/, '');
  if (last !== '') yield { text: last, number: number + 1 };
}

/** A sentence has at most 82 characters; what has no line end for so long is no log. */
const longestLine = 1 << 16;
