import { describe, expect, it } from 'vitest';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import { brakeForce } from './brake-force.ts';
import { effectiveRadius } from './effective-radius.ts';
import { padFriction } from './pad-friction.ts';

const { pad, rotor } = exampleSetUp.frontBrake;

describe('padFriction', () => {
  it('reads the table, straight between its points and held beyond them', () => {
    expect(padFriction({ pad, temperature: 200 })).toBeCloseTo(0.41, 12);
    expect(padFriction({ pad, temperature: -10 })).toBe(0.36);
    expect(padFriction({ pad, temperature: 900 })).toBe(0.24);
  });

  it('refuses an empty table and a friction that cannot be', () => {
    expect(() =>
      padFriction({ pad: { ...pad, frictions: [], frictionTemperatures: [] }, temperature: 20 }),
    ).toThrow('points in the table');
    expect(() => padFriction({ pad: { ...pad, frictions: [2, 2, 2, 2, 2] }, temperature: 20 })).toThrow(
      'pad friction',
    );
  });
});

describe('effectiveRadius and brakeForce', () => {
  it('refuse a pad higher than the rotor has room for and a wheel without size', () => {
    expect(() =>
      effectiveRadius({ rotor, pad: { ...pad, radialHeight: 0.2 }, assumption: 'uniform-wear' }),
    ).toThrow('radial height of the pad');
    expect(() => brakeForce({ torque: 100, tire: { ...exampleSetUp.frontTire, rollingRadius: 0 } })).toThrow(
      'rolling radius',
    );
  });
});
