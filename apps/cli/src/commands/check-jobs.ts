import type { JobReading } from '@standstill/workshop';
import { readJobFile } from '../input/read-job-file.ts';
import { assumedLines, assumedSummary } from '../print/assumed-lines.ts';
import { influenceLines } from '../print/influence-lines.ts';
import { jsonText } from '../print/json-text.ts';
import { problemLine } from '../print/problem-line.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';

export interface CheckOptions {
  readonly json?: boolean;
  readonly assumed?: boolean;
}

interface CheckedFile {
  readonly file: string;
  readonly reading: JobReading;
}

/** Says of each job file whether it is sound, every mistake in it and what was assumed. */
export async function checkJobs(
  paths: readonly string[],
  { json, assumed = false }: CheckOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  const checked: CheckedFile[] = [];
  for (const path of paths) checked.push(await readJobFile(path));
  if (json === true) terminal.out(jsonText(checkResult(checked)));
  else for (const file of checked) terminal.out(fileText(file, assumed, terminal));
  return checked.every(({ reading }) => reading.ok) ? exitCode.ok : exitCode.no;
}

function checkResult(checked: readonly CheckedFile[]): unknown {
  return {
    kind: 'check',
    version: 1,
    files: checked.map(({ file, reading }) => ({
      file,
      sound: reading.ok,
      problems: reading.ok ? [] : reading.problems,
      assumed: reading.ok ? reading.assumed : [],
    })),
  };
}

/** A mistake stays in one line with its place, so that editors can follow it. */
function fileText({ file, reading }: CheckedFile, wholeList: boolean, { colors, width }: Terminal): string {
  if (!reading.ok) {
    const count = reading.problems.length === 1 ? 'one mistake' : `${reading.problems.length} mistakes`;
    return [
      colors.bold(`${file}: ${count}.`),
      ...reading.problems.map((problem) => problemLine(file, problem)),
    ].join('\n');
  }
  const { job, migratedFrom, assumed } = reading;
  const written =
    migratedFrom === null ? '' : ` It was written in version ${migratedFrom} and is read as the present one.`;
  const setUps = job.setUps.map(({ title, id }) => `${title} (${id})`).join(', ');
  const lines = [
    colors.bold(`${file} is sound: ${job.title}.`) + written,
    `Set-ups: ${setUps}. Runs: ${job.runs.length}.`,
    ...(wholeList
      ? assumedLines(assumed, colors)
      : [...influenceLines(job, colors), ...assumedSummary(assumed)]),
  ];
  return wrapText(lines.join('\n'), width);
}
