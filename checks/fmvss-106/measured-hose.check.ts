import { hoseClasses, hoseVolume } from '@standstill/braking';
import { published } from '../published.ts';

/** cc swallowed by a meter of hose. */
function swallowed(kind: 'rubber' | 'rubberLowExpansionLimit', pressure_psi: number): number {
  const { pressures, expansions } = hoseClasses[kind];
  const hose = { length: 1, pressures, expansions: expansions.values };
  return hoseVolume(hose, pressure_psi * 6894.757).volume;
}

for (const [id, pressure, printed] of [
  ['5-06a', 1000, 41],
  ['5-06b', 1500, 36],
  ['5-06c', 2900, 48],
] as const)
  published(
    {
      id,
      source: 'fmvss-106',
      quantity: `measured ordinary rubber hose over the low-expansion limit at ${pressure} psi`,
      printed,
      unit: '%',
      tolerance: 0.5,
      basis: 'R',
      evidence: 'transcription',
    },
    () => (100 * swallowed('rubber', pressure)) / swallowed('rubberLowExpansionLimit', pressure),
  );
