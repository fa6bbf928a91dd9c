import { exampleSetUp, peakFriction, tireClasses } from '@standstill/braking';
import { publishedBand } from '../published.ts';

for (const [letter, name] of [
  ['a', 'road'],
  ['b', 'sportyRoad'],
  ['c', 'semiSlick'],
] as const) {
  const tireClass = tireClasses[name];
  const tire = {
    ...exampleSetUp.frontTire,
    peakFriction: tireClass.peakFriction.value,
    nominalLoad: tireClass.nominalLoad.value,
    loadSensitivity: tireClass.loadSensitivity.value,
  };
  const friction = (load: number) => peakFriction({ tire, load, surfaceFactor: 1 });
  publishedBand(
    {
      id: `8-14${letter}`,
      source: 'pacejka',
      quantity: `peak friction lost when the load doubles, class "${tireClass.title}"`,
      low: 5,
      high: 15,
      unit: '%',
      basis: 'M',
      note: 'The default of the class was chosen within this band: the row shows that the power law turns it into this size.',
    },
    () => 100 * (1 - friction(6000) / friction(3000)),
  );
}
