import type { ReportLogOptions } from '@standstill/workshop';
import type { z } from 'zod';
import type { reportQuery, uploadQuery } from './log-schemas.ts';

/**
 * @param query - how a caller wants a log read
 * @returns the same in the workshop's words
 */
export function reportOptions(
  query: z.infer<typeof reportQuery> | z.infer<typeof uploadQuery>,
): ReportLogOptions {
  const { speed_m_s: speed, units } = query;
  const low = 'startTemperatureLow_C' in query ? query.startTemperatureLow_C : undefined;
  const high = 'startTemperatureHigh_C' in query ? query.startTemperatureHigh_C : undefined;
  return {
    ...(speed === undefined ? {} : { nominalSpeed: speed }),
    ...(units === undefined ? {} : { units }),
    ...(low === undefined || high === undefined ? {} : { startTemperature: { low, high } }),
  };
}
