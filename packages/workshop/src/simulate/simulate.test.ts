import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { simulationReport } from '../results/simulation-report.ts';
import { simulate } from './simulate.ts';

const reading = readJob(exampleJobText, { file: 'job.yaml' });
if (!reading.ok) throw new Error('the example job is not a job');
const { job } = reading;
const report = simulate(job, { draws: 12, seed: 3, trace: true });
const [first] = report.setUps;

describe('simulate', () => {
  it('answers in the published shape, with intervals around every uncertain number', () => {
    expect(simulationReport.parse(report)).toEqual(report);
    expect(report.setUps.length).toBe(job.setUps.length);
    for (const one of report.setUps) {
      for (const estimate of [one.distance_m, one.time_s, one.efficiency, one.frontPeakTemperature_degC]) {
        expect(estimate.high).toBeGreaterThan(estimate.low);
        expect(estimate.value).toBeGreaterThanOrEqual(estimate.low);
        expect(estimate.value).toBeLessThanOrEqual(estimate.high);
      }
      expect(one.efficiency.value).toBeLessThan(1);
    }
    expect(report.sentence).toContain(first?.sentence ?? 'a sentence');
    expect(report.differences).toHaveLength(report.setUps.length - 1);
  });

  it('gives the same answer for the same seed, and another for another', () => {
    expect(simulate(job, { draws: 12, seed: 3, trace: true })).toEqual(report);
    const other = simulate(job, { draws: 12, seed: 4, setUps: [first?.id ?? ''] });
    expect(other.setUps[0]?.distance_m.low).not.toBe(first?.distance_m.low);
    expect(other.setUps[0]?.trace).toBeNull();
  });

  it('books what the car had to a ten-thousandth', () => {
    for (const { energies_J } of report.setUps) {
      const { kineticIn, ...ways } = energies_J;
      const found = Object.values(ways).reduce((sum, joule) => sum + joule, 0);
      expect(Math.abs(found / kineticIn - 1)).toBeLessThan(1e-4);
    }
  });

  it('has a trace where one is asked for, that ends at the distance and at rest', () => {
    const trace = first?.trace ?? null;
    expect(trace).not.toBeNull();
    if (trace === null) return;
    expect(trace.speed_m_s.at(-1)).toBeLessThan(1e-6);
    expect(trace.slip).toHaveLength(4);
    for (const wheel of trace.slip) expect(wheel).toHaveLength(trace.time_s.length);
  });

  it('lets the foot seek a deceleration and come close to it', () => {
    const { setUps } = simulate(job, { draws: 4, deceleration: 3, setUps: [first?.id ?? ''] });
    expect(setUps[0]?.meanFullyDevelopedDeceleration_m_s2.value).toBeCloseTo(3, 1);
    expect(setUps[0]?.quickDistance_m).toBeNull();
  });

  it('refuses a deceleration that no foot seeks', () => {
    expect(() => simulate(job, { deceleration: 40 })).toThrow('deceleration wanted');
  });
});
