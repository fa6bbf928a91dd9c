import { peekHeadings, scanLog } from '@standstill/logs';
import type { ByteSource, ColumnChoices, FindOptions, ReadOptions, RejectedStop } from '@standstill/logs';
import type { LogColumnsDocument } from '../job/document/log-columns-schema.ts';
import type { LogRefusal, LogReport } from '../results/log-report.ts';
import { columnsFor } from './columns/columns-for.ts';
import type { GivenJudgement } from './judge/given-judgement.ts';
import { judgeStops } from './judge/judge-stops.ts';
import { logSentence } from './log-sentence.ts';
import { withStatedStart } from './stated-start.ts';
import { stopResultOf } from './stop-result-of.ts';

export interface LogFile {
  readonly name: string;
  /** All bytes, or a way to read them piece by piece. */
  readonly content: Uint8Array | ByteSource;
}

export interface ReportLogOptions {
  /** m/s, speed that the stops were meant from; distances are only as driven where absent. */
  readonly nominalSpeed?: number;
  /** A person's word on what the columns are; overrules every guess. */
  readonly columns?: NonNullable<ReadOptions['columns']>;
  /** Columns that a person chose before, found again by the log's line of headings; `columns` comes before them. */
  readonly remembered?: readonly LogColumnsDocument[];
  /** The DBC file that describes the signals of a log of CAN frames. */
  readonly signals?: NonNullable<ReadOptions['signals']>;
  /** Rise over run in the direction of travel, uphill positive. */
  readonly grade?: number;
  /** °C, between which the brakes are to be when a stop begins; a stop outside is left out. */
  readonly startTemperature?: NonNullable<FindOptions['startTemperature']>;
  /** °C of the rotors at the start, as a person wrote it down: holds where the log recorded none. */
  readonly statedStart?: number;
  /** A person's word on stops: by a moment inside the stop, s on the log's time base. */
  readonly judgements?: readonly GivenJudgement[];
  readonly units?: 'us' | 'metric';
}

/**
 * Reads a log and says which stops are in it, how far each went, and what is doubtful about each. A stop that a person
 * rejected or that its flags exclude stays in the report, with the reason.
 *
 * @param file - name and content, as they came
 * @param options - nominal speed, m/s; columns; signals; grade, 1; window of start temperatures, °C; judgements, s; units
 * @returns the report, distances in m, speeds in m/s; or one sentence that says why the log can't be used
 */
export function reportLog(file: LogFile, options: ReportLogOptions = {}): LogReport | LogRefusal {
  const scan = scanned(file, options);
  if (!scan.ok) return refusal(file, scan.code, scan.sentence);
  const { judgements = [], nominalSpeed = null, units = 'us' } = options;
  const { startTemperature: window, statedStart: stated = null } = options;
  const found = scan.stops.map(stopResultOf);
  const started =
    window === undefined ? found : found.map((stop) => withStatedStart(stop, { stated, window, units }));
  const { stops, issues } = judgeStops(started, judgements);
  const { rejected } = scan;
  return {
    kind: 'log-report',
    version: 1,
    sentence: logSentence({ name: file.name, stops, rejected, nominalSpeed, units }),
    source: { ...scan.source, name: file.name },
    epoch: scan.epoch,
    duration_s: scan.duration,
    channels: scan.channels.map(({ name, quantity, unitAsRead, unitOrigin, chosenBy, range }) => ({
      name,
      quantity,
      unitAsRead,
      unitOrigin,
      chosenBy,
      range,
    })),
    headings: scan.headings,
    sensors: scan.sensors.map(({ tilt, ...sensor }) => ({ ...sensor, tilt_rad: tilt })),
    issues: [...scan.issues.map((issue) => ({ ...issue })), ...rejected.map(issueOf), ...issues],
    nominalSpeed_m_s: nominalSpeed,
    stops: [...stops],
  };
}

/** Formats whose headings do not stand at the beginning are read once more where columns are remembered for them. */
function scanned({ name, content }: LogFile, options: ReportLogOptions): ReturnType<typeof scanLog> {
  const {
    columns,
    remembered = [],
    judgements: _judgements,
    statedStart: _start,
    units = 'us',
    ...rest
  } = options;
  const scanBy = (choices: ColumnChoices | null): ReturnType<typeof scanLog> =>
    scanLog(content, { ...rest, name, units, ...(choices === null ? {} : { columns: choices }) });
  if (columns !== undefined || remembered.length === 0) return scanBy(columns ?? null);
  const headings = peekHeadings(content);
  const scan = scanBy(columnsFor({ logColumns: remembered }, headings));
  const late = headings === null && scan.ok ? columnsFor({ logColumns: remembered }, scan.headings) : null;
  return late === null ? scan : scanBy(late);
}

function refusal({ name, content }: LogFile, code: string, sentence: string): LogRefusal {
  const bytes = content instanceof Uint8Array ? content.length : content.size;
  return { kind: 'log-refusal', version: 1, code, sentence, source: { name, bytes } };
}

function issueOf({ code, reason }: RejectedStop): LogReport['issues'][number] {
  return { code, message: reason, line: null, count: 1 };
}
