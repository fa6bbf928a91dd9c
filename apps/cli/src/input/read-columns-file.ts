import { readLogColumns, type LogColumnsDocument } from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { readFileBytes } from './read-file-bytes.ts';

/** Reads a file of remembered columns; ends the command in one line where it is none. */
export async function readColumnsFile(file: string): Promise<readonly LogColumnsDocument[]> {
  const reading = readLogColumns(new TextDecoder().decode(await readFileBytes(file)));
  if (reading.ok) return reading.columns;
  throw new CommandError(`${file}: ${reading.sentence}`, exitCode.unreadable);
}
