import { jsonText } from '../print/json-text.ts';
import { schemas } from '../schema/schemas.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';

/** Prints the JSON Schema of the job document or of what a command prints with --json; without a name, the names. */
export function printSchema(name: string | undefined, terminal: Terminal): ExitCode {
  const known = schemas();
  if (name === undefined) {
    terminal.out(Object.keys(known).join('\n'));
    return exitCode.ok;
  }
  const schema = known[name];
  if (schema === undefined)
    throw new CommandError(
      `No schema "${name}"; there are ${Object.keys(known).join(', ')}.`,
      exitCode.usage,
    );
  terminal.out(jsonText(schema()));
  return exitCode.ok;
}
