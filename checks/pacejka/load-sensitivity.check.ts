import { exampleSetUp, peakFriction, tireClasses } from '@standstill/braking';
import { published } from '../published.ts';

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
  published(
    {
      id: `8-14${letter}`,
      source: 'pacejka',
      quantity: `peak friction lost when the load doubles, class "${tireClass.title}"`,
      printed: 10,
      unit: '%',
      tolerance: 5,
      basis: 'M',
      note: 'The source gives an order of size, 5 to 15 %; printed here as its middle with half its width.',
    },
    () => 100 * (1 - friction(6000) / friction(3000)),
  );
}
