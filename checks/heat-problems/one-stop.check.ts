import { kineticEnergy, lumpedRise } from '@standstill/braking';
import { published } from '../published.ts';

interface Problem {
  readonly id: string;
  readonly car: { readonly mass: number; readonly speed: number };
  readonly iron: { readonly mass: number; readonly specificHeat: number };
  readonly energy_kJ: readonly [printed: number, tolerance: number];
  readonly rise: readonly [printed: number, tolerance: number];
  readonly basis: 'R' | 'X';
}

const problems: readonly Problem[] = [
  {
    id: '4-01',
    car: { mass: 750, speed: 23 },
    iron: { mass: 15, specificHeat: 450 },
    energy_kJ: [198.4, 0.05],
    rise: [29.4, 0.05],
    basis: 'R',
  },
  {
    id: '4-02',
    car: { mass: 750, speed: 24 },
    iron: { mass: 15, specificHeat: 450 },
    energy_kJ: [216, 0.5],
    rise: [32, 0.5],
    basis: 'R',
  },
  {
    id: '4-04',
    car: { mass: 1500, speed: 30 },
    iron: { mass: 4 * 8, specificHeat: 448 },
    energy_kJ: [675, 0.5],
    rise: [47.1, 0.05],
    basis: 'X',
  },
];

for (const { id, car, iron, energy_kJ, rise, basis } of problems) {
  const energy = () => kineticEnergy({ mass: car.mass, startSpeed: car.speed, endSpeed: 0 });
  const inputs = `${car.mass} kg at ${car.speed} m/s, ${iron.mass} kg of iron of ${iron.specificHeat} J/(kg K)`;
  published(
    {
      id: `${id}a`,
      source: 'heat-problems',
      quantity: `energy given up, ${inputs}`,
      printed: energy_kJ[0],
      unit: 'kJ',
      tolerance: energy_kJ[1],
      basis,
    },
    () => energy() / 1000,
  );
  published(
    {
      id: `${id}b`,
      source: 'heat-problems',
      quantity: `rise in one stop, ${inputs}`,
      printed: rise[0],
      unit: 'K',
      tolerance: rise[1],
      basis,
    },
    () => lumpedRise({ energy: energy(), ...iron }),
  );
}
