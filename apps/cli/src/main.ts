import { buildProgram } from './program.ts';
import { codeOfError } from './surface/code-of-error.ts';
import { exitCode } from './surface/exit-code.ts';
import { processTerminal } from './surface/terminal.ts';

/** A reader that has seen enough (`standstill … | head`) is no failure. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? exitCode.ok : exitCode.refused);
});

const terminal = processTerminal();

try {
  await buildProgram((code) => (process.exitCode = code), terminal).parseAsync();
} catch (error) {
  process.exitCode = codeOfError(error, terminal, Boolean(process.env['STANDSTILL_DEBUG']));
}
