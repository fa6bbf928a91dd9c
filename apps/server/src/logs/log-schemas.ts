import { logRefusal, logReport } from '@standstill/workshop';
import { z } from 'zod';

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

export const uploadQuery = z.object({ name: fileName, speed_m_s: nominalSpeed, units });
export const reportQuery = z.object({ speed_m_s: nominalSpeed, units });
export const logParams = z.object({ id: z.string(), logId: z.string() });
