import { halfSpaceFallingFlux, limpertSolidDisc } from '@standstill/braking';
import { published } from '../published.ts';

published(
  {
    id: '4-14',
    source: 'limpert',
    quantity: 'greatest rise of the face in a stop of 3 s from 3 MW/m², by the shortcut √(5/18) q0 √ts / e',
    printed: 212.8,
    unit: 'K',
    tolerance: 0.05,
    basis: 'M',
    expectedDifference: {
      follows: 214.78,
      reason:
        'The shortcut has 0.5270 where the exact solution has 0.5319 = √8 / (3 √π); ours is the exact one, 0.9 % above.',
    },
  },
  () =>
    halfSpaceFallingFlux({
      conductivity: 50,
      density: 7200,
      specificHeat: 460,
      startFlux: 3e6,
      stopTime: 3,
      time: 1.5,
    }),
);

for (const [id, speed, printed] of [
  ['4-23a', 5, 33.3],
  ['4-23b', 10, 48.7],
] as const)
  published(
    {
      id,
      source: 'limpert',
      quantity: `coefficient of a solid disc of 0.30 m at ${speed} m/s; air k 0.0260 W/(m K), ν 1.57e-5 m²/s`,
      printed,
      unit: 'W/(m² K)',
      tolerance: 0.05,
      basis: 'M',
    },
    () => limpertSolidDisc({ diameter: 0.3, speed, airConductivity: 0.026, airViscosity: 1.57e-5 }),
  );
