import { describe, expect, it } from 'vitest';
import { readLaps } from './read-laps.ts';

const points = [
  { from: 50, to: 20, next: 25 },
  { from: 40, to: 15, next: 20, deceleration: 9.80665 },
];

function read(text: string, file: string | null = null) {
  const reading = readLaps(text, file);
  return reading.ok
    ? reading.points
    : reading.problems.map(({ line, message }) => `${line ?? '-'}: ${message}`);
}

describe('braking points of a lap', () => {
  it('come typed, with their units', () => {
    expect(read('50 m/s, 20 m/s, 25 s; 144 km/h, 15 m/s, 20 s, 1 g')).toEqual(points);
  });

  it('come as a table with headings', () => {
    const table =
      'from (m/s), to (m/s), next (s), deceleration (g)\n50, 20, 25,\n# a chicane\n40, 15, 20, 1\n';
    expect(read(table, 'laps.csv')).toEqual(points);
  });

  it('come as a YAML list', () => {
    const list =
      '- { from: 50 m/s, to: 20 m/s, next: 25 s }\n- from: 40 m/s\n  to: 15 m/s\n  next: 20 s\n  deceleration: 1 g\n';
    expect(read(list, 'laps.yaml')).toEqual(points);
  });

  it.each([
    ['50 m/s, 20 m/s', 'time to the next braking point'],
    ['50 m/s, 60 m/s, 10 s', 'point 1 does not get slower'],
    ['500 m/s, 20 m/s, 10 s', 'speed before'],
    ['50, 20 m/s, 10 s', 'speed before'],
    ['50 m/s, 20 m/s, 10 s, 1 g, 7', 'column 5'],
    ['', 'there are no braking points'],
  ])('%s is refused in words', (text, words) => {
    const problems = read(text);
    expect(JSON.stringify(problems)).toContain(words);
  });

  it('names the line of a file', () => {
    expect(read('from (m/s), to (m/s), next (s)\n50, 20, 25\n50, 80, 25\n', 'laps.csv')).toEqual([
      '3: point 2 does not get slower',
    ]);
  });
});
