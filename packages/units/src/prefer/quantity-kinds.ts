import type { Dimension } from '../dimension/dimension.ts';

/** One kind of quantity that has a unit switch of its own. */
export interface QuantityKindRow {
  readonly dimension: Dimension;
  /** What a US workshop would write. */
  readonly us: string;
  /** What a workshop elsewhere would write. */
  readonly metric: string;
}

/**
 * Kinds of quantity as the trade tells them apart: a stopping distance and a rotor are both lengths, but one is said
 * in feet and the other in inches. Mixed as the trade mixes them; common practice.
 */
export const quantityKinds = {
  'stopping-distance': { dimension: 'length', us: 'ft', metric: 'm' },
  'car-length': { dimension: 'length', us: 'in', metric: 'mm' },
  'part-length': { dimension: 'length', us: 'in', metric: 'mm' },
  bore: { dimension: 'length', us: 'in', metric: 'mm' },
  travel: { dimension: 'length', us: 'in', metric: 'mm' },
  clearance: { dimension: 'length', us: 'in', metric: 'mm' },
  socket: { dimension: 'length', us: 'mm', metric: 'mm' },
  speed: { dimension: 'speed', us: 'mph', metric: 'km/h' },
  deceleration: { dimension: 'acceleration', us: 'g', metric: 'm/s²' },
  force: { dimension: 'force', us: 'lbf', metric: 'N' },
  'wheel-load': { dimension: 'force', us: 'lbf', metric: 'N' },
  'line-pressure': { dimension: 'pressure', us: 'psi', metric: 'bar' },
  vacuum: { dimension: 'pressure', us: 'inHg', metric: 'kPa' },
  'elastic-modulus': { dimension: 'pressure', us: 'ksi', metric: 'GPa' },
  torque: { dimension: 'torque', us: 'lbf·ft', metric: 'N·m' },
  'car-mass': { dimension: 'mass', us: 'lb', metric: 'kg' },
  'part-mass': { dimension: 'mass', us: 'lb', metric: 'kg' },
  temperature: { dimension: 'temperature', us: '°F', metric: '°C' },
  'temperature-difference': { dimension: 'temperature-difference', us: '°F', metric: 'K' },
  'part-area': { dimension: 'area', us: 'in²', metric: 'cm²' },
  'air-area': { dimension: 'area', us: 'ft²', metric: 'm²' },
  'fluid-volume': { dimension: 'volume', us: 'cm³', metric: 'cm³' },
  time: { dimension: 'time', us: 's', metric: 's' },
  age: { dimension: 'time', us: 'yr', metric: 'yr' },
  share: { dimension: 'ratio', us: '%', metric: '%' },
  ratio: { dimension: 'ratio', us: '1', metric: '1' },
  energy: { dimension: 'energy', us: 'BTU', metric: 'kJ' },
  power: { dimension: 'power', us: 'hp', metric: 'kW' },
  density: { dimension: 'density', us: 'lb/ft³', metric: 'kg/m³' },
  conductivity: { dimension: 'conductivity', us: 'W/(m·K)', metric: 'W/(m·K)' },
  'specific-heat': { dimension: 'specific-heat', us: 'J/(kg·K)', metric: 'J/(kg·K)' },
  'specific-heat-slope': { dimension: 'specific-heat-slope', us: 'J/(kg·K²)', metric: 'J/(kg·K²)' },
  'heat-transfer-coefficient': { dimension: 'heat-transfer-coefficient', us: 'W/(m²·K)', metric: 'W/(m²·K)' },
  'moment-of-inertia': { dimension: 'moment-of-inertia', us: 'lb·ft²', metric: 'kg·m²' },
  'hose-growth': { dimension: 'volume-per-length', us: 'cm³/ft', metric: 'cm³/m' },
  'caliper-stretch': { dimension: 'volume-compliance', us: 'mm³/bar', metric: 'mm³/bar' },
  'pad-squeeze': { dimension: 'length-compliance', us: 'µm/bar', metric: 'µm/bar' },
  flex: { dimension: 'flex', us: 'in/lbf', metric: 'mm/kN' },
  stiffness: { dimension: 'stiffness', us: 'lbf/in', metric: 'N/mm' },
  'engine-speed': { dimension: 'angular-speed', us: 'rpm', metric: 'rpm' },
  angle: { dimension: 'angle', us: '°', metric: '°' },
  frequency: { dimension: 'frequency', us: 'Hz', metric: 'Hz' },
} as const satisfies Record<string, QuantityKindRow>;

export type QuantityKind = keyof typeof quantityKinds;
