import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../../set-up/example-set-up.ts';
import { coolingCoefficients } from './cooling-coefficients.ts';
import { radiatedFlux } from './radiated-flux.ts';
import { radiationCoefficient } from './radiation-coefficient.ts';

const { rotor } = exampleSetUp.frontBrake;
const at = (speed: number, kind: 'solid' | 'vented' = 'vented') =>
  coolingCoefficients({
    rotor: { ...rotor, kind },
    road: exampleRoad,
    speed,
    rollingRadius: 0.31,
    temperature: 300,
  });

describe('the choice of a cooling correlation', () => {
  it('takes still air at rest and Limpert while driving', () => {
    expect(at(0).faceBy).toBe('McAdams, still air');
    expect(at(0).face).toBeGreaterThan(5);
    expect(at(20).faceBy).toBe('Limpert');
  });

  it('says where a vented rotor turns outside the measured range', () => {
    expect(at(20).insideRange).toBe(true);
    expect(at(5).insideRange).toBe(false);
    expect(at(50).insideRange).toBe(false);
    expect(at(50, 'solid').insideRange).toBe(true);
  });

  it('gives the vent nothing on a solid rotor', () => {
    expect(at(20, 'solid')).toMatchObject({ vent: 0, ventBy: 'none' });
    expect(at(20).ventBy).toBe('McPhee and Johnson 2008');
  });

  it('never falls with speed', () => {
    let before = 0;
    for (let speed = 0; speed < 80; speed += 0.5) {
      expect(at(speed).face).toBeGreaterThanOrEqual(before);
      before = at(speed).face;
    }
  });
});

describe('radiation', () => {
  it('is its coefficient times the excess', () => {
    const input = { emissivity: 0.7, temperature: 433, surroundings: 15 };
    expect(radiationCoefficient(input) * (433 - 15)).toBeCloseTo(radiatedFlux(input), 6);
  });
});
