import { randomStream } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import type { ChannelTable } from '../channels/channel-table.ts';
import { findStops } from '../stops/find-stops.ts';
import { bytesOf } from './csv/made-csv.testing.ts';
import { damaged } from './damage.testing.ts';
import { madeCandump, madeDbc, madeGpx, madeJson, madeRecords, madeTrace } from './made-logs.testing.ts';
import { madeNmea, sentence } from './nmea/made-nmea.testing.ts';
import { readLog } from './read-log.ts';

/**
 * What holds for every log, however damaged: it is read or refused in one sentence, never thrown at; time ascends and is
 * finite; a value is finite or a gap; every speed stands in a piece of the file that is whole (`toldSpeeds` looks for
 * such pieces by itself, with patterns of its own); no byte is read more than a few times; and no stop has a figure that is none.
 */
interface Corpus {
  readonly whole: string;
  readonly signals?: string;
  /** What is done to the file after the damage. */
  readonly repair?: (text: string) => string;
}

/** Lines from the middle of a made drive, the stop's end among them: short, so that many cases take seconds. */
function middle(text: string, head: number, from: number, count: number): string {
  const lines = text.split(/\r?\n/);
  return [...lines.slice(0, head), ...lines.slice(from, from + count)].join('\n');
}

function numbers(text: string, pattern: RegExp, factor: number): readonly number[] {
  return [...text.matchAll(pattern)].map(([, found]) => Number(found) * factor);
}

/** Where a line may end. */
const lineEnd = String.raw`(?=[\r\n]|$)`;

const knot = 1852 / 3600;
const rmcTold =
  /\$[A-Z]{2}RMC,\s*\d{6}(?:\.\d+)?\s*,\s*A\s*,[^,$]*,\s*[NS]?\s*,[^,$]*,\s*[EW]?\s*,\s*([\d.+eE]*)\s*,[^$\r\n]*\*/g;

function hexSpeeds(text: string, pattern: RegExp): readonly number[] {
  return [...text.matchAll(pattern)].map(
    ([, high, low]) => ((parseInt(high!, 16) * 256 + parseInt(low!, 16)) * 0.01) / 3.6,
  );
}

/** All speeds, m/s, that whole pieces of a file tell, by the format that it was read in; null where they are computed. */
const toldSpeeds: Readonly<Record<string, (text: string) => readonly number[]>> = {
  GPX: (text) => numbers(text, /<(?:\w+:)?speed\b[^>]*>[^<>]*?([-+.\deE]+)\s*</g, 1),
  candump: (text) =>
    hexSpeeds(
      text,
      new RegExp(
        String.raw`\([^()]+\)\s+\S+\s+0B0#\.?([0-9A-F]{2})\.?([0-9A-F]{2})(?:\.?[0-9A-F]{2}){2}(?:_[0-9A-F])?(?:\s+[RT])?\s*${lineEnd}`,
        'gi',
      ),
    ),
  'CAN trace': (text) =>
    hexSpeeds(
      text,
      new RegExp(
        String.raw`\)[^\r\n]*\s00B0\s+4\s+([0-9A-F]{2})\s([0-9A-F]{2})(?:\s[0-9A-F]{2}){2}\s*${lineEnd}`,
        'gi',
      ),
    ),
  'named records': (text) =>
    numbers(
      text,
      new RegExp(String.raw`\$GVVEHSP[,;]\s*\d*[13579]\s*[,;]\s*([-+.\deE]+)\s*${lineEnd}`, 'g'),
      1 / 3.6,
    ),
  'JSON lines': (text) =>
    numbers(text, /^[^\r\n]*"name"\s*:\s*"vehicle_speed"[^\r\n]*"value"\s*:\s*([-+.\deE]+)/gm, 1 / 3.6),
  'NMEA 0183': (text) => numbers(text, rmcTold, knot),
};

const nmea = middle(madeNmea(43_200).join('\n'), 0, 10, 40);
const gpxEnd = '\n</trkseg></trk></gpx>';

const corpora: Readonly<Record<string, Corpus>> = {
  'GPX with speeds': { whole: middle(madeGpx(), 3, 40, 40) + gpxEnd },
  'GPX with positions': {
    whole:
      middle(
        madeGpx(() => ''),
        3,
        40,
        40,
      ) + gpxEnd,
  },
  candump: { whole: middle(madeCandump(), 0, 80, 40), signals: madeDbc },
  'a numbered trace': { whole: middle(madeTrace(), 3, 83, 40), signals: madeDbc },
  'named records': { whole: middle(madeRecords(), 1, 120, 60) },
  'JSON lines': { whole: middle(madeJson(), 0, 120, 60) },
  'NMEA 0183': { whole: nmea },
  'NMEA 0183 whose sums fit the damage': {
    whole: nmea,
    repair: (text) =>
      text
        .split('\n')
        .map((line) => (/^\$[^$*]+\*/.test(line) ? sentence(line.slice(1).replace(/\*.*$/s, '')) : line))
        .join('\n'),
  },
};

/** How often a byte may be taken at most: to tell the encoding and the format, for the head, for the log itself. */
const mostReadings = 12;

/** Bytes that count how many of them are taken out. */
class CountedBytes extends Uint8Array<ArrayBuffer> {
  taken = 0;

  override subarray(begin?: number, end?: number): Uint8Array<ArrayBuffer> {
    const part = new Uint8Array(this.buffer, this.byteOffset, this.length).subarray(begin, end);
    this.taken += part.length;
    return part;
  }
}

interface Looked {
  /** What is wrong with what came of a damaged log; null where all holds. */
  readonly trouble: string | null;
  /** Whether the log was read, and whether something was said of it. */
  readonly isRead: boolean;
  readonly isDoubted: boolean;
}

function look(
  text: string,
  signals: string | undefined,
  { told = toldSpeeds, withStops = false } = {},
): Looked {
  const plain = bytesOf(text);
  const bytes = new CountedBytes(new ArrayBuffer(plain.length));
  bytes.set(plain);
  const description = signals === undefined ? {} : { signals: { name: 'made.dbc', text: signals } };
  const read = readLog(bytes, { name: 'made', ...description });
  const isRead = read.ok;
  const isDoubted = read.ok && read.table.issues.length > 0;
  const found = (trouble: string | null): Looked => ({ trouble, isRead, isDoubted });
  if (bytes.taken > mostReadings * bytes.length + 100)
    return found(`took ${bytes.taken} of ${bytes.length} bytes`);
  if (!read.ok)
    return found(/^made(\.dbc)? [^\n]+\.$/.test(read.sentence) ? null : `refused with '${read.sentence}'`);
  return found(
    troubleOfTable(read.table, bytes.length) ??
      troubleOfSpeeds(read.table, text, told) ??
      (withStops ? troubleOfStops(read.table) : null),
  );
}

function troubleOfTable(table: ChannelTable, size: number): string | null {
  const { time, channels, issues } = table;
  if (time.length > size || channels.length > 600) return `${time.length} rows of ${channels.length}`;
  for (let i = 0; i < time.length; i += 1)
    if (!(Number.isFinite(time[i]!) && (i === 0 || time[i]! > time[i - 1]!)))
      return `time stands at row ${i}`;
  const odd = channels.find(
    ({ values }) =>
      values.length !== time.length || values.some((v) => !Number.isFinite(v) && !Number.isNaN(v)),
  );
  if (odd !== undefined) return `${odd.name} holds what is no number`;
  const mute = issues.find(({ message, count }) => !message.endsWith('.') || !(count >= 1));
  if (mute !== undefined) return `issue ${mute.code} says '${mute.message}'`;
  return null;
}

function troubleOfStops(table: ChannelTable): string | null {
  for (const stop of findStops(table, { minimumEntrySpeed: 3, minimumDeceleration: 0 })) {
    const bad = Object.entries(stop).find(
      ([, value]) => typeof value === 'number' && !Number.isFinite(value),
    );
    if (bad !== undefined) return `${bad[0]} is ${String(bad[1])}`;
  }
  return null;
}

function troubleOfSpeeds(
  { channels, source }: ChannelTable,
  text: string,
  toldBy: Readonly<Record<string, (text: string) => readonly number[]>>,
): string | null {
  const tell = toldBy[source.format];
  if (tell === undefined) return null;
  const told = tell(text);
  for (const { name, quantity, values } of channels) {
    if (quantity !== 'speed') continue;
    const isTold = (value: number): boolean =>
      name === 'speed from positions'
        ? value >= 0 && value <= 100
        : told.some((speed) => Math.abs(speed - value) <= 1e-9 * Math.max(1, Math.abs(speed)));
    const made = values.find((value) => !Number.isNaN(value) && !isTold(value));
    if (made !== undefined) return `${name} is ${made}, which no whole piece of the file tells`;
  }
  return null;
}

describe('damaged logs of every format but CSV', () => {
  const names = Object.keys(corpora);
  const cases = 700;

  test.each(names)(`${cases} times %s`, (name) => {
    const { whole, signals, repair } = corpora[name]!;
    expect(look(whole, signals)).toEqual({
      trouble: null,
      isRead: true,
      isDoubted: expect.any(Boolean) as boolean,
    });
    let [read, doubted] = [0, 0];
    for (let i = 0; i < cases; i += 1) {
      const random = randomStream(41, `${name}/${i}`);
      const other = corpora[names[random.below(names.length)]!]!.whole;
      const raw = damaged(whole, random, other);
      const text = repair?.(raw) ?? raw;
      const { trouble, isRead, isDoubted } = look(text, signals, { withStops: i % 5 === 0 });
      if (trouble !== null) expect.fail(`case ${i}: ${trouble}\n${text}`);
      if (isRead) read += 1;
      if (isDoubted) doubted += 1;
    }
    console.info(
      `${name}: of ${cases} damaged logs ${read} read, ${doubted} of them with something said; the rest refused`,
    );
    expect(read).toBeGreaterThan(cases / 10);
  });

  test(`${cases} damaged descriptions of a whole CAN log`, () => {
    const { whole } = corpora['candump']!;
    let read = 0;
    for (let i = 0; i < cases; i += 1) {
      const random = randomStream(43, `dbc/${i}`);
      const description = damaged(madeDbc, random, whole);
      const { trouble, isRead } = look(whole, description, { told: {} });
      if (trouble !== null) expect.fail(`case ${i}: ${trouble}\n${description}`);
      if (isRead) read += 1;
    }
    console.info(`of ${cases} logs with a damaged description ${read} read`);
    expect(read).toBeGreaterThan(cases / 10);
  });

  test('every place, by seventeens, at which a log may be cut off', () => {
    let cuts = 0;
    for (const { whole, signals } of Object.values(corpora))
      for (let length = 1; length < whole.length; length += 17) {
        const { trouble } = look(whole.slice(0, length), signals);
        if (trouble !== null) expect.fail(`cut at ${length}: ${trouble}\n${whole.slice(0, length)}`);
        cuts += 1;
      }
    console.info(`${cuts} logs cut off`);
    expect(cuts).toBeGreaterThan(1000);
  });
});
