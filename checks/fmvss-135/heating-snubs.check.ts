import { snubHeat } from '@standstill/braking';
import { published } from '../published.ts';

const heat = () =>
  snubHeat({
    mass: 1600,
    startSpeed: 120 / 3.6,
    endSpeed: 60 / 3.6,
    deceleration: 3,
    interval: 45,
    count: 15,
  });

for (const [letter, what, printed, unit, ours] of [
  ['a', 'heat of one snub', 666.7, 'kJ', () => heat().energyEach / 1e3],
  ['b', 'braking time of one snub', 5.56, 's', () => heat().brakingTime],
  ['c', 'mean power', 14.81, 'kW', () => heat().meanPower / 1e3],
  ['d', 'heat of all snubs', 10, 'MJ', () => heat().energyTotal / 1e6],
] as const)
  published(
    {
      id: `1-17${letter}`,
      source: 'fmvss-135',
      quantity: `${what}, 1600 kg, 15 snubs from 120 to 60 km/h at 3.0 m/s², one every 45 s`,
      printed,
      unit,
      tolerance: 0.001 * printed,
      basis: 'X',
      note: 'Tolerance 0.1 %, as the case states it.',
    },
    ours,
  );
