import { constantDecelerationStop, kineticEnergy, lumpedRise, standardGravity } from '@standstill/braking';
import { published } from '../published.ts';

const speed = 134 / 3.6;
const deceleration = 0.81 * standardGravity;
const energy = () => kineticEnergy({ mass: 1700, startSpeed: speed, endSpeed: 0 });
const stop = () => constantDecelerationStop({ speed, deceleration });
/** J/(kg K) that the printed rise of the ring of 6.0 kg implies; the other ring is then a test of the share. */
const specificHeat = 549;
const rise = (mass: number) => lumpedRise({ energy: 0.35 * energy(), mass, specificHeat });

for (const [letter, quantity, printed, unit, tolerance, ours] of [
  ['a', 'energy given up, 1700 kg from 134 km/h', 1178, 'kJ', 0.5, () => energy() / 1e3],
  ['b', 'distance from 134 km/h at 0.81 g', 87.2, 'm', 0.05, () => stop().brakingDistance],
  ['c', 'time of that stop', 4.69, 's', 0.005, () => stop().brakingTime],
  ['d', 'rise of a front ring of 5.5 kg that takes 35 % of it', 137, 'K', 0.5, () => rise(5.5)],
] as const)
  published(
    {
      id: `4-06${letter}`,
      source: 'vizit-2017',
      quantity,
      printed,
      unit,
      tolerance,
      basis: 'R',
      ...(letter === 'd'
        ? {
            note: 'Specific heat 549 J/(kg K), as the rise of 125 K printed for a ring of 6.0 kg implies; 500 would give 150 K.',
          }
        : {}),
    },
    ours,
  );
