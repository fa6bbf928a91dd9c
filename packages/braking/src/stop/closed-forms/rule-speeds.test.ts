import { expect, it } from 'vitest';
import { highSpeedTestSpeed } from './high-speed-test-speed.ts';
import { leastHotDeceleration } from './least-hot-deceleration.ts';

it('runs no high-speed test up to 125 km/h, at 80 % up to 200, at 160 above', () => {
  const perHour = (topSpeed: number) => {
    const speed = highSpeedTestSpeed(topSpeed / 3.6);
    return speed === null ? null : Number((3.6 * speed).toFixed(9));
  };
  expect([120, 125, 126, 190, 200, 210, 300].map(perHour)).toEqual([null, null, 100.8, 152, 160, 160, 160]);
  expect(() => highSpeedTestSpeed(-1)).toThrow('top speed');
});

it('asks hot brakes for 60 % of the cold stop', () => {
  expect(leastHotDeceleration(10)).toBe(6);
  expect(() => leastHotDeceleration(Number.NaN)).toThrow('cold deceleration');
});
