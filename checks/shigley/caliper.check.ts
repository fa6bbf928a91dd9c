import { brakeTorque, exampleSetUp, pistonArea, type AxleBrake } from '@standstill/braking';
import { published } from '../published.ts';

/**
 * Example 16-3: two annular pads from 3.875 to 5.5 in over 108°, each pressed by one cylinder of 1.5 in, μ = 0.37, a
 * torque of 13,000 lbf in, uniform wear.
 */
const inch = 0.0254;
const poundForce = 4.4482216152605;
const squareInchPound = poundForce / inch ** 2;
const torque = 13_000 * poundForce * inch;
const { frontBrake } = exampleSetUp;
const brake: AxleBrake = {
  ...frontBrake,
  pressureAssumption: 'uniform-wear',
  rotor: { ...frontBrake.rotor, outerDiameter: 11.2 * inch, sweptOuterRadius: 5.5 * inch },
  pad: { ...frontBrake.pad, radialHeight: (5.5 - 3.875) * inch },
  caliper: { ...frontBrake.caliper, pistonDiameters: [1.5 * inch], pushOutPressure: 0, efficiency: 1 },
};
const given = 'pads 3.875 to 5.5 in, μ = 0.37, 13,000 lbf·in, uniform wear';

/** Pa for the torque: it is proportional to the pressure. */
const pressure = (): number => torque / brakeTorque({ brake, pressure: 1, friction: 0.37 });

published(
  {
    id: 'ex-16-3a',
    source: 'shigley',
    quantity: `force on one pad, ${given}`,
    printed: 3748,
    unit: 'lbf',
    tolerance: 0.5,
    basis: 'M',
  },
  () => (pressure() * pistonArea(brake.caliper)) / poundForce,
);
published(
  {
    id: 'ex-16-3b',
    source: 'shigley',
    quantity: `hydraulic pressure in a cylinder of 1.5 in, ${given}`,
    printed: 2121,
    unit: 'psi',
    tolerance: 0.5,
    basis: 'M',
  },
  () => pressure() / squareInchPound,
);
