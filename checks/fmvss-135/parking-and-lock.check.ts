import { lockSequenceSpeed, slopePull, torqueWheelLine } from '@standstill/braking';
import { published } from '../published.ts';

published(
  {
    id: '1-19a',
    source: 'fmvss-135',
    quantity: 'force along a 20 % grade, 1600 kg',
    printed: 3077,
    unit: 'N',
    tolerance: 0.5,
    basis: 'X',
  },
  () => slopePull({ mass: 1600, grade: 0.2 }),
);
published(
  {
    id: '1-19b',
    source: 'fmvss-135',
    quantity: 'angle of a 20 % grade, from the pull of 1600 kg on it over its weight',
    printed: 11.31,
    unit: '°',
    tolerance: 0.005,
    basis: 'X',
  },
  () => (Math.asin(slopePull({ mass: 1600, grade: 0.2 }) / (1600 * 9.80665)) * 180) / Math.PI,
);

for (const [id, ratio, printed] of [
  ['1-21a', 0.5, 65],
  ['1-21b', 0.51, 100],
] as const)
  published(
    {
      id,
      source: 'fmvss-135',
      quantity: `speed of the wheel-lock sequence test at a braking ratio of ${ratio}`,
      printed,
      unit: 'km/h',
      tolerance: 0.5,
      basis: 'M',
      evidence: 'transcription',
    },
    () => lockSequenceSpeed(ratio) * 3.6,
  );

published(
  {
    id: '1-22',
    source: 'fmvss-135',
    quantity:
      'deceleration over the friction that the rear axle may use at 0.45 g where wheel torque is measured',
    printed: 0.9,
    unit: '',
    tolerance: 0.05,
    basis: 'M',
    evidence: 'transcription',
  },
  () => 0.45 / torqueWheelLine(0.45),
);
