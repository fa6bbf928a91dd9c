import type { ChannelTable } from '../../channels/channel-table.ts';
import { issueList } from '../../channels/issue-list.ts';
import type { LogIssue } from '../../channels/log-issue.ts';
import { valueRange, type ValueRange } from '../../channels/value-range.ts';
import type { StopSearch } from '../../stops/find-stops.ts';
import type { FoundStop, UsedSensor } from '../../stops/found-stop.ts';
import type { RejectedStop } from '../../stops/rejected-stop.ts';
import { isSpeedless } from '../csv/is-speedless.ts';
import type { ChannelSummary, LogScan } from './log-scan.ts';

/** What one section of a log showed. */
export interface SectionResult {
  readonly table: Omit<ChannelTable, 'issues'>;
  /** Index of the first row that was not in the section before. */
  readonly news: number;
  readonly search: StopSearch;
  /** What its channels say against each other. */
  readonly doubts: readonly LogIssue[];
  /** s; what ends from the one to before the other counts here. */
  readonly from: number;
  readonly to: number;
}

/** Gathers what the sections of a log show into what the log shows. */
export interface SectionFindings {
  readonly add: (section: SectionResult) => void;
  /** What is told of the whole log, given its number of rows and what was noted while it was read. */
  readonly scan: (rows: number, issues: readonly LogIssue[]) => LogScan;
}

/** @returns findings to which no section was added yet */
export function sectionFindings(): SectionFindings {
  let channels: readonly ChannelSummary[] = [];
  const stops: FoundStop[] = [];
  const rejected: RejectedStop[] = [];
  const sensors = new Map<string, { sensor: UsedSensor; stops: number }>();
  const doubts = new Map<string, LogIssue>();
  let first: Pick<LogScan, 'headings' | 'epoch' | 'source'> | null = null;
  let [sections, isSpeedGiven, start, end] = [0, false, NaN, NaN];
  return {
    add: (section) => {
      const { search, table, from, to } = section;
      const counts = (moment: number): boolean => moment >= from && moment < to;
      for (const stop of search.stops)
        if (counts(stop.endTime)) stops.push({ ...kept(stop), number: stops.length + 1 });
      rejected.push(...search.rejected.filter(({ time }) => counts(time)));
      for (const sensor of search.sensors) addSensor(sensors, sensor, search.stops.length);
      for (const doubt of section.doubts) addDoubt(doubts, doubt);
      if (sections === 0) start = table.time[0]!;
      end = table.time.at(-1)!;
      channels = table.channels.map(({ values, ...summary }, index) => ({
        ...summary,
        range: joined(channels[index]?.range ?? null, valueRange(values.subarray(section.news))),
      }));
      first ??= {
        headings: table.headings,
        epoch: table.epoch,
        source: table.source,
      };
      sections += 1;
      isSpeedGiven ||= !table.channels.every(isSpeedless);
    },
    scan: (rows, issues) => {
      const noted = issueList();
      if (!isSpeedGiven)
        noted.add('speed-never-given', null, () => 'The speed column holds no value at all.');
      if (sections > 1)
        noted.add(
          'read-in-sections',
          null,
          () =>
            `The log was read in ${sections} sections that overlap; noise and levels are estimated in each by itself.`,
        );
      return {
        ok: true,
        ...first!,
        channels,
        source: { ...first!.source, rows },
        duration: end - start,
        issues: [...issues, ...noted.list(), ...doubts.values()],
        stops,
        rejected,
        sensors: [...sensors.values()].map(({ sensor }) => sensor),
      };
    },
  };
}

function joined(one: ValueRange | null, other: ValueRange | null): ValueRange | null {
  if (one === null || other === null) return one ?? other;
  return {
    low: Math.min(one.low, other.low),
    high: Math.max(one.high, other.high),
    samples: one.samples + other.samples,
  };
}

/** A stop whose trace stays what it is while the rows that it came from are overwritten. */
function kept(stop: FoundStop): FoundStop {
  const { time, speed, speedStandardError, deceleration } = stop.trace;
  const trace = {
    time: time.slice(),
    speed: speed.slice(),
    speedStandardError: speedStandardError.slice(),
    deceleration: deceleration.slice(),
  };
  return { ...stop, trace };
}

/** Of one sensor the word of the section with the most stops counts: it is said of stops. */
function addSensor(
  sensors: Map<string, { sensor: UsedSensor; stops: number }>,
  sensor: UsedSensor,
  stops: number,
): void {
  const before = sensors.get(sensor.channel);
  if (before === undefined || stops > before.stops) sensors.set(sensor.channel, { sensor, stops });
}

function addDoubt(doubts: Map<string, LogIssue>, doubt: LogIssue): void {
  const before = doubts.get(doubt.code);
  doubts.set(doubt.code, before === undefined ? doubt : { ...before, count: before.count + doubt.count });
}
