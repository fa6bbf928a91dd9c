import { existsSync } from 'node:fs';
import {
  printLogColumns,
  type LogColumnsDocument,
  type LogRefusal,
  type LogReport,
} from '@standstill/workshop';
import { readColumnWord } from '../input/column-word.ts';
import { columnsOfWords } from '../input/columns-of-words.ts';
import { readColumnsFile } from '../input/read-columns-file.ts';
import { headingsOfFile, logReading, type LogOptions } from '../input/report-log-file.ts';
import { requireJob } from '../input/require-job.ts';
import { channelsText } from '../print/channels-text.ts';
import { jsonText } from '../print/json-text.ts';
import { refusalLine } from '../print/refusal-line.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireFree, writeNewFile } from '../surface/write-new-file.ts';

export interface ListChannelsOptions extends LogOptions {
  readonly job?: string;
  /** The file that the columns are remembered in. */
  readonly save?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** Says of every column of logs what it was taken for, by whom, and what was skipped; remembers a person's word. */
export async function listChannels(
  files: readonly string[],
  options: ListChannelsOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  if (options.save !== undefined && options.column === undefined)
    throw new CommandError(
      '--save needs --column: only what a person said of a column is remembered.',
      exitCode.usage,
    );
  requireFree(options.save, options.force);
  const job = options.job === undefined ? null : (await requireJob(options.job)).job;
  const read = await logReading(options, files, job);
  const results: (LogReport | LogRefusal)[] = [];
  for (const file of files) {
    const result = read(file);
    results.push(result);
    if (result.kind === 'log-refusal') refuse(file, result, terminal);
    else if (options.json !== true) {
      const text = channelsText(result, options.units, terminal);
      terminal.out(`${results.length > 1 ? '\n' : ''}${wrapText(text, terminal.width)}`);
    }
  }
  if (options.json === true) terminal.out(jsonText(results));
  const reports = results.filter((result) => result.kind === 'log-report');
  if (options.save !== undefined && reports.length > 0) await save(options.save, reports, options, terminal);
  return reports.length < results.length ? exitCode.unreadable : exitCode.ok;
}

/** A log that can't be used still has headings to say something of. */
function refuse(file: string, refusal: LogRefusal, terminal: Terminal): void {
  terminal.note(refusalLine(file, refusal));
  const headings = headingsOfFile(file);
  if (headings !== null) terminal.note(`Its columns: ${headings.map((each) => `"${each}"`).join(', ')}.`);
}

async function save(
  file: string,
  reports: readonly LogReport[],
  { column = [], force }: ListChannelsOptions,
  terminal: Terminal,
): Promise<void> {
  const words = column.map(readColumnWord);
  const now = reports.flatMap(({ headings }): LogColumnsDocument[] =>
    headings === null
      ? []
      : [
          {
            headings,
            columns: columnsOfWords(words, headings.split(' | ')) as LogColumnsDocument['columns'],
          },
        ],
  );
  if (now.length === 0)
    throw new CommandError('--save: these logs have no headings to find the columns again by.', exitCode.no);
  const named = new Map(now.map((entry) => [entry.headings, entry]));
  const earlier = force === true && existsSync(file) ? await readColumnsFile(file) : [];
  const kept = earlier.filter(({ headings }) => !named.has(headings));
  await writeNewFile(file, printLogColumns([...kept, ...named.values()]), {
    force,
    hint: '; --force changes it',
  });
  terminal.note(
    `The columns are remembered in ${file}; give it as --columns ${file}, or put it into the job.`,
  );
}
