import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRotor, solidRotor } from './any-rotor.testing.ts';
import { halfSpaceConstantFlux } from './closed-forms/half-space-constant-flux.ts';
import { halfSpaceFallingFlux } from './closed-forms/half-space-falling-flux.ts';
import { slabConstantFlux } from './closed-forms/slab-constant-flux.ts';
import { radiatedFlux } from './cooling/radiated-flux.ts';
import { RotorState } from './rotor-state.ts';
import { specificEnthalpy } from './specific-enthalpy.ts';
import type { RotorWithPad } from './swept-area.ts';

const iron = { conductivity: 50, density: 7200, specificHeat: 460 };

/** Heats a rotor from 20 °C by a flux over time, W/m², without cooling, and answers its state. */
function heated(
  parts: RotorWithPad,
  layers: number,
  steps: number,
  time: number,
  flux: (t: number) => number,
) {
  const state = new RotorState(layers);
  state.use(parts);
  state.warmTo(20);
  for (let i = 0; i < steps; i += 1) {
    const from = (i * time) / steps;
    const to = ((i + 1) * time) / steps;
    state.step({
      duration: to - from,
      fluxAtStart: flux(from),
      fluxAtEnd: flux(to),
      faceCoefficient: 0,
      ventCoefficient: 0,
      airTemperature: 20,
    });
  }
  return state;
}

const anySteps = fc.array(
  fc.record({
    duration: fc.double({ min: 1e-3, max: 300, noNaN: true }),
    fluxAtStart: fc.double({ min: 0, max: 3e5, noNaN: true }),
    fluxAtEnd: fc.double({ min: 0, max: 3e5, noNaN: true }),
    faceCoefficient: fc.double({ min: 0, max: 150, noNaN: true }),
    ventCoefficient: fc.double({ min: 0, max: 150, noNaN: true }),
    airTemperature: fc.double({ min: -30, max: 45, noNaN: true }),
  }),
  { minLength: 1, maxLength: 12 },
);

describe('heat in a rotor', () => {
  it('stored plus lost is put in, for any step, within 0.01 %', () => {
    fc.assert(
      fc.property(anyRotor, anySteps, fc.integer({ min: 2, max: 12 }), (parts, steps, layers) => {
        const state = new RotorState(layers);
        state.use(parts);
        state.warmTo(150);
        const before = state.energyStored();
        let putIn = 0;
        for (const step of steps) {
          state.step(step);
          putIn += 2 * state.sweptArea * step.duration * 0.5 * (step.fluxAtStart + step.fluxAtEnd);
        }
        const stored = state.energyStored() - before;
        const lost = 2 * state.sweptArea * state.lostPerArea;
        const turnover = Math.max(putIn, Math.abs(stored), Math.abs(lost), 1);
        expect(Math.abs(stored + lost - putIn)).toBeLessThan(1e-4 * turnover);
        expect(Math.abs(stored + lost - putIn)).toBeLessThan(1e-9 * Math.max(turnover, before));
      }),
      { numRuns: 500 },
    );
  });

  it('is what its temperatures say it holds', () => {
    fc.assert(
      fc.property(anyRotor, anySteps, (parts, steps) => {
        const state = new RotorState(5);
        state.use(parts);
        state.warmTo(150);
        for (const step of steps) state.step(step);
        const held = state.energyStored() / parts.rotor.ringMass;
        const bulk = specificEnthalpy(parts.rotor, state.bulkTemperature());
        expect(bulk / held).toBeCloseTo(1, 9);
      }),
      { numRuns: 500 },
    );
  });

  it('is lost at the rate of convection and radiation: the account against an integral over the face', () => {
    const parts = solidRotor(0.006, 0.4);
    const rotor = { ...parts.rotor, emissivity: 0.6 };
    const state = new RotorState(8);
    state.use({ ...parts, rotor });
    state.warmTo(600);
    const uncovered = 1 - parts.pad.area / state.sweptArea;
    const lossNow = () => {
      const radiated = radiatedFlux({
        emissivity: 0.6,
        temperature: state.interfaceTemperature,
        surroundings: 20,
      });
      return uncovered * (60 * (state.interfaceTemperature - 20) + radiated);
    };
    let lost = 0;
    for (let i = 0; i < 1200; i += 1) {
      const before = lossNow();
      const step = { duration: 0.25, fluxAtStart: 0, fluxAtEnd: 0, faceCoefficient: 60, ventCoefficient: 0 };
      state.step({ ...step, airTemperature: 20 });
      lost += 0.125 * (before + lossNow());
    }
    expect(state.lostPerArea / lost).toBeCloseTo(1, 3);
  });

  it('converges with the second order in space to the slab series', () => {
    const exact = slabConstantFlux({ ...iron, thickness: 0.012, flux: 1.5e6, time: 3 });
    const errors = [8, 16, 32, 64].map((layers) => {
      const state = heated(solidRotor(0.012), layers, 4000, 3, () => 1.5e6);
      return Math.abs(state.interfaceTemperature - 20 - exact.face);
    });
    for (let i = 1; i < errors.length; i += 1) {
      const order = Math.log2(errors[i - 1]! / errors[i]!);
      expect(order).toBeGreaterThan(1.7);
      expect(order).toBeLessThan(2.4);
    }
    expect(errors[3]).toBeLessThan(0.02);
  });

  it('converges with the second order in time on a smooth flux and a specific heat that rises', () => {
    const parts = solidRotor(0.008, 0.5);
    const flux = (t: number) => 3e6 * Math.sin((Math.PI * t) / 4) ** 2;
    const reference = heated(parts, 12, 6400, 4, flux).interfaceTemperature;
    const errors = [25, 50, 100, 200].map((steps) =>
      Math.abs(heated(parts, 12, steps, 4, flux).interfaceTemperature - reference),
    );
    for (let i = 1; i < errors.length; i += 1) {
      expect(Math.log2(errors[i - 1]! / errors[i]!)).toBeGreaterThan(1.7);
    }
  });

  it('agrees with the half space while heat has not reached the back', () => {
    const constant = heated(solidRotor(0.05), 200, 600, 3, () => 1.5e6).interfaceTemperature - 20;
    expect(constant / halfSpaceConstantFlux({ ...iron, flux: 1.5e6, time: 3 })).toBeCloseTo(1, 3);
    const falling =
      heated(solidRotor(0.05), 200, 600, 1.5, (t) => 3e6 * (1 - t / 3)).interfaceTemperature - 20;
    const exact = halfSpaceFallingFlux({ ...iron, startFlux: 3e6, stopTime: 3, time: 1.5 });
    expect(falling / exact).toBeCloseTo(1, 3);
  });

  it('is within 2 % of the fine model in the three layers of the quick stop, for every usual thickness', () => {
    for (const thickness of [0.004, 0.006, 0.008, 0.01, 0.012]) {
      const flux = (t: number) => 3e6 * (1 - t / 3.2);
      let coarsePeak = 0;
      let finePeak = 0;
      for (const time of [0.8, 1.2, 1.6, 2, 2.4]) {
        const coarse = heated(solidRotor(thickness), 3, Math.round(time * 10), time, flux);
        const fine = heated(solidRotor(thickness), 60, Math.round(time * 400), time, flux);
        coarsePeak = Math.max(coarsePeak, coarse.interfaceTemperature - 20);
        finePeak = Math.max(finePeak, fine.interfaceTemperature - 20);
      }
      expect(Math.abs(coarsePeak / finePeak - 1)).toBeLessThan(0.02);
    }
  });
});
