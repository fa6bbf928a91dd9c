import { vacuumAtAltitude } from '@standstill/braking';
import { published } from '../published.ts';

/** A pump that draws all of the air: what is left of its vacuum is the ambient pressure itself. */
const pressureAt = (altitude: number): number => vacuumAtAltitude({ seaLevelVacuum: 101_325, altitude });

const rows = [
  { altitude: 1000, printed: 898.746 },
  { altitude: 2000, printed: 794.952 },
  { altitude: 3000, printed: 701.085 },
  { altitude: 5000, printed: 540.199 },
];

for (const { altitude, printed } of rows) {
  published(
    {
      id: `table ${altitude}`,
      source: 'standard-atmosphere',
      quantity: `ambient pressure at ${altitude} m, of which a booster can have its share`,
      printed,
      unit: 'hPa',
      tolerance: 0.0005,
      basis: 'M',
      note: 'Over geopotential altitude.',
    },
    () => pressureAt(altitude) / 100,
  );
}
