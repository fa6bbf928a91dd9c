import { driverLimits } from '@standstill/braking';
import { fromUnit } from '@standstill/units';
import { published } from '../published.ts';

const { low, high } = driverLimits.weakDriverForce;
for (const [id, pounds, printed, ours] of [
  ['10-08a', 70, 311, low],
  ['10-08b', 100, 445, high],
] as const) {
  published(
    {
      id,
      source: 'mortimer-1974',
      quantity: `${pounds} lbf, what a weak driver gives, in newtons`,
      printed,
      unit: 'N',
      tolerance: 0.5,
      basis: 'M',
    },
    () => fromUnit(pounds, 'lbf', 'force'),
  );
  published(
    {
      id: `${id}-held`,
      source: 'mortimer-1974',
      quantity: `force of a weak driver as held here, of ${pounds} lbf`,
      printed,
      unit: 'N',
      tolerance: 0.5,
      basis: 'M',
      evidence: 'transcription',
    },
    () => ours,
  );
}
