import type { Terminal } from './terminal.ts';
import { writeNewFile } from './write-new-file.ts';

/** What the commands with a picture take. */
export interface PictureOptions {
  /** The file that the picture goes to. */
  readonly svg?: string;
  readonly force?: boolean;
}

/** Writes a picture beside the answer and says where it is. */
export async function writePicture(
  { svg: file, force }: PictureOptions,
  svg: () => string,
  terminal: Terminal,
): Promise<void> {
  if (file === undefined) return;
  await writeNewFile(file, svg(), { force, hint: '; --force writes over it' });
  terminal.note(`The picture is in ${file}.`);
}
