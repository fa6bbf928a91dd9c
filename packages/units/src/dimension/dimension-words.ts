import type { Dimension } from './dimension.ts';

export interface DimensionWords {
  /** With its article, as in "a pressure is wanted". */
  readonly noun: string;
  /** One or two texts that read as this dimension. */
  readonly examples: readonly [string, ...string[]];
}

/** How each dimension is called to a person, with texts that would be accepted. */
export const dimensionWords: Readonly<Record<Dimension, DimensionWords>> = {
  length: { noun: 'a length', examples: ['14 in', '355 mm'] },
  mass: { noun: 'a mass', examples: ['2900 lb', '1315 kg'] },
  time: { noun: 'a time', examples: ['0.3 s', '300 ms'] },
  speed: { noun: 'a speed', examples: ['60 mph', '100 km/h'] },
  acceleration: { noun: 'an acceleration', examples: ['0.95 g', '9.3 m/s²'] },
  force: { noun: 'a force', examples: ['100 lbf', '450 N'] },
  pressure: { noun: 'a pressure', examples: ['145 psi', '10 bar'] },
  torque: { noun: 'a torque', examples: ['85 lbf·ft', '115 N·m'] },
  area: { noun: 'an area', examples: ['7.5 in²', '48 cm²'] },
  volume: { noun: 'a volume', examples: ['2.5 cm³', '0.5 L'] },
  temperature: { noun: 'a temperature', examples: ['660 °F', '350 °C'] },
  'temperature-difference': { noun: 'a temperature difference', examples: ['90 °F', '50 K'] },
  ratio: { noun: 'a plain number or a percentage', examples: ['53 %', '0.53'] },
  angle: { noun: 'an angle', examples: ['12 °', '0.21 rad'] },
  'angular-speed': { noun: 'an angular speed', examples: ['800 rpm', '84 rad/s'] },
  frequency: { noun: 'a frequency', examples: ['10 Hz'] },
  energy: { noun: 'an energy', examples: ['480 kJ', '455 BTU'] },
  power: { noun: 'a power', examples: ['120 kW', '161 hp'] },
  density: { noun: 'a density', examples: ['7200 kg/m³', '450 lb/ft³'] },
  conductivity: { noun: 'a thermal conductivity', examples: ['50 W/(m·K)', '29 BTU/(h·ft·°F)'] },
  'specific-heat': { noun: 'a specific heat', examples: ['460 J/(kg·K)', '0.11 BTU/(lb·°F)'] },
  'specific-heat-slope': {
    noun: 'a rise of specific heat with temperature',
    examples: ['0.4 J/(kg·K²)'],
  },
  'heat-transfer-coefficient': {
    noun: 'a heat transfer coefficient',
    examples: ['60 W/(m²·K)', '11 BTU/(h·ft²·°F)'],
  },
  'moment-of-inertia': { noun: 'a moment of inertia', examples: ['0.9 kg·m²', '21 lb·ft²'] },
  'volume-per-length': { noun: 'a volume per length', examples: ['0.3 cm³/ft', '1 cm³/m'] },
  'volume-compliance': { noun: 'a volume per pressure', examples: ['5 mm³/bar', '0.05 cm³/MPa'] },
  'length-compliance': { noun: 'a length per pressure', examples: ['1.2 µm/bar', '0.012 mm/MPa'] },
  flex: { noun: 'a length per force', examples: ['4 mm/kN', '0.0007 in/lbf'] },
  stiffness: { noun: 'a force per length', examples: ['250 N/mm', '1400 lbf/in'] },
};
