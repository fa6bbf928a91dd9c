import { expect, test } from 'vitest';
import type { FindOptions } from '../../stops/find-options.ts';
import type { FoundStop } from '../../stops/found-stop.ts';
import { bytesOf } from '../csv/made-csv.testing.ts';
import type { LogRefusal } from '../log-refusal.ts';
import type { LogScan } from './log-scan.ts';
import { madeDriveCsv, type DriveShape } from './made-drive.testing.ts';
import { scanLog } from './scan-log.ts';
import { scanSections } from './scan-sections.ts';

function scanOf(scan: LogScan | LogRefusal): LogScan {
  if (!scan.ok) throw new Error(scan.sentence);
  return scan;
}

/** Figures of a stop by name, those of its trace too. */
function figures(stop: FoundStop): readonly (readonly [string, number])[] {
  const plain = Object.entries(stop).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number',
  );
  const trace = Object.entries(stop.trace).flatMap(([name, values]) =>
    Array.from(values as Float64Array, (value, index) => [`${name} ${index}`, value] as const),
  );
  return [...plain, ...trace];
}

function worstDifference(one: FoundStop, other: FoundStop): { name: string; difference: number } {
  const others = figures(other);
  expect(others.map(([name]) => name)).toEqual(figures(one).map(([name]) => name));
  return figures(one)
    .map(([name, value], index) => ({
      name,
      difference: Math.abs(value - others[index]![1]) / Math.max(1, Math.abs(value)),
    }))
    .reduce((worst, next) => (next.difference > worst.difference ? next : worst));
}

/** A drive with damage in it, read at once and in sections. */
function readBoth(
  shape: DriveShape,
  sectionRows: number,
  more: FindOptions,
): { whole: LogScan; parts: LogScan } {
  const lines = madeDriveCsv(shape).split('\n');
  lines.splice(9000, 0, '1,2', 'x,y,z,w', '"a","b"');
  lines.splice(15_000, 300);
  const bytes = bytesOf(lines.join('\n'));
  const options = { name: 'made', nominalSpeed: 26, ...more };
  return {
    whole: scanOf(scanLog(bytes, options)),
    parts: scanOf(scanSections(bytes, { ...options, sectionRows })),
  };
}

const sizes = [5000, 7777];

test.each(sizes)('sections of %i rows show what the whole log shows', (sectionRows) => {
  for (let seed = 1; seed <= 4; seed += 1) {
    // Steps of a power of two, so that no rounding tells one section's usual step from another's.
    const clock = (seconds: number): string => new Date(1.7e12 + 1000 * seconds).toISOString();
    const { whole, parts } = readBoth(
      { seed, ...(seed % 2 === 0 ? { rate: 8, length: 3000, clock } : { rate: 16, length: 1500 }) },
      sectionRows,
      { sensorNoise: { speed: 0.02 } },
    );
    expect(parts.issues.some(({ code }) => code === 'read-in-sections')).toBe(true);
    expect(parts.issues.filter(({ code }) => code !== 'read-in-sections')).toEqual(whole.issues);
    expect(whole.stops.length).toBeGreaterThan(10);
    const { stops, issues: _issues, ...summary } = parts;
    expect(whole).toMatchObject(summary);
    expect(stops.map(({ number, clock: at, startBy, flags }) => ({ number, at, startBy, flags }))).toEqual(
      whole.stops.map(({ number, clock: at, startBy, flags }) => ({ number, at, startBy, flags })),
    );
    stops.forEach((stop, index) => {
      const worst = worstDifference(whole.stops[index]!, stop);
      expect(worst.difference, `seed ${seed}, stop ${stop.number}, ${worst.name}`).toBeLessThan(1e-9);
    });
  }
});

test.each(sizes)(
  'where the noise is estimated in sections of %i rows, figures stay far within their errors',
  (sectionRows) => {
    for (let seed = 5; seed <= 7; seed += 1) {
      const { whole, parts } = readBoth({ seed, length: 1500, rate: 20, noise: 0.05 }, sectionRows, {});
      expect(parts.stops.map(({ number, startBy }) => ({ number, startBy }))).toEqual(
        whole.stops.map(({ number, startBy }) => ({ number, startBy })),
      );
      parts.stops.forEach((stop, index) => {
        const other = whole.stops[index]!;
        const difference = Math.abs(stop.applicationDistance - other.applicationDistance);
        expect(difference, `stop ${stop.number}`).toBeLessThan(0.2 * other.distanceStandardError);
        expect(stop.distanceStandardError / other.distanceStandardError).toBeCloseTo(1, 1);
      });
    }
  },
);
