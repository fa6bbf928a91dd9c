import type { ReportLogOptions } from '@standstill/workshop';
import type { z } from 'zod';
import type { reportQuery } from './log-schemas.ts';

/**
 * @param query - how a caller wants a log read
 * @returns the same in the workshop's words
 */
export function reportOptions({ speed_m_s: speed, units }: z.infer<typeof reportQuery>): ReportLogOptions {
  return {
    ...(speed === undefined ? {} : { nominalSpeed: speed }),
    ...(units === undefined ? {} : { units }),
  };
}
