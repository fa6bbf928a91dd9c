import type { ExitCode } from './exit-code.ts';

/** Ends a command with lines for the person and the exit code that goes with them. */
export class CommandError extends Error {
  override readonly name = 'CommandError';

  constructor(
    message: string,
    readonly exitCode: ExitCode,
  ) {
    super(message);
  }
}
