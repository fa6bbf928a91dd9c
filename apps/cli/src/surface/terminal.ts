import pc from 'picocolors';

export type Colors = ReturnType<typeof pc.createColors>;

/** Where a command writes: results to one stream, everything else to the other. */
export interface Terminal {
  /** Writes a line of the result. */
  readonly out: (text: string) => void;
  /** Writes a line for the person beside the result. */
  readonly note: (text: string) => void;
  readonly colors: Colors;
  /** Characters a line; Infinity where the output goes to a file or a program. */
  readonly width: number;
}

/** The terminal of this process. Color only where a person looks and has not asked for none (NO_COLOR). */
export function processTerminal(): Terminal {
  const { stdout, stderr, env } = process;
  const colored = stdout.isTTY && (env['NO_COLOR'] ?? '') === '' && env['TERM'] !== 'dumb';
  return {
    out: (text) => void stdout.write(`${text}\n`),
    note: (text) => void stderr.write(`${text}\n`),
    colors: pc.createColors(colored || (env['FORCE_COLOR'] ?? '') !== ''),
    width: stdout.isTTY ? stdout.columns : Infinity,
  };
}
