import { CommanderError } from 'commander';
import { CommandError } from './command-error.ts';
import { exitCode, type ExitCode } from './exit-code.ts';
import type { Terminal } from './terminal.ts';

/** The person's own values, not a fault of the program. */
const outOfRange = new Set(['OutOfRangeError', 'SetUpRangeError']);

/**
 * Says in one line why a command ended, and the number that it ends with.
 *
 * @param error - what the command threw
 * @param terminal - takes the line
 * @param debug - true to show where a fault of the program lies
 * @returns the exit code
 */
export function codeOfError(error: unknown, terminal: Terminal, debug: boolean): ExitCode {
  if (error instanceof CommanderError) return error.exitCode === 0 ? exitCode.ok : exitCode.usage;
  if (error instanceof CommandError) {
    terminal.note(error.message);
    return error.exitCode;
  }
  if (error instanceof Error && error.name === 'CannotStopError') {
    terminal.note(`${error.message}.`);
    return exitCode.usage;
  }
  if (error instanceof Error && outOfRange.has(error.name)) {
    terminal.note(`Outside what can be computed here: ${error.message}.`);
    return exitCode.usage;
  }
  const shown = error instanceof Error ? ((debug ? error.stack : null) ?? error.message) : error;
  terminal.note(`Standstill failed, and that is its own fault: ${String(shown)}`);
  if (!debug) terminal.note('With STANDSTILL_DEBUG=1 it says where.');
  return exitCode.internal;
}
