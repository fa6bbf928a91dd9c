import { clearLine, cursorTo } from 'node:readline';
import pc from 'picocolors';

export type Colors = ReturnType<typeof pc.createColors>;

/** Where a command writes: results to one stream, everything else to the other. */
export interface Terminal {
  /** Writes a line of the result. */
  readonly out: (text: string) => void;
  /** Writes a line for the person beside the result. */
  readonly note: (text: string) => void;
  /** Shows how far something is, over the line shown before; null takes it away. Absent where nobody looks on. */
  readonly progress?: (text: string | null) => void;
  readonly colors: Colors;
  /** Characters a line; 100 where the output goes to a file or a program. */
  readonly width: number;
}

/** Characters a line where no terminal says how many; what is narrower than the least is left to the terminal to break. */
const withoutTerminal = 100;
const narrowest = 40;

/** The terminal of this process. Node leaves `isTTY` undefined where there is none, whatever its type says. */
export function processTerminal(): Terminal {
  const { stdout, stderr, env } = process;
  const isTerminal = Boolean(stdout.isTTY);
  return {
    out: (text) => void stdout.write(`${text}\n`),
    note: (text) => void stderr.write(`${text}\n`),
    ...(stderr.isTTY && env['TERM'] !== 'dumb' ? { progress: overwriting(stderr) } : {}),
    colors: pc.createColors(wantsColor(env, isTerminal)),
    width: isTerminal ? Math.max(narrowest, stdout.columns) : withoutTerminal,
  };
}

/** Writes over its own line: back to the start, then clear to the end. */
export function overwriting(stream: NodeJS.WritableStream): (text: string | null) => void {
  return (text) => {
    cursorTo(stream, 0);
    clearLine(stream, 1);
    if (text !== null) stream.write(text);
  };
}

/**
 * Color only where a person looks at the output, and never where NO_COLOR is set.
 *
 * @param environment - the process's environment variables
 * @param isTerminal - whether the output goes to a terminal
 * @returns true for color
 */
export function wantsColor(
  environment: Readonly<Record<string, string | undefined>>,
  isTerminal: boolean,
): boolean {
  const set = (name: string): boolean => (environment[name] ?? '') !== '';
  if (set('NO_COLOR')) return false;
  return set('FORCE_COLOR') || (isTerminal && environment['TERM'] !== 'dumb');
}
