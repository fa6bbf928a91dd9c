import { defineUnit } from './define-unit.ts';

/** Frequencies. */
export const frequencyUnits = {
  Hz: defineUnit('Hz', 1, 1, 'hertz', '1/s', 's⁻¹'),
  kHz: defineUnit('kHz', 1000, 1),
};
