import type { ClassCurve, ClassValue } from './class-value.ts';

export interface PadClass {
  readonly title: string;
  /** °C, interface temperatures of the friction table. */
  readonly frictionTemperatures: readonly number[];
  /** μ at those temperatures, 1. */
  readonly frictions: ClassCurve;
  /** m/Pa, squeeze of one pad per face pressure. */
  readonly compressibility: ClassValue;
  /** J/(kg K). */
  readonly specificHeat: ClassValue;
  /** W/(m K). */
  readonly conductivity: ClassValue;
  /** kg/m³. */
  readonly density: ClassValue;
  /** W/(m² K), between the pad's face and the rotor's while pressed. */
  readonly contactConductance: ClassValue;
  /** W/(m² K) of piston area, from the plate through shim and rim into the piston. */
  readonly plateConductance: ClassValue;
}

const temperatures: readonly number[] = [20, 100, 200, 300, 400, 500, 600, 700];

function frictionCurve(...values: readonly number[]): ClassCurve {
  return {
    values,
    factorSpread: 0.1,
    known: 'common practice',
    note: 'Shape and level from common practice, bedded pads; no published curve stands behind it. Pads of one class differ by the spread and more.',
  };
}

function compressibility(value: number): ClassValue {
  return {
    value,
    spread: 0.35 * value,
    known: 'from memory',
    note: 'Cold pad with shim, order of size of a few hundredths of a millimeter at 5 MPa on the face.',
  };
}

const specificHeat: ClassValue = {
  value: 1000,
  spread: 120,
  known: 'from memory',
  note: 'Friction material with some metal.',
};
const conductivity: ClassValue = {
  value: 1.5,
  spread: 0.7,
  known: 'from memory',
  note: 'From about 0.6 (organic) to 5 (metallic).',
};
const density: ClassValue = { value: 2500, spread: 300, known: 'from memory', note: 'Friction material.' };

const contactConductance: ClassValue = {
  value: 10_000,
  spread: 5000,
  known: 'from memory',
  note: 'Pressed rough faces pass some thousand to some ten thousand; above a few thousand the pad itself is the bottleneck.',
};
const plateConductance: ClassValue = {
  value: 1500,
  spread: 700,
  known: 'from memory',
  note: 'A rim that covers about half of the piston, dry metal contact through a shim; an insulating shim passes far less.',
};

/** The same for all mixes of the trade: no published curve was found. */
const bedded = { specificHeat, contactConductance, plateConductance };

function conductivityOf(value: number, spread: number, note: string): ClassValue {
  return { value, spread, known: 'from memory', note };
}

function densityOf(value: number, spread: number, note: string): ClassValue {
  return { value, spread, known: 'from memory', note };
}

/**
 * Brake pads by class: friction over interface temperature, squeeze and heat properties. `road`, `fastRoad` and `track`
 * are by use; the others by what the trade calls the mix.
 *
 * Source: [common-practice]
 */
export const padClasses = {
  road: {
    title: 'Road pad',
    frictionTemperatures: temperatures,
    frictions: frictionCurve(0.36, 0.4, 0.41, 0.39, 0.34, 0.27, 0.21, 0.18),
    compressibility: compressibility(1.2e-11),
    specificHeat,
    conductivity,
    density,
    contactConductance,
    plateConductance,
  },
  fastRoad: {
    title: 'Fast-road pad',
    frictionTemperatures: temperatures,
    frictions: frictionCurve(0.37, 0.42, 0.44, 0.44, 0.42, 0.38, 0.31, 0.25),
    compressibility: compressibility(9e-12),
    specificHeat,
    conductivity,
    density,
    contactConductance,
    plateConductance,
  },
  track: {
    title: 'Track pad',
    frictionTemperatures: temperatures,
    frictions: frictionCurve(0.3, 0.37, 0.44, 0.47, 0.48, 0.48, 0.46, 0.42),
    compressibility: compressibility(7e-12),
    specificHeat,
    conductivity: {
      value: 3,
      spread: 1.2,
      known: 'from memory',
      note: 'Semi-metallic and sintered pads lead more heat.',
    },
    density: { value: 2900, spread: 350, known: 'from memory', note: 'More metal in the mix.' },
    contactConductance,
    plateConductance,
  },
  organic: {
    ...bedded,
    title: 'Organic pad (no metal)',
    frictionTemperatures: temperatures,
    frictions: frictionCurve(0.36, 0.38, 0.38, 0.34, 0.28, 0.22, 0.17, 0.15),
    compressibility: compressibility(1.5e-11),
    conductivity: conductivityOf(0.8, 0.3, 'Fibers, fillers and resin; 0.5 to 1.2.'),
    density: densityOf(2100, 200, 'Next to no metal.'),
  },
  ceramicType: {
    ...bedded,
    title: 'Ceramic-type pad for iron rotors',
    frictionTemperatures: temperatures,
    frictions: frictionCurve(0.37, 0.39, 0.4, 0.38, 0.34, 0.28, 0.22, 0.19),
    compressibility: compressibility(1.3e-11),
    conductivity: conductivityOf(1.2, 0.5, 'Mineral fibers and some copper or none; 0.7 to 2.'),
    density: densityOf(2400, 200, 'Organic mix with mineral fibers; quiet and clean rather than strong.'),
  },
  lowMetal: {
    ...bedded,
    title: 'Low-metallic pad',
    frictionTemperatures: temperatures,
    frictions: frictionCurve(0.38, 0.43, 0.44, 0.42, 0.38, 0.32, 0.26, 0.22),
    compressibility: compressibility(1.1e-11),
    conductivity: conductivityOf(2, 0.8, 'Some 10 to 30 % of metal; 1 to 3.'),
    density: densityOf(2600, 200, 'Steel fiber and abrasive in an organic mix; strong, dusty.'),
  },
  semiMetal: {
    ...bedded,
    title: 'Semi-metallic pad',
    frictionTemperatures: temperatures,
    frictions: frictionCurve(0.32, 0.37, 0.39, 0.4, 0.38, 0.35, 0.31, 0.27),
    compressibility: compressibility(8e-12),
    conductivity: conductivityOf(4, 1.5, 'More than half of it iron and steel; 2 to 7.'),
    density: densityOf(2900, 250, 'Iron powder and steel wool.'),
  },
} as const satisfies Readonly<Record<string, PadClass>>;
