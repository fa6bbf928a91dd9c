import { basename } from 'node:path';
import { parseQuantity, refusalSentence, type UnitSystem } from '@standstill/units';
import {
  columnsFor,
  conditionsFacts,
  logHeadings,
  logOptionsOf,
  reportLog,
  runOfLog,
  type GivenJudgement,
  type Job,
  type LogFile,
  type LogRefusal,
  type LogReport,
  type ReportLogOptions,
} from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { readColumnWord, type ColumnWord } from './column-word.ts';
import { columnsOfWords } from './columns-of-words.ts';
import { withFileSource } from './file-source.ts';
import { isMeant, momentOf, readJudgementWord, requireMeant, type JudgementWord } from './judgement-word.ts';
import { knownOptions } from './known-options.ts';
import { readColumnsFile } from './read-columns-file.ts';
import { readFileBytes } from './read-file-bytes.ts';
import { readQuantityOption } from './read-quantity-option.ts';
import { readTemperatureWindow } from './read-temperature-window.ts';

/** What a person can say about logs; every command with logs takes it. */
export interface LogOptions {
  readonly speed?: string;
  readonly grade?: string;
  readonly column?: readonly string[];
  readonly columns?: string;
  readonly timeColumn?: string;
  readonly speedColumn?: string;
  readonly speedUnit?: string;
  readonly speedScale?: string;
  readonly scaleAssumed?: boolean;
  readonly signals?: string;
  readonly startTemperature?: string;
  readonly reject?: readonly string[];
  readonly restore?: readonly string[];
  readonly units: UnitSystem;
}

/** Reads one of the logs that a command is about. */
export type LogReading = (file: string) => LogReport | LogRefusal;

/** What is the same for all logs of a command. */
interface Wishes {
  readonly options: ReportLogOptions;
  readonly words: readonly ColumnWord[];
  readonly byOption: NonNullable<ReportLogOptions['columns']> | undefined;
  readonly judged: readonly JudgementWord[];
  readonly job: Job | null;
}

/**
 * Turns the options into a reading of logs; refuses in one line what does not fit, before any log is read.
 *
 * @param options - as typed
 * @param files - the logs that the command is about
 * @param job - what it says of its logs holds where the options say nothing
 * @returns the reading
 */
export async function logReading(
  options: LogOptions,
  files: readonly string[],
  job: Job | null = null,
): Promise<LogReading> {
  const words = (options.column ?? []).map(readColumnWord);
  const judged = [
    ...(options.reject ?? []).map((text) => readJudgementWord('rejected', text)),
    ...(options.restore ?? []).map((text) => readJudgementWord('restored', text)),
  ];
  requireMeant(judged, files);
  const wishes: Wishes = {
    options: knownOptions({
      nominalSpeed: readQuantityOption('--speed', options.speed, conditionsFacts.speed),
      grade: readGrade(options.grade),
      startTemperature: readTemperatureWindow(options.startTemperature),
      signals: await readSignals(options.signals),
      remembered: options.columns === undefined ? undefined : await readColumnsFile(options.columns),
      units: options.units,
    }),
    byOption: readColumns(options, words),
    words,
    judged,
    job,
  };
  return (file) => withFileSource(file, (content) => reportOne({ name: file, content }, wishes));
}

function reportOne(file: LogFile, { options, words, byOption, judged, job }: Wishes): LogReport | LogRefusal {
  const ofJob = job === null ? {} : logOptionsOf(job, runOfLog(job.runs, { names: namesOf(file.name) }));
  const remembered = [...(options.remembered ?? []), ...(ofJob.remembered ?? [])];
  const known: ReportLogOptions = { ...ofJob, ...options, remembered };
  const chosen = words.length === 0 && byOption === undefined ? {} : { columns: chosenColumns() };
  const meant = judged.filter((word) => isMeant(word, file.name));
  const report = reportLog(file, { ...known, ...chosen });
  if (meant.length === 0 || report.kind === 'log-refusal') return report;
  const judgements = meant.map((word): GivenJudgement => {
    const { verdict, reason } = word;
    return { at: momentOf(word, file.name, report.stops), verdict, reason };
  });
  return reportLog(file, { ...known, ...chosen, judgements: [...(ofJob.judgements ?? []), ...judgements] });

  /** What is remembered holds for all that the person says nothing of now. */
  function chosenColumns(): NonNullable<ReportLogOptions['columns']> {
    const headings = logHeadings(file.content);
    const earlier = columnsFor({ logColumns: remembered }, headings?.join(' | ') ?? null);
    return { ...earlier, ...columnsOfWords(words, headings), ...byOption };
  }
}

/** By which a run of a job may call a log. */
export function namesOf(file: string): readonly string[] {
  return [...new Set([file, basename(file)])];
}

async function readSignals(file: string | undefined): Promise<ReportLogOptions['signals']> {
  if (file === undefined) return undefined;
  return { name: basename(file), text: new TextDecoder().decode(await readFileBytes(file)) };
}

function readColumns(options: LogOptions, words: readonly ColumnWord[]): ReportLogOptions['columns'] {
  const { timeColumn, speedColumn, speedUnit, speedScale, scaleAssumed } = options;
  if (speedColumn === undefined && (speedUnit ?? speedScale) !== undefined)
    throw new CommandError(
      '--speed-unit and --speed-scale need --speed-column, the name of the column.',
      exitCode.usage,
    );
  refuseTwice('time', timeColumn, words);
  refuseTwice('speed', speedColumn, words);
  const time = timeColumn === undefined ? undefined : { name: timeColumn };
  const speed =
    speedColumn === undefined
      ? undefined
      : {
          name: speedColumn,
          ...knownOptions({ unit: speedUnit, scale: readScale(speedScale), assumed: scaleAssumed }),
        };
  return time === undefined && speed === undefined ? undefined : knownOptions({ time, speed });
}

function refuseTwice(role: 'time' | 'speed', column: string | undefined, words: readonly ColumnWord[]): void {
  if (column === undefined || words.every((word) => word.role !== role)) return;
  throw new CommandError(
    `--${role}-column and --column "${role}=…" say the same thing; give one of them.`,
    exitCode.usage,
  );
}

function readScale(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const scale = Number(text);
  if (text.trim() !== '' && scale > 0 && Number.isFinite(scale)) return scale;
  throw new CommandError(`--speed-scale: "${text}" is not a number above 0.`, exitCode.usage);
}

/** Uphill positive; a road of 0 is fine here, unlike a speed. */
function readGrade(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = parseQuantity(text, 'ratio');
  if (!reading.ok) throw new CommandError(`--grade: ${refusalSentence(reading)}.`, exitCode.usage);
  if (Math.abs(reading.value) <= 0.3) return reading.value;
  throw new CommandError(`--grade: "${text}" is steeper than any road; 30 % is the most.`, exitCode.usage);
}

/** The headings of a log file, read or not; null where they do not stand at the beginning. */
export function headingsOfFile(file: string): readonly string[] | null {
  return withFileSource(file, logHeadings);
}
