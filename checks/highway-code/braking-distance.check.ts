import { idealStop } from '@standstill/braking';
import { published } from '../published.ts';

/** The table's rule, mph²/20 in feet, is one deceleration for all speeds: 0.669 g, as the case states it. */
const distance = (speed_mph: number) => idealStop({ speed: speed_mph * 0.44704, friction: 0.669 }).distance;
const shared = { source: 'highway-code', tolerance: 0.5, basis: 'R' } as const;

for (const [letter, speed, feet, meters] of [
  ['a', 20, 20, 6],
  ['b', 30, 45, 14],
  ['c', 40, 80, 24],
  ['d', 60, 180, 55],
] as const) {
  const quantity = `typical braking distance from ${speed} mph, at 0.669 g`;
  published(
    { ...shared, id: `1-47${letter}`, quantity, printed: feet, unit: 'ft' },
    () => distance(speed) / 0.3048,
  );
  published({ ...shared, id: `1-47${letter}m`, quantity, printed: meters, unit: 'm' }, () => distance(speed));
}
