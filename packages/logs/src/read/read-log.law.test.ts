import { randomStream, type RandomStream } from '@standstill/numerics';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findStops } from '../stops/find-stops.ts';
import { bytesOf, madeCsv } from './csv/made-csv.testing.ts';
import { madeNmea } from './nmea/made-nmea.testing.ts';
import { readLog } from './read-log.ts';

const corpus = [
  madeCsv(),
  madeCsv({
    delimiter: ';',
    decimal: ',',
    newline: '\r\n',
    units: ['s', 'km/h', ''],
    header: ['Time', 'Speed', 'n'],
  }),
  madeCsv({ quote: true, preamble: ['made', ''] }),
  madeNmea(43_200).join('\r\n'),
  madeNmea(86_395).join('\n'),
].map(bytesOf);

/** What is wrong with what came of a log: a number that is none, a clock that stands still, a refusal in no sentence. */
function trouble(bytes: Uint8Array): string | null {
  const read = readLog(bytes, { name: 'made' });
  if (!read.ok) return /^made .+\.$/s.test(read.sentence) ? null : `refused with '${read.sentence}'`;
  const { time } = read.table;
  for (let i = 1; i < time.length; i += 1)
    if (!(time[i]! > time[i - 1]!)) return `time stands still in row ${i}`;
  for (const stop of findStops(read.table, { nominalSpeed: 25 })) {
    const bad = Object.entries(stop).find(
      ([, value]) => typeof value === 'number' && !Number.isFinite(value),
    );
    if (bad !== undefined) return `${bad[0]} is ${String(bad[1])}`;
    if (!stop.trace.speed.every(Number.isFinite)) return 'the trace has a gap';
  }
  return null;
}

function mutated(bytes: Uint8Array, random: RandomStream): Uint8Array {
  const changed = Array.from(bytes);
  for (let change = random.below(12) + 1; change > 0 && changed.length > 1; change -= 1) {
    const at = random.below(changed.length);
    const kind = random.below(5);
    if (kind === 0) changed[at] = random.below(256);
    else if (kind === 1) changed.splice(at, random.below(40));
    else if (kind === 2) changed.splice(at, 0, ...changed.slice(at, at + random.below(60)));
    else if (kind === 3) changed[at] = '"\n\r,;.:-0$*'.charCodeAt(random.below(11));
    else changed.length = Math.max(1, at);
  }
  return Uint8Array.from(changed);
}

describe('no input makes the reader throw, hang or give a number that is none', () => {
  const cases = 500;

  test(`${cases} logs with damaged bytes`, () => {
    for (let i = 0; i < cases; i += 1) {
      const random = randomStream(99, `damage/${i}`);
      expect(trouble(mutated(corpus[i % corpus.length]!, random))).toBeNull();
    }
  });

  test('any text, any bytes', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        expect(trouble(bytesOf(text))).toBeNull();
      }),
      { numRuns: 300, seed: 3 },
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(trouble(bytes)).toBeNull();
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  test('tables of odd fields', () => {
    const field = fc.oneof(
      fc.constantFrom(
        '',
        'NA',
        '-',
        '"',
        '1e308',
        '-1e308',
        '0',
        '1:2',
        '99:99:99',
        '2026-02-30T00:00:00',
        'on',
        '∞',
      ),
      fc.double({ noNaN: true }).map(String),
      fc.integer({ min: -50, max: 50 }).map(String),
    );
    const rows = fc.array(fc.array(field, { minLength: 1, maxLength: 4 }), { maxLength: 40 });
    const header = fc.constantFrom(
      'time [s],speed [km/h],brake',
      't,v [m/s]',
      'Time,Speed [mph],x,y',
      'timestamp;v (kn);brake',
    );
    fc.assert(
      fc.property(header, rows, (head, body) => {
        expect(
          trouble(bytesOf([head, ...body.map((row) => row.join(head.includes(';') ? ';' : ','))].join('\n'))),
        ).toBeNull();
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  test('stray quotes on every line take no more than linear time', () => {
    const text = Array.from({ length: 200_000 }, (_, i) => `"${i},20`).join('\n');
    const from = performance.now();
    expect(trouble(bytesOf(`t [s],v [m/s]\n0,1\n1,2\n${text}`))).toBeNull();
    expect(performance.now() - from).toBeLessThan(5000);
  });
});
