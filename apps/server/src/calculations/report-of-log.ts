import { stopPicture, stopsPicture } from '@standstill/pictures';
import { readJobDocument } from '@standstill/workshop';
import type { LogRefusal, LogReport } from '@standstill/workshop';
import { reportKeptLog } from '../proof/read-kept-logs.ts';
import type { DrawingTask, LogTask } from './calculations.ts';

/**
 * Reads a log, as its job says where it is kept with one.
 *
 * @param task - the log
 * @returns the report, or in one sentence why there is none
 */
export function reportOfLog({ file, options, of }: LogTask): LogReport | LogRefusal {
  const reading = of === undefined ? null : readJobDocument(of.document);
  const job = reading?.ok === true ? reading.job : null;
  return reportKeptLog(job, { names: [file.name, ...(of === undefined ? [] : [of.id])], file }, options);
}

/**
 * Draws the stops of a log.
 *
 * @param task - the log, and which stop
 * @returns the picture; null with a sentence where there is nothing to draw
 */
export function picturesOfLog(task: DrawingTask): {
  readonly sentence: string;
  readonly picture: string | null;
} {
  const report = reportOfLog(task);
  const { sentence } = report;
  const { stop: number, options } = task;
  const look = { units: options.units ?? 'us' };
  if (report.kind === 'log-refusal' || report.stops.length === 0) return { sentence, picture: null };
  if (number === undefined) return { sentence, picture: stopsPicture([report], look) };
  const picture = stopPicture(report, number, look);
  return { sentence: `The log has no stop ${number}; it has 1 to ${report.stops.length}.`, picture };
}
