import {
  exampleSetUp,
  installedLine,
  installedPoint,
  leastBrakingRate,
  usualPadTemperatures,
  type AxleBrake,
  type SetUp,
} from '@standstill/braking';
import { published } from '../published.ts';

/** The same brake at both axles, with efficiencies that make the fixed split 70 to 30. */
const { frontBrake, frontTire } = exampleSetUp;
const brakeWith = (efficiency: number): AxleBrake => ({
  ...frontBrake,
  caliper: { ...frontBrake.caliper, pushOutPressure: 0, efficiency },
});
const setUp: SetUp = {
  ...exampleSetUp,
  car: {
    ...exampleSetUp.car,
    mass: 1300,
    wheelbase: 2.6,
    centerOfGravityHeight: 0.5,
    frontLoadShare: 800 / 1300,
  },
  frontTire,
  rearTire: frontTire,
  rearValve: { kind: 'none' },
  frontBrake: brakeWith(0.7),
  rearBrake: brakeWith(0.3),
};
const point = () => installedPoint(setUp, installedLine(setUp, usualPadTemperatures), 0.5);
const axles = '800 kg front, 500 kg rear, h 0.5 m, E 2.6 m, forces 70/30, z = 0.50';

published(
  {
    id: '1-35a',
    source: 'un-r13h',
    quantity: `friction used by the front axle, ${axles}`,
    printed: 0.4919,
    unit: '',
    tolerance: 0.0005,
    basis: 'X',
    note: 'Tolerance 0.0005, as the case states it.',
  },
  () => point()?.frontAdhesion ?? 0,
);
published(
  {
    id: '1-35b',
    source: 'un-r13h',
    quantity: `friction used by the rear axle, ${axles}`,
    printed: 0.52,
    unit: '',
    tolerance: 0.0005,
    basis: 'X',
    note: 'Tolerance 0.0005, as the case states it.',
  },
  () => point()?.rearAdhesion ?? 0,
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
