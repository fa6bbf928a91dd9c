import { wrenchSetting } from '@standstill/braking';
import { published } from '../published.ts';

const inch = 0.0254;
const inchPound = inch * 4.4482216152605;

published(
  {
    id: '6-14',
    source: 'tm-1-1500',
    quantity: 'setting of the wrench, torque 300 in-lb, wrench 10 in, in-line adapter 4 in',
    printed: 214,
    unit: 'lbf·in',
    tolerance: 0.5,
    basis: 'R',
  },
  () =>
    wrenchSetting({
      torque: 300 * inchPound,
      wrenchLength: 10 * inch,
      adapterLength: 4 * inch,
      angle: 0,
    }) / inchPound,
);
