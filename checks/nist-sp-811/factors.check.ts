import { fromUnit, type Dimension } from '@standstill/units';
import { published } from '../published.ts';

/** Factors as the guide's appendix B prints them, to seven digits where it rounds; written from memory of it. */
const printed: readonly (readonly [
  unit: string,
  dimension: Dimension,
  factor: number,
  tolerance: number,
  si: string,
])[] = [
  ['in', 'length', 0.0254, 5e-17, 'm'],
  ['mi', 'length', 1609.344, 5e-13, 'm'],
  ['mph', 'speed', 0.44704, 5e-16, 'm/s'],
  ['kn', 'speed', 0.5144444, 5e-8, 'm/s'],
  ['g', 'acceleration', 9.80665, 5e-15, 'm/s²'],
  ['lb', 'mass', 0.45359237, 5e-16, 'kg'],
  ['oz', 'mass', 0.02834952, 5e-9, 'kg'],
  ['slug', 'mass', 14.5939, 5e-6, 'kg'],
  ['lbf', 'force', 4.448222, 5e-7, 'N'],
  ['kgf', 'force', 9.80665, 5e-15, 'N'],
  ['psi', 'pressure', 6894.757, 5e-4, 'Pa'],
  ['ksi', 'pressure', 6_894_757, 0.5, 'Pa'],
  ['inHg', 'pressure', 3386.389, 5e-4, 'Pa'],
  ['mmHg', 'pressure', 133.3224, 5e-5, 'Pa'],
  ['atm', 'pressure', 101_325, 5e-10, 'Pa'],
  ['kgf/cm²', 'pressure', 98_066.5, 5e-10, 'Pa'],
  ['lbf·ft', 'torque', 1.355818, 5e-7, 'N·m'],
  ['lbf·in', 'torque', 0.1129848, 5e-8, 'N·m'],
  ['in³', 'volume', 1.638706e-5, 5e-12, 'm³'],
  ['fl oz', 'volume', 2.957353e-5, 5e-12, 'm³'],
  ['BTU', 'energy', 1055.056, 5e-4, 'J'],
  ['hp', 'power', 745.6999, 5e-5, 'W'],
  ['PS', 'power', 735.4988, 5e-5, 'W'],
  ['lb/ft³', 'density', 16.01846, 5e-6, 'kg/m³'],
  ['BTU/(h·ft·°F)', 'conductivity', 1.730735, 5e-7, 'W/(m·K)'],
  ['BTU/(lb·°F)', 'specific-heat', 4186.8, 5e-10, 'J/(kg·K)'],
  ['BTU/(h·ft²·°F)', 'heat-transfer-coefficient', 5.678263, 5e-7, 'W/(m²·K)'],
  ['lb·ft²', 'moment-of-inertia', 0.04214011, 5e-9, 'kg·m²'],
  ['lbf/in', 'stiffness', 175.1268, 5e-5, 'N/m'],
];

printed.forEach(([unit, dimension, factor, tolerance, si], index) => {
  const id = `B-${String(index + 1).padStart(2, '0')}`;
  const quantity = `1 ${unit} as ${dimension.replaceAll('-', ' ')}`;
  published(
    {
      id,
      source: 'nist-sp-811',
      quantity,
      printed: factor,
      unit: si,
      tolerance,
      basis: 'M',
      evidence: 'transcription',
    },
    () => fromUnit(1, unit, dimension),
  );
});
