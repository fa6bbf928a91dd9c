import { CommanderError } from 'commander';
import { buildProgram } from './program.ts';
import { CommandError } from './surface/command-error.ts';
import { exitCode, type ExitCode } from './surface/exit-code.ts';
import { processTerminal } from './surface/terminal.ts';

/** A reader that has seen enough (`standstill … | head`) is no failure. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? exitCode.ok : exitCode.refused);
});

const terminal = processTerminal();

/** The person's own values, not a fault of the program. */
const outOfRange = new Set(['OutOfRangeError', 'SetUpRangeError']);

function codeOf(error: unknown): ExitCode {
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
  const shown =
    error instanceof Error
      ? ((process.env['STANDSTILL_DEBUG'] ? error.stack : null) ?? error.message)
      : error;
  terminal.note(`Standstill failed, and that is its own fault: ${String(shown)}`);
  if (!process.env['STANDSTILL_DEBUG']) terminal.note('With STANDSTILL_DEBUG=1 it says where.');
  return exitCode.internal;
}

try {
  await buildProgram((code) => (process.exitCode = code), terminal).parseAsync();
} catch (error) {
  process.exitCode = codeOf(error);
}
