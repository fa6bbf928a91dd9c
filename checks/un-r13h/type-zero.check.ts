import { regulationDistance, steadyDeceleration } from '@standstill/braking';
import { published } from '../published.ts';

for (const [id, test, kilometersPerHour, printed] of [
  ['1-24c', 'r13h-type-0-disconnected', 100, 6.43],
  ['1-25c', 'r13h-type-0-connected', 160, 5.76],
] as const)
  published(
    {
      id,
      source: 'un-r13h',
      quantity: `deceleration that the longest distance of ${test} asks for`,
      printed,
      unit: 'm/s²',
      tolerance: 0.005,
      basis: 'M',
    },
    () => {
      const speed = kilometersPerHour / 3.6;
      const distance = regulationDistance(test, speed);
      return steadyDeceleration({ speed, distance, buildUp: 0.1 * kilometersPerHour });
    },
  );
