import { reasonLeftOut } from '@standstill/logs';
import type { StopFlag } from '@standstill/logs';
import type { StopResult } from '../../results/log-report.ts';

/** Why a reported stop counts in no set, by its flags and by a person's word; null where it counts. */
export function leftOutReason({ flags, judgement }: Pick<StopResult, 'flags' | 'judgement'>): string | null {
  // Reports come from our own reader or through the report's schema.
  return reasonLeftOut({ flags: flags as readonly StopFlag[] }, judgement);
}
