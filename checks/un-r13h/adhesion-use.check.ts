import { adhesionUse, exampleSetUp, leastBrakingRate, standardGravity, type Car } from '@standstill/braking';
import { published } from '../published.ts';

const weight = 1300 * standardGravity;
const car: Car = {
  ...exampleSetUp.car,
  mass: 1300,
  wheelbase: 2.6,
  centerOfGravityHeight: 0.5,
  frontLoadShare: 800 / 1300,
};
const use = () => adhesionUse({ car, frontForce: 0.7 * 0.5 * weight, rearForce: 0.3 * 0.5 * weight });
const axles = '800 kg front, 500 kg rear, h 0.5 m, E 2.6 m, forces 70/30, z = 0.50';

published(
  {
    id: '1-35a',
    source: 'un-r13h',
    quantity: `friction used by the front axle, ${axles}`,
    printed: 0.4919,
    unit: '',
    tolerance: 0.00005,
    basis: 'X',
  },
  () => use().front,
);
published(
  {
    id: '1-35b',
    source: 'un-r13h',
    quantity: `friction used by the rear axle, ${axles}`,
    printed: 0.52,
    unit: '',
    tolerance: 0.00005,
    basis: 'X',
  },
  () => use().rear,
);

for (const [id, friction, printed] of [
  ['1-37a', 0.2, 0.1],
  ['1-37b', 0.5, 0.31],
  ['1-37c', 0.8, 0.52],
] as const) {
  published(
    {
      id,
      source: 'un-r13h',
      quantity: `least braking rate at k = ${friction}`,
      printed,
      unit: '',
      tolerance: 0.005,
      basis: 'M',
    },
    () => leastBrakingRate(friction),
  );
}
