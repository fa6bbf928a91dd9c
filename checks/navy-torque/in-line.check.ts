import { wrenchSetting } from '@standstill/braking';
import { published } from '../published.ts';

const inch = 0.0254;
const inchPound = inch * 4.4482216152605;

published(
  {
    id: '6-13',
    source: 'navy-torque',
    quantity: 'setting of the wrench, torque 100 in-lb, wrench 12 in, in-line extension 6 in',
    printed: 66.7,
    unit: 'lbf·in',
    tolerance: 0.05,
    basis: 'R',
  },
  () =>
    wrenchSetting({
      torque: 100 * inchPound,
      wrenchLength: 12 * inch,
      adapterLength: 6 * inch,
      angle: 0,
    }) / inchPound,
);
