import { brakeTorque, compressedFluid, exampleSetUp, pistonArea, type AxleBrake } from '@standstill/braking';
import { published } from '../published.ts';

const { frontBrake } = exampleSetUp;
const caliper = {
  ...frontBrake.caliper,
  kind: 'fixed',
  pistonDiameters: [0.038, 0.038],
  pushOutPressure: 0,
  efficiency: 1,
} as const;
/** Uniform wear on a band from 115 to 155 mm: effective radius 135 mm. */
const brake: AxleBrake = {
  ...frontBrake,
  caliper,
  pad: { ...frontBrake.pad, radialHeight: 0.04 },
  rotor: { ...frontBrake.rotor, outerDiameter: 0.32, sweptOuterRadius: 0.155 },
};
const source = 'textbook-formula';

published(
  {
    id: '5-15',
    source,
    quantity: 'fluid squeeze, 120 cc, 10 MPa, B 2.0 GPa',
    printed: 0.6,
    unit: 'cc',
    tolerance: 0.005,
    basis: 'X',
  },
  () => compressedFluid({ volume: 120e-6, bulkModulus: 2e9, pressure: 10e6 }) * 1e6,
);
published(
  {
    id: '5-19a',
    source,
    quantity: 'piston area of one side, 2 × 38 mm',
    printed: 2268,
    unit: 'mm²',
    tolerance: 0.5,
    basis: 'X',
  },
  () => pistonArea(caliper) * 1e6,
);
published(
  {
    id: '5-19b',
    source,
    quantity: 'torque of one corner, friction 0.40, 10 MPa, 2 × 38 mm a side, effective radius 135 mm',
    printed: 2450,
    unit: 'N·m',
    tolerance: 0.5,
    basis: 'X',
  },
  () => brakeTorque({ brake, pressure: 10e6, friction: 0.4 }),
);
