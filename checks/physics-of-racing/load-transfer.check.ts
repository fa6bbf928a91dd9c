import { axleLoads, exampleRoad, exampleSetUp, standardGravity, type Car } from '@standstill/braking';
import { published } from '../published.ts';

const pound = 4.448222;
const car: Car = {
  ...exampleSetUp.car,
  mass: (3200 * pound) / standardGravity,
  wheelbase: 10 * 0.3048,
  centerOfGravityHeight: 0.3048,
};
const front = (deceleration: number) => axleLoads({ car, deceleration, speed: 0, road: exampleRoad }).front;

published(
  {
    id: '3-13',
    source: 'physics-of-racing',
    quantity: 'load carried to the front axle, 3200 lb, h 1 ft, wheelbase 10 ft, 1 g',
    printed: 320,
    unit: 'lb',
    tolerance: 0.5,
    basis: 'M',
  },
  () => (front(standardGravity) - front(0)) / pound,
);
