import type { SensorResult } from '@standstill/workshop';
import { expect, it } from 'vitest';
import { sensorTitle, sensorWords } from './sensor-words.ts';

const print = {
  speed: (value: number) => `${value.toFixed(2)} m/s`,
  acceleration: (value: number) => `${value.toFixed(2)} m/s²`,
};
const sensor = (change: Partial<SensorResult>): SensorResult => ({
  channel: 'ax',
  quantity: 'acceleration-forward',
  used: true,
  note: '',
  noise: 0.12,
  noiseOrigin: 'estimated',
  bias: null,
  tilt_rad: null,
  scale: null,
  ...change,
});

it('says noise, bias and tilt in plain words, with where the noise is known from', () => {
  expect(sensorWords(sensor({ bias: 0.2, tilt_rad: 0.0204 }), print)).toBe(
    'its readings scatter by 0.12 m/s² (as the log itself shows); it is off by 0.20 m/s², which is taken out; as if tilted by 1.2°.',
  );
  expect(sensorWords(sensor({ noiseOrigin: 'assumed', bias: -0.3 }), print)).toMatch(
    /\(assumed\).*off by 0\.30/,
  );
});

it('says of a wheel what it was multiplied by, unless that is nothing', () => {
  const wheel = { channel: 'FL', quantity: 'wheel-speed', noise: 0.05 };
  expect(sensorWords(sensor({ ...wheel, scale: 1.012 }), print)).toMatch(/multiplied by 1\.012\.$/);
  expect(sensorWords(sensor({ ...wheel, scale: 1 }), print)).not.toMatch(/multiplied/);
});

it('says why a sensor was not used', () => {
  const unused = sensor({ used: false, noise: null, noiseOrigin: null, note: 'It holds its values.' });
  expect(sensorWords(unused, print)).toBe('not used. It holds its values.');
  expect(sensorTitle(unused)).toBe('“ax”, acceleration along the car');
});
