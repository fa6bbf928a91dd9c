import { basename } from 'node:path';
import { newJobText } from '@standstill/workshop';
import { jsonText } from '../print/json-text.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { writeNewFile } from '../surface/write-new-file.ts';

export interface NewJobOptions {
  readonly title?: string;
  readonly json?: boolean;
}

/** Writes a job file to fill in. Never over a file that is there. */
export async function newJob(
  file: string,
  { title, json }: NewJobOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  if (!/\.ya?ml$/i.test(file))
    throw new CommandError(`${file}: a job file's name ends in .yaml.`, exitCode.usage);
  await writeNewFile(file, newJobText(title ?? basename(file).replace(/\.ya?ml$/i, '')));
  if (json === true) terminal.out(jsonText({ kind: 'new-job', version: 1, file }));
  else
    terminal.out(`${file} is ready: fill in what you know of the car, then run "standstill check ${file}".`);
  return exitCode.ok;
}
