import fc from 'fast-check';
import type { AxleBrake } from '../../set-up/axle-brake.ts';
import { exampleSetUp } from '../../set-up/example-set-up.ts';
import { usualHeatPath, type HeatPath } from '../../set-up/heat-path.ts';
import { anyRotor } from '../any-rotor.testing.ts';
import type { RotorStep } from '../rotor-step.ts';

export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
}

export const anyHeatPath: fc.Arbitrary<HeatPath> = fc.record({
  contactConductance: between(500, 1e5),
  plateConductance: between(0, 5000),
  pistonConductance: between(5, 8000),
  pistonHeat: between(2e4, 1e5),
  boreConductance: between(0, 6000),
  bodyConductance: between(0, 2000),
  bodySpecificHeat: between(400, 950),
  fluidConductance: between(50, 800),
  fluidDepth: between(0.003, 0.02),
  hatThickness: between(0.003, 0.01),
  hatLength: between(0.01, 0.08),
  hubMass: between(0.5, 8),
  hubConductance: between(0, 5000),
});

/** Brakes with any rotor and any way for the heat. */
export const anyCorner: fc.Arbitrary<AxleBrake> = fc
  .record({
    parts: anyRotor,
    heatPath: anyHeatPath,
    padConductivity: between(0.4, 8),
    thickness: between(0.003, 0.016),
    clearance: between(0, 4e-4),
    caliperMass: between(0, 8),
  })
  .map(({ parts, heatPath, padConductivity, thickness, clearance, caliperMass }) => ({
    ...exampleSetUp.frontBrake,
    caliper: { ...exampleSetUp.frontBrake.caliper, mass: caliperMass },
    pad: { ...parts.pad, conductivity: padConductivity, thickness },
    rotor: { ...parts.rotor, mass: 1.35 * parts.rotor.ringMass },
    runningClearance: clearance,
    heatPath,
  }));

/** A brake from whose contact nothing gets further than rotor and pad. */
export function closedCorner(brake: AxleBrake = exampleSetUp.frontBrake): AxleBrake {
  const heatPath = {
    ...usualHeatPath,
    contactConductance: 1e6,
    plateConductance: 0,
    bodyConductance: 0,
    hubConductance: 0,
    hatLength: 0.5,
    hatThickness: 5e-4,
  };
  return { ...brake, heatPath };
}

export const quietStep: RotorStep = {
  duration: 1,
  fluxAtStart: 0,
  fluxAtEnd: 0,
  faceCoefficient: 0,
  ventCoefficient: 0,
  airTemperature: 20,
};
