import { mcPheeJohnsonVanes } from '@standstill/braking';
import { published } from '../published.ts';

for (const [id, rate_rpm, printed] of [
  ['4-20a', 342, 27],
  ['4-20b', 684, 52.7],
  ['4-20c', 1025, 78.3],
] as const)
  published(
    {
      id,
      source: 'mcphee-2008',
      quantity: `measured coefficient of the vanes at ${rate_rpm} rev/min`,
      printed,
      unit: 'W/(m² K)',
      tolerance: 0.03 * printed,
      basis: 'R',
      evidence: 'transcription',
      note: 'Tolerance 3 %, as the case states it. Our straight line was fitted to these three points: the rows show how well it fits, not that it is right.',
    },
    () => mcPheeJohnsonVanes((rate_rpm * Math.PI) / 30),
  );
