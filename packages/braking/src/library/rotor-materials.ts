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
  note: 'Grey iron, handbook value; the same in a materials table (read).',
};
const specificHeat: ClassValue = {
  value: 460,
  spread: 20,
  known: 'from memory',
  note: 'Grey iron at room temperature, handbooks give 440 to 500; a materials table (read) has 450 for grade 150, 490 over all.',
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
 * What rotors are made of: grey irons by how well they lead heat, and what is rarer. Aluminum-matrix and carbon-carbon
 * rotors behave differently and are not guessed at.
 *
 * Source: [common-practice], [hecht-1999], [makeitfrom]
 */
export const rotorMaterials = {
  alloyedIron: {
    title: 'Alloyed or fine-grained grey iron',
    density,
    specificHeat,
    specificHeatSlope,
    conductivity: {
      value: 43,
      spread: 4,
      known: 'from memory',
      note: 'Chromium, copper or molybdenum and short flakes for strength cost conductivity; around 100 to 300 °C.',
    },
    emissivity,
  },
  greyIron: {
    title: 'Grey iron',
    density,
    specificHeat,
    specificHeatSlope,
    conductivity: {
      value: 48,
      spread: 5,
      known: 'from memory',
      note: 'Around 100 to 300 °C; falls as the rotor gets hotter. A materials table (read) has 46 for the soft grade 150.',
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
      note: 'More and longer flake graphite leads heat better: four times the flake gives half as much diffusivity again (Hecht 1999, read).',
    },
    emissivity,
  },
  steel: {
    title: 'Steel, hardenable stainless',
    density: { value: 7750, spread: 60, known: 'from memory', note: 'Martensitic stainless steel.' },
    specificHeat: {
      value: 465,
      spread: 20,
      known: 'from memory',
      note: 'At room temperature, handbooks give 450 to 480.',
    },
    specificHeatSlope: {
      value: 0.35,
      spread: 0.12,
      known: 'from memory',
      note: 'To about 620 at 500 °C; the peak near 730 °C is left out.',
    },
    conductivity: {
      value: 26,
      spread: 4,
      known: 'from memory',
      note: 'Stainless with 12 % chromium; plain carbon steel leads about 45 to 50.',
    },
    emissivity: {
      value: 0.6,
      spread: 0.2,
      known: 'from memory',
      note: 'Dull from heat; polished faces far less.',
    },
  },
  carbonCeramic: {
    title: 'Carbon-fiber ceramic composite',
    density: {
      value: 2300,
      spread: 120,
      known: 'from memory',
      note: 'Carbon fiber in silicon carbide, infiltrated with silicon: 2200 to 2450.',
    },
    specificHeat: {
      value: 780,
      spread: 60,
      known: 'from memory',
      note: 'At room temperature; per kilogram more than iron, per rotor less.',
    },
    specificHeatSlope: {
      value: 0.75,
      spread: 0.25,
      known: 'from memory',
      note: 'To about 1200 at 600 °C; a straight line is coarse here.',
    },
    conductivity: {
      value: 30,
      spread: 10,
      known: 'from memory',
      note: 'Across the fibers, 20 to 40; along them 40 to 60. A friction layer on top changes the face.',
    },
    emissivity: {
      value: 0.85,
      spread: 0.08,
      known: 'from memory',
      note: 'Dark and dull. State the mass of the rotor: its hat is another material. Take pads made for it.',
    },
  },
} as const satisfies Readonly<Record<string, RotorMaterial>>;
