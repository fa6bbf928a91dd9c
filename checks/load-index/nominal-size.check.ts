import { nominalTireSize } from '@standstill/braking';
import { published } from '../published.ts';

const source = 'load-index';
const size = () => nominalTireSize({ width: 0.245, aspectRatio: 0.55, rimDiameter: 18 * 0.0254 });

published(
  {
    id: '7-03a',
    source,
    quantity: 'sidewall of 245/55 R18',
    printed: 134.75,
    unit: 'mm',
    tolerance: 0.005,
    basis: 'R',
  },
  () => 1e3 * size().sidewall,
);
published(
  {
    id: '7-03b',
    source,
    quantity: 'diameter of 245/55 R18',
    printed: 726.7,
    unit: 'mm',
    tolerance: 0.05,
    basis: 'R',
  },
  () => 1e3 * size().outerDiameter,
);
published(
  {
    id: '7-03c',
    source,
    quantity: 'diameter of 245/55 R18',
    printed: 28.6,
    unit: 'in',
    tolerance: 0.05,
    basis: 'R',
  },
  () => size().outerDiameter / 0.0254,
);
published(
  {
    id: '7-04',
    source,
    quantity: 'diameter of 205/55 R16',
    printed: 631.9,
    unit: 'mm',
    tolerance: 0.05,
    basis: 'X',
  },
  () => 1e3 * nominalTireSize({ width: 0.205, aspectRatio: 0.55, rimDiameter: 16 * 0.0254 }).outerDiameter,
);
