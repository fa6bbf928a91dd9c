import { describe, expect, it } from 'vitest';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import { solidRotor } from './any-rotor.testing.ts';
import { lumpedRise } from './lumped-rise.ts';
import { RotorState } from './rotor-state.ts';
import type { RotorStep } from './rotor-step.ts';

const quiet: RotorStep = {
  duration: 1,
  fluxAtStart: 0,
  fluxAtEnd: 0,
  faceCoefficient: 0,
  ventCoefficient: 0,
  airTemperature: 20,
};

function warmed(state: RotorState, step: RotorStep, steps: number): RotorState {
  for (let i = 0; i < steps; i += 1) state.step(step);
  return state;
}

describe('a rotor', () => {
  it('warms as one lump once the heat has spread', () => {
    const parts = solidRotor(0.006);
    const state = new RotorState(8);
    state.use(parts);
    state.warmTo(20);
    warmed(state, { ...quiet, duration: 0.1, fluxAtStart: 1e6, fluxAtEnd: 1e6 }, 20);
    warmed(state, quiet, 60);
    const energy = 2 * 2 * state.sweptArea * 1e6;
    const rise = lumpedRise({ energy, mass: parts.rotor.ringMass, specificHeat: 460 });
    expect(state.interfaceTemperature - 20).toBeCloseTo(rise, 6);
    expect(state.bulkTemperature() - 20).toBeCloseTo(rise, 9);
  });

  it('is hotter at the face than inside while heat goes in', () => {
    const state = new RotorState(6);
    state.use(exampleSetUp.frontBrake);
    state.warmTo(100);
    warmed(state, { ...quiet, duration: 0.05, fluxAtStart: 2e6, fluxAtEnd: 2e6 }, 20);
    const inwards = Array.from(state.temperatures.subarray(0, state.nodes));
    expect(state.interfaceTemperature).toBeGreaterThan(inwards[0]!);
    expect(inwards).toEqual(inwards.toSorted((first, second) => second - first));
  });

  it('has its vanes as a node of their own only where it is vented', () => {
    const vented = new RotorState(4);
    vented.use(exampleSetUp.frontBrake);
    const solid = new RotorState(4);
    solid.use(exampleSetUp.rearBrake);
    expect([vented.nodes, solid.nodes]).toEqual([5, 4]);
  });

  it('cools towards the air and not past it, however long a step is', () => {
    const afterSteps = (steps: number) => {
      const state = new RotorState(5);
      state.use(exampleSetUp.frontBrake);
      state.warmTo(500);
      const day = { ...quiet, duration: 1e6 / steps, faceCoefficient: 40, ventCoefficient: 50 };
      return warmed(state, day, steps).interfaceTemperature;
    };
    expect(afterSteps(1)).toBeGreaterThan(19.9);
    expect(afterSteps(1)).toBeLessThan(100);
    expect(afterSteps(10)).toBeCloseTo(20, 6);
    expect(afterSteps(1000)).toBeCloseTo(20, 6);
  });

  it('cools at the rate of its surface over its heat capacity', () => {
    const parts = solidRotor(0.005);
    const state = new RotorState(5);
    state.use(parts);
    state.warmTo(120);
    warmed(state, { ...quiet, duration: 0.5, faceCoefficient: 50 }, 200);
    const uncovered = 1 - parts.pad.area / state.sweptArea;
    const rate = (50 * uncovered) / (0.005 * 7200 * 460);
    expect((state.bulkTemperature() - 20) / 100).toBeCloseTo(Math.exp(-rate * 100), 3);
  });

  it('refuses to work without a rotor it can have', () => {
    const state = new RotorState(4);
    const { rotor, pad } = exampleSetUp.frontBrake;
    expect(() => state.use({ pad, rotor: { ...rotor, ringMass: 0 } })).toThrow('ring mass');
    expect(() => state.use({ pad, rotor: { ...rotor, cheekThickness: 0.011 } })).toThrow('vent gap');
    expect(() => new RotorState(1)).toThrow('layers');
  });
});
