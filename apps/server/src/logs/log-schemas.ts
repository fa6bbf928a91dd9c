import { logRefusal, logReport } from '@standstill/workshop';
import { z } from 'zod';
import { pictureQuery } from '../proof/picture-request.ts';

/** What is known of a kept log without reading it. */
export const logSummary = z.object({
  id: z.string(),
  jobId: z.string(),
  name: z.string(),
  bytes: z.number().int(),
  /** Hex SHA-256 of the bytes. */
  sha256: z.string(),
  addedAt: z.string(),
});

/** What was found in a log, or in one sentence why nothing could be. */
export const logReading = z.union([logReport, logRefusal]);

/** The answer to an upload: the log is kept either way. */
export const keptLog = logSummary.extend({ report: logReading });

/** A file's own name, without folders. */
const fileName = z
  .string({ error: 'the name of the file, as ?name=before.csv' })
  .min(1, 'the name of the file, as ?name=before.csv')
  .max(200, 'a name of up to 200 characters')
  .regex(/^[^/\\\p{Cc}\p{Surrogate}]+$/u, 'a name without slashes and control characters');

/** Speed that distances are corrected to, m/s. */
const nominalSpeed = z.coerce.number().positive().max(150).exactOptional();
const units = z.enum(['us', 'metric']).exactOptional();

const temperature = z.coerce.number().min(-50).max(800).exactOptional();

export const uploadQuery = z.object({ name: fileName, speed_m_s: nominalSpeed, units });
export const reportQuery = pictureQuery
  .extend({
    speed_m_s: nominalSpeed,
    units,
    /** Window of temperature at the start of a stop; one outside is left out. Both or neither. */
    startTemperatureLow_C: temperature,
    startTemperatureHigh_C: temperature,
    /** Only this stop in the picture. */
    stop: z.coerce.number().int().min(1).max(1_000_000).exactOptional(),
  })
  .refine(
    ({ startTemperatureLow_C: low, startTemperatureHigh_C: high }) =>
      (low === undefined) === (high === undefined),
    {
      error: 'a window with both startTemperatureLow_C and startTemperatureHigh_C',
      path: ['startTemperatureHigh_C'],
    },
  )
  .refine(({ startTemperatureLow_C: low = -50, startTemperatureHigh_C: high = 800 }) => low < high, {
    error: 'a window that ends warmer than it begins',
    path: ['startTemperatureHigh_C'],
  });
export const logParams = z.object({ id: z.string(), logId: z.string() });
