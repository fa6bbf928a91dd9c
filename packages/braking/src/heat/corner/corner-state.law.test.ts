import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AxleBrake } from '../../set-up/axle-brake.ts';
import { exampleSetUp } from '../../set-up/example-set-up.ts';
import { solidRotor } from '../any-rotor.testing.ts';
import { slabConstantFlux } from '../closed-forms/slab-constant-flux.ts';
import { rotorHeatShare } from '../rotor-heat-share.ts';
import { sweptArea } from '../swept-area.ts';
import { anyCorner, between, closedCorner, quietStep } from './any-corner.testing.ts';
import { CornerState } from './corner-state.ts';

const anySteps = fc.array(
  fc.record({
    duration: between(1e-3, 300),
    fluxAtStart: between(0, 3e5),
    fluxAtEnd: between(0, 3e5),
    faceCoefficient: between(0, 150),
    ventCoefficient: between(0, 150),
    airTemperature: between(-30, 45),
    pressed: fc.boolean(),
    bodyCoefficient: between(2, 120),
  }),
  { minLength: 1, maxLength: 12 },
);

/** Heats a corner from 20 °C by a flux over time, W/m², without air, and answers its state. */
function heated(
  brake: AxleBrake,
  [layers, padLayers]: readonly [number, number],
  steps: number,
  time: number,
  flux: (t: number) => number,
): CornerState {
  const state = new CornerState(layers, padLayers);
  state.use(brake);
  state.warmTo(20);
  state.bodyCoefficient = 0;
  for (let i = 0; i < steps; i += 1) {
    const [from, to] = [(i * time) / steps, ((i + 1) * time) / steps];
    state.step({ ...quietStep, duration: to - from, fluxAtStart: flux(from), fluxAtEnd: flux(to) });
  }
  return state;
}

describe('heat in a corner', () => {
  it('stored plus lost is put in, for any step, pressed or released', () => {
    fc.assert(
      fc.property(anyCorner, anySteps, fc.integer({ min: 2, max: 9 }), (brake, steps, layers) => {
        const state = new CornerState(layers);
        state.use(brake);
        state.warmAsDriven(150, 20);
        const before = state.energyStored();
        let putIn = 0;
        for (const { pressed, bodyCoefficient, ...step } of steps) {
          state.pressed = pressed;
          state.bodyCoefficient = bodyCoefficient;
          state.step(step);
          putIn += state.sweptArea * step.duration * 0.5 * (step.fluxAtStart + step.fluxAtEnd);
        }
        const stored = state.energyStored() - before;
        const turnover = Math.max(putIn, Math.abs(stored), Math.abs(state.lost), 1);
        expect(Math.abs(state.putIn - putIn)).toBeLessThan(1e-9 * turnover);
        expect(Math.abs(stored + state.lost - putIn)).toBeLessThan(1e-4 * turnover);
        expect(Math.abs(stored + state.lost - putIn)).toBeLessThan(1e-8 * Math.max(turnover, before));
      }),
      { numRuns: 500 },
    );
  });

  it('never makes a node colder than the coldest or hotter than the hottest where no heat comes in', () => {
    fc.assert(
      fc.property(anyCorner, anySteps, (brake, steps) => {
        const state = new CornerState(4);
        state.use(brake);
        state.warmAsDriven(300, 20);
        for (const { pressed, bodyCoefficient, ...step } of steps) {
          state.pressed = pressed;
          state.bodyCoefficient = bodyCoefficient;
          for (let i = 0; i < 8; i += 1)
            state.step({ ...step, duration: step.duration / 8, fluxAtStart: 0, fluxAtEnd: 0 });
        }
        expect(state.interfaceTemperature).toBeLessThan(300 + 5);
        expect(state.fluidTemperature).toBeLessThan(300 + 5);
        expect(Math.min(state.fluidTemperature, state.hatTemperature)).toBeGreaterThan(-30 - 5);
      }),
      { numRuns: 500 },
    );
  });

  it('is shared between equal faces at the start as their effusivities and areas say', () => {
    fc.assert(
      fc.property(between(0.5, 8), between(0.001, 0.008), (conductivity, area) => {
        const parts = solidRotor(0.02);
        const pad = { ...parts.pad, conductivity, area, thickness: 0.03 };
        const brake = closedCorner({
          ...exampleSetUp.frontBrake,
          rotor: { ...parts.rotor, emissivity: 0 },
          pad,
        });
        const state = heated(brake, [60, 24], 200, 2, () => 1e6);
        const charron = rotorHeatShare({ rotor: brake.rotor, pad });
        expect(Math.abs(1 - state.rotorShare) / (1 - charron)).toBeGreaterThan(0.93);
        expect(Math.abs(1 - state.rotorShare) / (1 - charron)).toBeLessThan(1.07);
      }),
      { numRuns: 500 },
    );
  });

  it('is the slab series where the pad takes next to nothing', () => {
    const parts = solidRotor(0.012);
    const pad = { ...parts.pad, conductivity: 0.05, density: 300, specificHeat: 100 };
    const rotor = { ...parts.rotor, mass: parts.rotor.ringMass };
    const state = heated(
      closedCorner({ ...exampleSetUp.frontBrake, rotor, pad }),
      [64, 4],
      2000,
      3,
      () => 1.5e6,
    );
    const exact = slabConstantFlux({ ...rotor, thickness: 0.012, flux: 1.5e6, time: 3 });
    expect(Math.abs((state.interfaceTemperature - 20) / exact.face - 1)).toBeLessThan(2e-3);
  });

  it('converges with the second order in time on a smooth flux', () => {
    const flux = (t: number): number => 2e6 * Math.sin((Math.PI * t) / 4) ** 2;
    const of = (steps: number): readonly number[] => {
      const state = heated(exampleSetUp.frontBrake, [8, 5], steps, 4, flux);
      return [state.interfaceTemperature, state.fluidTemperature, state.padTemperature()];
    };
    const reference = of(3200);
    const errors = [20, 40, 80, 160].map((steps) =>
      of(steps).map((value, at) => Math.abs(value - reference[at]!)),
    );
    for (let at = 0; at < reference.length; at += 1) {
      const orders = [1, 2, 3].map((i) => Math.log2(errors[i - 1]![at]! / errors[i]![at]!));
      console.log(`order in time of node ${at}: ${orders.map((order) => order.toFixed(2)).join(', ')}`);
      for (const order of orders) expect(order).toBeGreaterThan(1.7);
    }
  });

  it('converges in space: twice the layers change the split by less and less', () => {
    const shares = [4, 8, 16, 32].map(
      (layers) => heated(closedCorner(), [layers, layers], 400, 3, (t) => 2e6 * (1 - t / 3)).intoPad,
    );
    const steps = [1, 2, 3].map((i) => Math.abs(shares[i]! - shares[i - 1]!));
    expect(steps[1]!).toBeLessThan(0.5 * steps[0]!);
    expect(steps[2]!).toBeLessThan(0.5 * steps[1]!);
  });

  it('comes from a pad that is hotter than its rotor', () => {
    const brake = exampleSetUp.frontBrake;
    const state = heated(brake, [6, 4], 40, 8, () => 1.5e6);
    const wasIn = state.intoPad;
    for (let i = 0; i < 600; i += 1) state.step({ ...quietStep, ventCoefficient: 300, faceCoefficient: 300 });
    expect(state.intoPad).toBeLessThan(wasIn);
    expect(state.padTemperature()).toBeGreaterThan(state.bulkTemperature());
  });

  it('has rooms for exactly the swept face', () => {
    const state = new CornerState(3);
    state.use(exampleSetUp.frontBrake);
    expect(state.sweptArea).toBe(sweptArea(exampleSetUp.frontBrake));
  });
});
