import type { ClassValue } from './class-value.ts';

export interface RotorMaterial {
  readonly title: string;
  /** ρ, kg/m³. */
  readonly density: ClassValue;
  /** c, J/(kg K) at 20 °C. */
  readonly specificHeat: ClassValue;
  /** J/(kg K²), rise of the specific heat with temperature. */
  readonly specificHeatSlope: ClassValue;
  /** k, W/(m K). */
  readonly conductivity: ClassValue;
  /** ε, 1. */
  readonly emissivity: ClassValue;
}

const density: ClassValue = {
  value: 7200,
  spread: 80,
  known: 'from memory',
  note: 'Grey iron, handbook value.',
};
const specificHeat: ClassValue = {
  value: 460,
  spread: 20,
  known: 'from memory',
  note: 'Grey iron at room temperature, handbooks give 440 to 500.',
};
const specificHeatSlope: ClassValue = {
  value: 0.35,
  spread: 0.1,
  known: 'from memory',
  note: 'Straight line from about 460 at 20 °C to about 630 at 500 °C; the peak near 750 °C is left out.',
};
const emissivity: ClassValue = {
  value: 0.55,
  spread: 0.15,
  known: 'from memory',
  note: 'Oxidized iron; freshly swept faces are shinier, old vents darker.',
};

/**
 * What rotors are made of. Only irons: carbon and aluminum-matrix rotors behave differently and are not guessed at.
 *
 * Source: [common-practice]
 */
export const rotorMaterials = {
  greyIron: {
    title: 'Grey iron',
    density,
    specificHeat,
    specificHeatSlope,
    conductivity: {
      value: 48,
      spread: 5,
      known: 'from memory',
      note: 'Around 100 to 300 °C; falls as the rotor gets hotter.',
    },
    emissivity,
  },
  highCarbonIron: {
    title: 'High-carbon grey iron',
    density: {
      value: 7100,
      spread: 80,
      known: 'from memory',
      note: 'A little lighter for its graphite.',
    },
    specificHeat,
    specificHeatSlope,
    conductivity: {
      value: 54,
      spread: 6,
      known: 'from memory',
      note: 'More flake graphite leads heat better.',
    },
    emissivity,
  },
} as const satisfies Readonly<Record<string, RotorMaterial>>;
