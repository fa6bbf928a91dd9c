import { boltTorque, proofLoad } from '@standstill/braking';
import { published } from '../published.ts';

const footPound = 0.3048 * 4.4482216152605;
const pitches = { 10: 1.5, 12: 1.75 } as const;

const rows = [
  { id: 'a', diameter: 10, propertyClass: '8.8', dry: 37, oiled: 28 },
  { id: 'b', diameter: 10, propertyClass: '10.9', dry: 53, oiled: 40 },
  { id: 'c', diameter: 12, propertyClass: '8.8', dry: 65, oiled: 49 },
  { id: 'd', diameter: 12, propertyClass: '10.9', dry: 93, oiled: 70 },
] as const;

for (const { id, diameter, propertyClass, ...printed } of rows) {
  for (const [condition, nutFactor] of [
    ['dry', 0.2],
    ['oiled', 0.15],
  ] as const) {
    published(
      {
        id: `6-09${id} ${condition}`,
        source: 'metric-torque-table',
        quantity: `torque of M${diameter}, class ${propertyClass}, at 75 % of the proof load, ${condition} (K = ${nutFactor})`,
        printed: printed[condition],
        unit: 'lbf·ft',
        tolerance: 0.5,
        basis: 'R',
      },
      () => {
        const thread = { diameter: diameter / 1000, pitch: pitches[diameter] / 1000 };
        const preload = 0.75 * proofLoad({ thread, propertyClass });
        return boltTorque({ preload, diameter: thread.diameter, nutFactor }) / footPound;
      },
    );
  }
}
