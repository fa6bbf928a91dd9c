import pc from 'picocolors';
import { buildProgram } from './program.ts';
import type { Ended } from './standstill.testing.ts';
import { codeOfError } from './surface/code-of-error.ts';
import type { Terminal } from './surface/terminal.ts';

/** What a run left behind, and the terminal that collects it. */
function collector(): { readonly terminal: Terminal; readonly ended: (code: number) => Ended } {
  let out = '';
  let err = '';
  const terminal: Terminal = {
    out: (text) => (out += `${text}\n`),
    note: (text) => (err += `${text}\n`),
    colors: pc.createColors(false),
    width: 100,
  };
  return { terminal, ended: (code) => ({ code, out, err }) };
}

/** Runs a command in this process: the same program, errors and exit codes, without the time that a start takes. */
export async function runHere(...words: readonly string[]): Promise<Ended> {
  const { terminal, ended } = collector();
  let code = 0;
  const program = buildProgram((end) => (code = end), terminal);
  for (const command of [program, ...program.commands]) {
    command.configureOutput({
      writeOut: (text) => terminal.out(text.trimEnd()),
      writeErr: (text) => terminal.note(text.trimEnd()),
    });
  }
  try {
    await program.parseAsync([...words], { from: 'user' });
  } catch (error) {
    code = codeOfError(error, terminal, false);
  }
  return ended(code);
}

/** Names of the commands whose first argument is of this name, such as `job`. */
export function commandsTaking(argument: string): readonly string[] {
  const { terminal } = collector();
  return buildProgram(() => undefined, terminal)
    .commands.filter((command) => command.registeredArguments[0]?.name() === argument)
    .map((command) => command.name());
}

/** Names of the commands that have an option, such as `--speed`, and a first argument of this name. */
export function commandsWith(option: string, argument: string): readonly string[] {
  const { terminal } = collector();
  const takes = new Set(commandsTaking(argument));
  return buildProgram(() => undefined, terminal)
    .commands.filter((command) => takes.has(command.name()))
    .filter((command) => command.options.some(({ long }) => long === option))
    .map((command) => command.name());
}
