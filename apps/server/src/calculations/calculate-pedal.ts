import { readPedalPoints, reportPedal } from '@standstill/workshop';
import type { ReportPedalOptions } from '@standstill/workshop';
import type { PedalAnswer, PedalTask } from './calculations.ts';
import { ofJob } from './of-job.ts';

/**
 * Says what the pedal of a job document does.
 *
 * @param task - a job document and what to report of its pedal
 * @returns the report, or everything that stands in its way
 */
export function calculatePedal({ document, options }: PedalTask): PedalAnswer {
  const { measured, pedalForce_N: pedalForce, deceleration_m_s2: deceleration, ...rest } = options;
  const reading = measured === undefined ? null : readPedalPoints(measured.points, null);
  if (reading !== null && !reading.ok) return reading;
  const known: ReportPedalOptions = {
    ...rest,
    ...(pedalForce === undefined ? {} : { pedalForce }),
    ...(deceleration === undefined ? {} : { deceleration }),
    ...(measured === undefined || reading === null
      ? {}
      : { measured: { engine: measured.engine, points: reading.points } }),
  };
  return ofJob(document, rest.setUp === undefined ? [] : [rest.setUp], (job) => reportPedal(job, known));
}
