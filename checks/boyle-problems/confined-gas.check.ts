import { compressedAir } from '@standstill/braking';
import { published } from '../published.ts';

/** What is left of an air volume at 1 atm once it is squeezed to a multiple of its absolute pressure, slowly. */
function leftOf(volume: number, ratio: number): number {
  return volume - compressedAir({ volume, pressure: (ratio - 1) * 101_325 });
}

published(
  {
    id: 'confined',
    source: 'boyle-problems',
    quantity: 'volume of 120 L of gas at 93.3 kPa once it is confined under 373.2 kPa',
    printed: 30.0,
    unit: 'L',
    tolerance: 0.05,
    basis: 'R',
    note: 'The exercise asks for the pressure; the ratio of the pressures is what counts, ours starts at 1 atm, at a thousandth of the volume.',
  },
  () => 1e6 * leftOf(120e-6, 373.2 / 93.3),
);
published(
  {
    id: 'standard',
    source: 'boyle-problems',
    quantity: 'pressure ratio that brings 405 L back to 385 L, as 106.6 kPa over standard pressure',
    printed: 385,
    unit: 'L',
    tolerance: 0.5,
    basis: 'R',
  },
  () => 1e6 * leftOf(405.14e-6, 106.6 / 101.3),
);
