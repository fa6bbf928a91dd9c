import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import type { LogReport } from '../results/log-report.ts';
import { logOf } from './log.testing.ts';
import { logOptionsOf } from './log-options-of.ts';
import { reportLog } from './report-log.ts';

/** The example job with one run, and more lines at its end. */
function jobOf(run: string, more = ''): Job {
  const [head = ''] = exampleJobText.split('\nruns:\n');
  const reading = readJob(`${head}\nruns:\n  - { id: a, setUp: as-found, log: a.csv, ${run} }\n${more}`, {
    file: 'job.yaml',
  });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

describe('how a job has a log read', () => {
  it('is what its run states, in SI, and nothing that is only assumed', () => {
    const job = jobOf(
      'nominalSpeed: 60 mph, grade: 1 %, startTemperature: 180 °F, judgements: [{ at: 3 s, verdict: rejected, reason: A dog., by: Ann }]',
    );
    const options = logOptionsOf(job, job.runs[0] ?? null);
    expect(options.nominalSpeed).toBeCloseTo(26.8224, 9);
    expect(options.grade).toBeCloseTo(0.01, 12);
    expect(options.statedStart).toBeCloseTo(82.222, 3);
    expect(options.judgements).toEqual([{ at: 3, verdict: 'rejected', reason: 'A dog.', by: 'Ann' }]);
    expect(options).not.toHaveProperty('startTemperature');
    expect(options).not.toHaveProperty('remembered');
  });

  it('takes the speed that the job asks about where the run states none', () => {
    const job = jobOf('date: today');
    const { speed } = job.conditions.facts;
    expect(logOptionsOf(job, job.runs[0] ?? null).nominalSpeed).toBe(
      speed.origin === 'assumed' ? undefined : speed.value,
    );
    expect(
      logOptionsOf(
        {
          ...job,
          conditions: {
            ...job.conditions,
            facts: { ...job.conditions.facts, speed: { ...speed, origin: 'assumed' } },
          },
        },
        null,
      ),
    ).toEqual({});
  });
});

describe('a window of start temperatures', () => {
  const window = 'test: { startTemperatureLow: 150 °F, startTemperatureHigh: 212 °F }\n';
  const reported = (run: string, rotor?: number): LogReport => {
    const job = jobOf(run, window);
    const stops = [{ deceleration: 8, ...(rotor === undefined ? {} : { rotor }) }];
    const report = reportLog(
      { name: 'a.csv', content: logOf(stops) },
      logOptionsOf(job, job.runs[0] ?? null),
    );
    if (report.kind !== 'log-report') throw new Error(report.sentence);
    return report;
  };
  const flags = (report: LogReport): readonly string[] =>
    (report.stops[0]?.flags ?? []).flatMap(({ code, severity, reason }) =>
      code === 'start-temperature' ? [`${severity}: ${reason}`] : [],
    );

  it('can not be judged where nobody recorded or wrote a temperature down', () => {
    expect(flags(reported('nominalSpeed: 67 mph'))[0]).toMatch(/^warns: No brake temperature was recorded/);
  });

  it('is met, or doubted, by what a person wrote down', () => {
    expect(flags(reported('nominalSpeed: 67 mph, startTemperature: 180 °F'))).toEqual([]);
    expect(flags(reported('nominalSpeed: 67 mph, startTemperature: 300 °F'))).toEqual([
      'warns: The rotors are stated to have started at 300 °F; 150 °F to 212 °F is wanted.',
    ]);
  });

  it('is not asked of a fade run, whose stops start hotter each time', () => {
    const hot = reported('nominalSpeed: 67 mph, role: fade', 300);
    expect(flags(hot)).toEqual([]);
    expect(hot.stops[0]?.counted).toBe(true);
  });

  it('leaves out a stop whose recorded temperature is outside, whatever is written down', () => {
    const hot = reported('nominalSpeed: 67 mph, startTemperature: 180 °F', 200);
    expect(flags(hot)[0]).toMatch(/^excludes: front rotor temperature .* read 392 °F at the start/);
    expect(hot.stops[0]?.counted).toBe(false);
  });
});
