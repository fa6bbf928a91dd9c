import { highSpeedTestSpeed, leastHotDeceleration } from '@standstill/braking';
import { published } from '../published.ts';

const source = 'fmvss-135';
const note = 'Our code holds the share itself.';

published(
  {
    id: '1-05',
    source,
    quantity: 'speed of the high-speed test of a car that runs 190 km/h',
    printed: 152,
    unit: 'km/h',
    tolerance: 0.5,
    basis: 'M',
    evidence: 'transcription',
    note,
  },
  () => 3.6 * (highSpeedTestSpeed(190 / 3.6) ?? NaN),
);
published(
  {
    id: '1-10',
    source,
    quantity: 'least hot deceleration after a best cold stop of 9.0 m/s²',
    printed: 5.4,
    unit: 'm/s²',
    tolerance: 0.005,
    basis: 'R',
    evidence: 'transcription',
    note,
  },
  () => leastHotDeceleration(9),
);
