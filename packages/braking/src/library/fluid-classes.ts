import type { ClassValue } from './class-value.ts';

export interface FluidClass {
  readonly title: string;
  /** °C. */
  readonly dryBoilingPoint: ClassValue;
  /** °C, at 3.7 % water by volume. */
  readonly wetBoilingPoint: ClassValue;
  /** B, Pa, isothermal, at working temperature. */
  readonly bulkModulus: ClassValue;
  /** Share of water by volume, 1, taken up in a year in a car. */
  readonly waterPerYear: ClassValue;
}

const bulkModulus: ClassValue = {
  value: 1.7e9,
  spread: 0.2e9,
  known: 'from memory',
  note: 'Handbook band 1.3 to 2.2 GPa for glycol fluids from 20 to 100 °C; falls with temperature.',
};

const waterPerYear: ClassValue = {
  value: 0.014,
  spread: 0.006,
  known: 'from memory',
  note: 'Glycol fluid in a car takes up 1 to 2 % of water a year through hoses and cap; damp places and track heat more.',
};

function leastBoilingPoint(value: number): ClassValue {
  return {
    value,
    spread: 0,
    known: 'read',
    note: 'The least that FMVSS 116 allows for the class; a fresh fluid meets or beats it, an old one falls below its dry figure.',
  };
}

function leastOfLowViscosity(value: number): ClassValue {
  return {
    value,
    spread: 0,
    known: 'from memory',
    note: 'The least that ISO 4925 allows for its class 6, which is sold as DOT 4 of low viscosity.',
  };
}

/**
 * Glycol brake fluids by class. They may meet each other and are then rated as the lowest. Silicone fluid (DOT 5) is
 * apart, as `siliconeFluid`: it never goes into the same system, and no job takes it.
 *
 * Source: [fmvss-116], [iso-4925]
 */
export const fluidClasses = {
  dot3: {
    title: 'DOT 3',
    dryBoilingPoint: leastBoilingPoint(205),
    wetBoilingPoint: leastBoilingPoint(140),
    bulkModulus,
    waterPerYear,
  },
  dot4: {
    title: 'DOT 4',
    dryBoilingPoint: leastBoilingPoint(230),
    wetBoilingPoint: leastBoilingPoint(155),
    bulkModulus,
    waterPerYear,
  },
  dot4LowViscosity: {
    title: 'DOT 4 of low viscosity',
    dryBoilingPoint: leastOfLowViscosity(250),
    wetBoilingPoint: leastOfLowViscosity(165),
    bulkModulus,
    waterPerYear,
  },
  dot51: {
    title: 'DOT 5.1',
    dryBoilingPoint: leastBoilingPoint(260),
    wetBoilingPoint: leastBoilingPoint(180),
    bulkModulus,
    waterPerYear,
  },
} as const satisfies Readonly<Record<string, FluidClass>>;

/**
 * Silicone brake fluid (DOT 5), for the record: what it holds and how soft it is. It is not modeled, since the air that
 * it dissolves comes and goes with pressure and heat, and it must never meet a glycol fluid.
 *
 * Source: [fmvss-116], [sae-j1705]
 */
export const siliconeFluid = {
  title: 'DOT 5 (silicone; no job takes it)',
  dryBoilingPoint: leastBoilingPoint(260),
  wetBoilingPoint: leastBoilingPoint(180),
  bulkModulus: {
    value: 1.0e9,
    spread: 0.2e9,
    known: 'from memory',
    note: 'About half as stiff as glycol fluid even without air; 16 % of dissolved air by volume at room condition against 5 % (SAE J1705, read) makes the pedal softer still.',
  },
  waterPerYear: {
    value: 0,
    spread: 0,
    known: 'from memory',
    note: 'Takes up next to no water; what gets in stays as drops, and boils or freezes.',
  },
} as const satisfies FluidClass;
