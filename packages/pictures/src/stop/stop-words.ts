import type { Speaker, StopResult } from '@standstill/workshop';
import { estimateWords, withStandardError } from '../look/estimate-words.ts';

/** By what a stop was taken to begin. */
export const startWords: Readonly<Record<StopResult['startBy'], string>> = {
  'brake-switch': 'brake on, by the brake switch',
  'brake-pressure': 'brake on, by the brake pressure',
  pedal: 'brake on, by the pedal',
  'deceleration-onset': 'start, reckoned back from the deceleration',
};

/** What a stop was, in a sentence. */
export function stopSentence(stop: StopResult, nominalSpeed: number | null, say: Speaker): string {
  const distance = withStandardError(stop.applicationDistance_m, stop.distanceStandardError_m);
  const developed = stop.meanFullyDevelopedDeceleration_m_s2;
  return [
    `From ${say.plain(stop.entrySpeed_m_s, 'speed')} to rest in ${estimateWords(distance, 'stopping-distance', say)} as driven`,
    ...correctedWords(stop, nominalSpeed, say),
    say.central(about(stop.duration_s), 'time'),
    ...(developed === null ? [] : [`fully developed ${say.central(about(developed), 'deceleration')}`]),
  ]
    .join(', ')
    .concat('.');
}

/** Too far from the nominal speed, a corrected distance is no figure to show. */
function correctedWords(stop: StopResult, nominalSpeed: number | null, say: Speaker): string[] {
  const corrected = stop.correctedDistance_m;
  const off = stop.flags.some(
    ({ code, severity }) => code === 'speed-off-nominal' && severity === 'excludes',
  );
  if (corrected === null || nominalSpeed === null || off) return [];
  const distance = withStandardError(corrected, stop.distanceStandardError_m);
  return [
    `that is ${estimateWords(distance, 'stopping-distance', say)} from ${say.plain(nominalSpeed, 'speed')}`,
  ];
}

/** A figure without an error of its own is shown to a twentieth. */
function about(value: number): { value: number; low: number; high: number } {
  return { value, low: value - 0.05, high: value + 0.05 };
}

/** Whether it counts and who said so. */
export function verdictWords({ counted, flags, judgement }: StopResult): string {
  const reasons = flags.map(({ reason }) => reason.replace(/\.$/u, '')).join('; ');
  const noted = reasons === '' ? '' : ` Noted: ${reasons}.`;
  if (judgement !== null) {
    const by = judgement.by === null ? 'by hand' : `by ${judgement.by}`;
    const verb = judgement.verdict === 'rejected' ? 'Rejected' : 'Restored';
    return `${verb} ${by}: ${judgement.reason.replace(/\.$/u, '')}.${noted}`;
  }
  if (!counted) return `Left out: ${reasons}.`;
  return reasons === '' ? 'Counts.' : `Counts.${noted}`;
}
