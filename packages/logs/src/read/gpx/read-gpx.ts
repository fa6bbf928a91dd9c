import type { Channel, ChannelTable } from '../../channels/channel-table.ts';
import { issueList, type IssueList } from '../../channels/issue-list.ts';
import { textChunks } from '../bytes/text-chunks.ts';
import { textEncoding } from '../bytes/text-encoding.ts';
import { refuseLog, type LogRefusal } from '../log-refusal.ts';
import { speedOverPositions } from '../positions/speed-over-positions.ts';
import { withSpeedFromPositions } from '../positions/with-speed-from-positions.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { planSignals } from '../signals/plan-signals.ts';
import { plannedChannel } from '../signals/planned-channel.ts';
import { clockSeconds } from '../time/clock-seconds.ts';
import { isoText } from '../time/clock-text.ts';
import { reportSeams } from '../time/report-seams.ts';
import { timeBase, type FinishedTime } from '../time/time-base.ts';
import { withSeams } from '../time/with-seams.ts';
import { gpxSignals } from './gpx-signals.ts';
import type { TrackPoint } from './track-point.ts';
import { trackPoints, type GpxContent } from './track-points.ts';

/** Share by which a speed may differ from that of the positions before its unit is doubted; km/h in place of m/s is 260 %. */
const greatestDoubt = 0.25;

/**
 * Reads the tracks of a GPX file, 1.0 or 1.1: every track segment is one of its own, nothing is computed from one to the
 * next. Where the file tells no speed, one is computed from positions that are close enough together.
 *
 * @param bytes - the whole file
 * @param options - name and a person's word on the channels
 * @returns the channel table, or why the file can't be used
 */
export function readGpx(bytes: Uint8Array, options: ReadOptions): ReadOutcome {
  const { name } = options;
  const content = trackPoints(textChunks(bytes, textEncoding(bytes)));
  const trouble = unusable(content, name);
  if (trouble !== null) return trouble;
  const issues = issueList();
  if (content.broken !== null) {
    const { line, column } = content.broken;
    issues.add(
      'file-torn',
      line,
      () =>
        `The file ends too early, at line ${line}, column ${column}; the ${content.points.length} points before are read.`,
    );
  }
  const { kept, time } = placedPoints(content.points, issues);
  if (kept.length === 0) return refuseLog('log-no-rows', name, 'has no track point whose time can be read.');
  if (kept.length === 1)
    return refuseLog(
      'log-one-sample',
      name,
      'holds only one point with a time; a stop needs many, at ten a second or more.',
    );
  const present = gpxSignals.filter(({ of }) => kept.some((point) => !Number.isNaN(of(point))));
  const planned = planSignals(
    present.map(({ source }) => source),
    options,
    issues,
  );
  if (!planned.ok) return planned;
  const channels = present.map(({ source, of }, index) =>
    plannedChannel(source, planned.plans[index]!, Float64Array.from(kept, of), issues),
  );
  const table: ChannelTable = {
    time: time.time,
    channels,
    segmentStarts: time.segmentStarts,
    epoch: isoText(time.offsets[0]!),
    clock: { kind: 'date-time', offsets: time.offsets },
    headings: null,
    source: { name, format: 'GPX', bytes: bytes.length, rows: kept.length },
    issues: [],
  };
  return withSpeed(table, issues);
}

function withSpeed(table: ChannelTable, issues: IssueList): ReadOutcome {
  const checked = {
    ...table,
    channels: table.channels.map((channel) => doubtedSpeed(table, channel, issues)),
  };
  if (checked.channels.some(({ quantity }) => quantity === 'speed'))
    return { ok: true, table: { ...checked, issues: issues.list() } };
  return (
    withSpeedFromPositions(checked, issues) ??
    refuseLog('log-no-speed', table.source.name, 'tells neither speeds nor positions that could be read.')
  );
}

/** Holds a speed whose unit is only the custom against the positions; one that contradicts them is kept and not used. */
function doubtedSpeed(table: ChannelTable, channel: Channel, issues: IssueList): Channel {
  if (channel.quantity !== 'speed' || channel.unitOrigin !== 'assumed') return channel;
  const ratio = speedOverPositions(table, channel.values);
  if (ratio !== null && Math.abs(ratio - 1) > greatestDoubt) {
    const sentence = `The speed in the file's extensions is ${ratio.toFixed(2)} times that of its positions, so it is not in m/s; it is kept but not used. Say which unit it is.`;
    issues.add('speed-against-positions', null, () => sentence);
    return { ...channel, quantity: 'unknown' };
  }
  issues.add(
    'unit-assumed',
    null,
    () =>
      "The speed in the file's extensions is taken to be in m/s, as is the custom; the file does not say.",
  );
  return channel;
}

/** Why nothing can be made of a file. A break inside the file damages what is after it, too, so nothing is taken. */
function unusable({ points, otherPoints, broken }: GpxContent, name: string): LogRefusal | null {
  if (broken !== null && !(broken.isTruncated && points.length > 1))
    return refuseLog(
      'log-broken-xml',
      name,
      `breaks the rules of XML at line ${broken.line}, column ${broken.column}; export the track again.`,
    );
  if (points.length === 0) {
    const others = otherPoints > 0 ? `; its ${otherPoints} waypoints and points of routes are no drive` : '';
    return refuseLog('log-no-rows', name, `holds no track point${others}.`);
  }
  const timed = points.filter(({ time }) => time !== '').length;
  if (timed < points.length / 2)
    return refuseLog(
      'log-no-time',
      name,
      `tells times for ${timed === 0 ? 'none' : `only ${timed}`} of its ${points.length} points; record the track with times.`,
    );
  return null;
}

interface PlacedPoints {
  readonly kept: readonly TrackPoint[];
  readonly time: FinishedTime;
}

function placedPoints(points: readonly TrackPoint[], issues: IssueList): PlacedPoints {
  const base = timeBase(null);
  const kept: TrackPoint[] = [];
  const seams: number[] = [];
  for (const point of points) {
    const clock = clockSeconds(point.time, 'date-time');
    if (Number.isNaN(clock)) {
      issues.add('row-without-time', point.line, () => 'Points whose time can not be read were skipped.');
      continue;
    }
    if (!base.offer(clock)) {
      issues.add(
        'repeated-time',
        point.line,
        () => 'Points at the very time of the point before were skipped.',
      );
      continue;
    }
    if (kept.length > 0 && kept.at(-1)!.segment !== point.segment) seams.push(kept.length);
    kept.push(point);
  }
  const finished = base.finish();
  reportSeams(finished, issues);
  return { kept, time: withSeams(finished, seams) };
}
