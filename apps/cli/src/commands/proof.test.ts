import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { comparison, fadeReport, logReport, reconciliation, testPlan } from '@standstill/workshop';
import { runHere } from '../command-here.testing.ts';
import { repository, tooWide, unbroken } from '../standstill.testing.ts';
import { stopsLog } from '../stops-log.testing.ts';

const folder = mkdtempSync(join(tmpdir(), 'standstill-proof-'));
const path = (name: string): string => join(folder, name);
const [before, after, again, fading] = ['before.csv', 'after.csv', 'again.csv', 'fading.csv'].map(path) as [
  string,
  string,
  string,
  string,
];
const demo = join(repository, 'examples/hill-climb-coupe');
beforeAll(() => {
  writeFileSync(before, stopsLog([7.9, 8.0, 8.1, 8.05]));
  writeFileSync(after, stopsLog([8.9, 9.0, 9.1, 9.05]));
  writeFileSync(again, stopsLog([8.0, 7.95, 8.05, 8.1]));
  writeFileSync(fading, stopsLog([9, 8.6, 8.2, 7.8, 7.4, 7.0]));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a stop judged by hand', () => {
  it('stays in the answer with the reason, no longer counts, and can be counted again', async () => {
    const words = ['stops', before, '--speed', '60 mph'] as const;
    const { out, err } = await runHere(...words, '--reject', '2: gust of wind');
    expect(unbroken(out)).toContain('Stop 2, rejected by hand: gust of wind.');
    expect(err).toMatch(/judgements: \[\{ at: [\d.]+ s, verdict: rejected, reason: "gust of wind" \}\]/);
    const json = await runHere(...words, '--reject', '2: gust of wind', '--json');
    const [report] = JSON.parse(json.out) as readonly unknown[];
    const { stops } = logReport.parse(report);
    expect(stops.map(({ counted }) => counted)).toEqual([true, false, true, true]);
    const off = await runHere(
      'stops',
      before,
      '--speed',
      '90 mph',
      '--restore',
      '1: the speed was meant',
      '--json',
    );
    const [restored] = JSON.parse(off.out) as readonly unknown[];
    expect(logReport.parse(restored).stops.map(({ counted }) => counted)).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });

  it.each([
    [
      [before, '--reject', '2'],
      /"2" is not a stop's number with a reason; e\.g\. --reject "2: gust of wind"\./,
    ],
    [[before, '--reject', '9: no'], /before\.csv has no stop 9; it has 1 to 4\./],
    [[before, after, '--restore', '1: no'], /say of which log stop 1 is, as "before\.csv 1: …"/],
    [[before, '--start-temperature', 'warm'], /"warm" is not two temperatures/],
    [[before, '--start-temperature', '212 to 150 °F'], /ends colder than it begins/],
  ])('is refused in one line where %j', async (words, line) => {
    const ended = await runHere('stops', ...words);
    expect(ended).toMatchObject({ code: 2, out: '' });
    expect(ended.err).toMatch(line);
  });
});

describe('a picture', () => {
  it('goes to a file that is not there yet, and over one only where that is said', async () => {
    const svg = path('stops.svg');
    const words = ['stops', before, '--speed', '60 mph', '--svg', svg] as const;
    expect((await runHere(...words)).err).toContain(`The picture is in ${svg}.`);
    const first = readFileSync(svg, 'utf8');
    expect(first).toContain('Stop 4 in before.csv');
    const refused = await runHere(...words);
    expect(refused).toMatchObject({ code: 5, out: '' });
    expect(refused.err).toMatch(
      /there is already such a file, and it stays as it is; --force writes over it\./,
    );
    expect((await runHere(...words, '--force')).code).toBe(0);
    expect(readFileSync(svg, 'utf8')).toBe(first);
    expect((await runHere('stops', before, '--svg', join(folder, 'no', 'x.svg'))).code).toBe(5);
  });
});

describe('compare', () => {
  it('takes the old set-up once more, and draws every run', async () => {
    const svg = path('sets.svg');
    const { code, out } = await runHere(
      'compare',
      before,
      after,
      '--repeat',
      again,
      '--speed',
      '60 mph',
      '--svg',
      svg,
      '--json',
    );
    expect(code).toBe(0);
    const result = comparison.parse(JSON.parse(out));
    expect(result.control?.kind).toBe('repeat');
    expect(result.control?.count).toBe(4);
    expect(readFileSync(svg, 'utf8').match(/<circle/g)?.length).toBe(2 + 8);
    const half = await runHere('compare', before, after, '--reference-before', again);
    expect(half).toMatchObject({ code: 2, out: '' });
  });
});

describe('fade', () => {
  it('says that stops get longer, and by how much each', async () => {
    const { code, out } = await runHere('fade', fading, '--speed', '60 mph');
    expect(code).toBe(0);
    expect(tooWide(out)).toEqual([]);
    const svg = path('fade.svg');
    const json = await runHere(
      'fade',
      fading,
      '--against',
      again,
      '--speed',
      '60 mph',
      '--json',
      '--svg',
      svg,
    );
    const report = fadeReport.parse(JSON.parse(json.out));
    const distances = [9, 8.6, 8.2, 7.8, 7.4, 7.0].map((deceleration) => 26.8224 ** 2 / (2 * deceleration));
    const growth = (distances[5] ?? 0) - (distances[0] ?? 0);
    expect(report.set.growth_m?.low).toBeGreaterThan(0);
    expect(Math.abs((report.set.growth_m?.value ?? 0) - growth)).toBeLessThan(1);
    expect(report.against?.stops).toHaveLength(4);
    expect(readFileSync(svg, 'utf8')).toContain('a stop of fading.csv');
  });

  it('answers no in one line where the stops are too few, and says what it needs', async () => {
    const few = path('few.csv');
    writeFileSync(few, stopsLog([8, 8]));
    expect(await runHere('fade', few)).toMatchObject({ code: 1, out: '' });
    expect(await runHere('fade')).toMatchObject({ code: 2, out: '' });
    const without = await runHere('fade', fading, '--job', demo);
    expect(without).toMatchObject({ code: 2, out: '' });
    expect(without.err).toContain('fade --job needs --set-up');
  });
});

describe('plan', () => {
  it('says how many stops, with cautions before the steps', async () => {
    const words = ['plan', '--resolution', '3 ft', '--spread', '2 ft', '--speed', '60 mph'] as const;
    const { code, out } = await runHere(...words);
    expect(code).toBe(0);
    expect(tooWide(out)).toEqual([]);
    expect(out.indexOf('Caution:')).toBeLessThan(out.indexOf('In this order:'));
    const plan = testPlan.parse(JSON.parse((await runHere(...words, '--json')).out));
    expect(plan).toMatchObject({ spreadOrigin: 'stated', withRepeat: true });
    const alone = testPlan.parse(JSON.parse((await runHere(...words, '--no-repeat', '--json')).out));
    expect(alone.runs.some(({ set }) => set === 'repeat')).toBe(false);
    const from = testPlan.parse(JSON.parse((await runHere('plan', '--from', before, '--json')).out));
    expect(from.spreadOrigin).toBe('measured');
  });

  it.each([
    [['--resolution', '3 lb'], /"3 lb" is a mass/],
    [['--power', '150 %'], /accepted is 50 % to 99 %/],
    [['--spread', '2 ft', '--from', 'x.csv'], /give one of them/],
    [['--set-up', 'kit'], /--set-up needs --job/],
  ])('refuses %j in one line', async (words, line) => {
    const ended = await runHere('plan', ...words);
    expect(ended).toMatchObject({ code: 2, out: '' });
    expect(ended.err).toMatch(line);
  });
});

describe('explain', () => {
  it('takes the logs from the runs of the job, and says what the brakes can explain', async () => {
    const svg = path('expectation.svg');
    const { code, out } = await runHere('explain', demo, '--draws', '100', '--json', '--svg', svg);
    expect(code).toBe(0);
    const result = reconciliation.parse(JSON.parse(out));
    expect(result).toMatchObject({
      before: { setUp: 'as-found' },
      after: { setUp: 'four-wheel-kit-with-valve' },
    });
    expect(result.change?.measured_m?.high).toBeLessThan(0);
    expect(readFileSync(svg, 'utf8')).toContain('Not explained by the brakes');
  });

  it.each([
    [[demo, '--set-up', 'moon-kit'], 2, /the job has no set-up "moon-kit"/],
    [[demo, '--draws', '5'], 2, /--draws: "5" is not a whole number/],
    [[demo, '--after', after], 2, /no log from before the change/],
    [['gone.yaml'], 3, /there is no such file/],
  ])('refuses %j', async (words, code, line) => {
    const ended = await runHere('explain', ...words);
    expect(ended).toMatchObject({ code, out: '' });
    expect(ended.err).toMatch(line);
  });
});
