import { correctedDistance } from '@standstill/logs';
import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../../job/example-job.testing.ts';
import { readJob } from '../../job/reading/read-job.ts';
import type { LogReport } from '../../results/log-report.ts';
import { madeReport, madeTruth } from '../made-stops.testing.ts';
import { dayKnowns } from '../model/day-knowns.ts';
import { measuredStops } from './measured-stops.ts';

const speed = 60 * 0.44704;
const reading = readJob(exampleJobText, { file: 'job.yaml' });
if (!reading.ok) throw new Error('the example job is not a job');
const { job } = reading;
const made = madeReport(madeTruth(job, ['as-found'], speed, 1), { setUp: 0, stops: 4, seed: 1, delay: 0 });

function withStops(
  change: (stop: LogReport['stops'][number]) => Partial<LogReport['stops'][number]>,
): LogReport {
  return { ...made, stops: made.stops.map((stop) => ({ ...stop, ...change(stop) })) };
}

describe('the stops that the model is held against', () => {
  it('are those that count, with the figures that all of them have', () => {
    const set = measuredStops([made], speed);
    expect(set.places).toEqual([0, 1, 2]);
    expect(set.rows).toHaveLength(4);
    const judged = measuredStops([withStops(({ number }) => ({ counted: number !== 2 }))], speed);
    expect(judged.stops.map(({ number }) => number)).toEqual([1, 3, 4]);
    const gappy = measuredStops(
      [withStops(({ number, buildUpTime_s }) => ({ buildUpTime_s: number === 3 ? null : buildUpTime_s }))],
      speed,
    );
    expect(gappy.places).toEqual([0, 1]);
  });

  it('have a deceleration on level ground where their distance is', () => {
    const grade = 0.03;
    const hill = withStops(({ applicationDistance_m: distance, entrySpeed_m_s: entrySpeed }) => ({
      correctedDistance_m: correctedDistance({ distance, entrySpeed, nominalSpeed: speed, grade }),
    }));
    const [level, driven] = [measuredStops([hill], speed), measuredStops([made], speed)];
    expect([level.isLevel, driven.isLevel]).toEqual([true, false]);
    const byGrade = 9.80665 * Math.sin(Math.atan(grade));
    level.rows.forEach((row, index) => expect(row[1]).toBeCloseTo(driven.rows[index]![1]! - byGrade, 6));
    const grades = [dayKnowns(job, ['as-found'], level), dayKnowns(job, ['as-found'], driven)].map((knowns) =>
      knowns.find(({ path }) => path === 'conditions.grade'),
    );
    expect(grades.map((known) => known?.value)).toEqual([0, job.conditions.facts.grade.value]);
  });

  it('tell how warm the rotors were, by the channels of the brakes alone', () => {
    const warm = withStops(() => ({
      temperatures: [
        { channel: 'Front rotor', start_C: 120, end_C: null },
        { channel: 'Rear rotor', start_C: 100, end_C: null },
        { channel: 'Coolant', start_C: 90, end_C: null },
      ],
    }));
    expect(measuredStops([warm], speed).startTemperature?.value).toBeCloseTo(110, 9);
    expect(measuredStops([made], speed).startTemperature).toBeNull();
  });

  it('begin where most of them do', () => {
    const onset = withStops(({ number }) => ({
      startBy: number < 4 ? 'deceleration-onset' : 'brake-switch',
      startDelayError_s: number < 4 ? 0 : 0.05,
    }));
    const set = measuredStops([onset], speed);
    expect(set.startsAtOnset).toBe(true);
    expect(set.delayError).toBeCloseTo(0.0125, 9);
  });
});
