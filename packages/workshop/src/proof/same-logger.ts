import type { LogReport } from '../results/log-report.ts';

/** Quantities whose columns tell one logger from another: what the speed, the brake and their delay are read from. */
const telling = /^(?:speed|wheel-speed|brake-|pedal-|acceleration-forward)/;

/**
 * Whether two sets of logs look as if one logger made them, with the brake told by one signal: only then does its unknown
 * delay between brake signal and speed drop out of their difference. What can't be told apart by format and columns is
 * taken for one logger.
 *
 * @param before - reports of the first set
 * @param after - reports of the second
 * @returns true where every report of both has the same format, the same columns of speed and brake and one kind of start
 */
export function sameLogger(before: readonly LogReport[], after: readonly LogReport[]): boolean {
  const reports = [...before, ...after];
  const starts = new Set(
    reports.flatMap(({ stops }) => stops.filter((stop) => stop.counted).map((stop) => stop.startBy)),
  );
  return new Set(reports.map(loggerOf)).size <= 1 && starts.size <= 1;
}

/** What a log tells of its logger, in words: `CSV with "Speed [mph]", "Brake switch"`. */
export function loggerOf({ source, channels }: LogReport): string {
  const columns = channels.filter(({ quantity }) => telling.test(quantity)).map(({ name }) => `"${name}"`);
  return `${source.format} with ${columns.join(', ')}`;
}
