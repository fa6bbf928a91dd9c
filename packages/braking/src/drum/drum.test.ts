import { describe, expect, it } from 'vitest';
import { coolingCoefficients } from '../heat/cooling/cooling-coefficients.ts';
import { drumClasses } from '../library/drum-classes.ts';
import { quickStop } from '../stop/quick-stop.ts';
import { exampleDrum, exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { brakeFactor, geometricFactor } from './brake-factor.ts';
import { equivalentDisc } from './equivalent-disc.ts';
import { grabbingFriction, shoeFactor } from './shoe-factor.ts';

describe('drum brakes', () => {
  it('refuse a lining that would hold the shoe by itself', () => {
    const { shoes } = drumClasses.simplex;
    const grabbing = grabbingFriction(shoes);
    expect(() => shoeFactor({ shoe: shoes, friction: grabbing, direction: 'leading' })).toThrow(
      'lining friction',
    );
    expect(shoeFactor({ shoe: shoes, friction: grabbing, direction: 'trailing' })).toBeGreaterThan(0);
  });

  it('of a class have about the factor of the class by their geometry alone', () => {
    for (const one of Object.values(drumClasses)) {
      const { value, spread } = one.brakeFactor;
      expect(Math.abs(geometricFactor(one, 0.38) - value)).toBeLessThan(spread);
    }
  });

  it('take their level from the stated factor', () => {
    const drum = { ...exampleDrum, brakeFactor: 2.4 };
    expect(brakeFactor({ drum, friction: 0.38 })).toBeCloseTo(2.4, 12);
  });

  it('stop a car like discs do, and cool far slower', () => {
    const rearBrake = equivalentDisc(exampleDrum);
    const setUp = { ...exampleSetUp, rearBrake };
    const stop = quickStop({ setUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 25 });
    expect(stop.cameToRest).toBe(true);
    expect(stop.rear.peakInterface).toBeGreaterThan(20);
    const at = { road: exampleRoad, speed: 25, rollingRadius: 0.31, temperature: 150 };
    const drum = coolingCoefficients({ ...at, rotor: rearBrake.rotor });
    const disc = coolingCoefficients({ ...at, rotor: exampleSetUp.rearBrake.rotor });
    expect(drum).toMatchObject({ face: 0, faceBy: 'none', ventBy: 'Limpert, drum' });
    expect(drum.vent).toBeLessThan(disc.face);
  });
});
