import { wrenchSetting } from '@standstill/braking';
import { published } from '../published.ts';

const rows = [
  { id: 'a', degrees: 0, setting: 86.96 },
  { id: 'b', degrees: 45, setting: 90.41 },
  { id: 'c', degrees: 90, setting: 100.0 },
  { id: 'd', degrees: 135, setting: 111.87 },
  { id: 'e', degrees: 180, setting: 117.65 },
];

for (const { id, degrees, setting } of rows) {
  published(
    {
      id: `6-17${id}`,
      source: 'tm-9-254',
      quantity: `setting of the wrench, torque 100, wrench 400 mm, adapter 60 mm at ${degrees}°`,
      printed: setting,
      unit: '',
      tolerance: 0.005,
      basis: 'X',
      note: 'The rule was read in the manual, the numbers are made up.',
    },
    () =>
      wrenchSetting({
        torque: 100,
        wrenchLength: 0.4,
        adapterLength: 0.06,
        angle: (degrees * Math.PI) / 180,
      }),
  );
}
