import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import { airDensity } from './air-density.ts';
import { settle } from './settle.ts';

/** The example with some things changed; fails where a text to change is not there. */
function jobWith(...changes: readonly (readonly [from: string, to: string])[]): Job {
  const text = changes.reduce((changed, [from, to]) => {
    if (!changed.includes(from)) throw new Error(`no "${from}" in the example`);
    return changed.replace(from, to);
  }, exampleJobText);
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

describe('a settled set-up', () => {
  const { setUp, road, foot, speed, startTemperature, interval } = settle(jobWith(), 'front-kit');

  it('is in SI', () => {
    expect(setUp.car.mass).toBeCloseTo(1202.02, 2);
    expect(setUp.frontBrake.caliper).toMatchObject({ kind: 'fixed', pistonDiameters: [0.041, 0.036] });
    expect(setUp.frontBrake.pressureAssumption).toBe('uniform-wear');
    expect([foot.force, foot.rampTime]).toEqual([expect.closeTo(400.34, 2), 0.3]);
    expect([speed, startTemperature, interval]).toEqual([
      expect.closeTo(26.8224, 6),
      expect.closeTo(93.333, 3),
      40,
    ]);
    expect(road).toMatchObject({ surfaceFactor: 1, grade: 0, airTemperature: expect.closeTo(21.111, 3) });
  });

  it('takes the rolling radius from the size on the sidewall', () => {
    // 16 in rim, 102.5 mm of sidewall, 97 % of the free radius.
    expect(setUp.frontTire.rollingRadius).toBeCloseTo(0.97 * (0.2032 + 0.1025), 12);
  });

  it('has half a solid rotor as cheek', () => {
    expect(setUp.rearBrake.rotor).toMatchObject({ kind: 'solid', thickness: 0.01, cheekThickness: 0.005 });
  });

  it('takes less vacuum and thinner air on a mountain', () => {
    const high = settle(jobWith(['surface: dry', 'surface: dry\n  altitude: 2000 m']), 'front-kit');
    const booster = high.setUp.booster;
    expect(booster.kind === 'vacuum' ? booster.vacuum / 67_000 : null).toBeCloseTo(0.7846, 3);
    expect(high.road.airDensity / road.airDensity).toBeCloseTo(0.7846, 3);
  });

  it('may be asked about another speed and foot', () => {
    expect(settle(jobWith(), 'as-found', undefined, { speed: 20, pedalForce: 150 })).toMatchObject({
      speed: 20,
      foot: { force: 150 },
    });
  });
});

describe('the kinds of parts', () => {
  it('a car without booster', () => {
    expect(settle(jobWith(['booster: booster', 'booster: none']), 'as-found').setUp.booster).toEqual({
      kind: 'none',
    });
  });

  it('a hydraulic booster', () => {
    const job = jobWith([
      'type: vacuum, gain: 4.5, diaphragmDiameter: 9 in',
      'type: hydraulic, gain: 5, greatestAssist: 5 kN',
    ]);
    expect(settle(job, 'as-found').setUp.booster).toEqual({
      kind: 'hydraulic',
      gain: 5,
      greatestAssist: 5000,
    });
  });

  it('two cylinders with a balance bar', () => {
    const job = jobWith([
      'bore: 7/8 in',
      'type: balance-bar, frontBore: 20 mm, rearBore: 19 mm, frontForceShare: 55 %',
    ]);
    expect(settle(job, 'as-found').setUp.masterCylinder).toMatchObject({
      kind: 'balance-bar',
      frontBore: 0.02,
      rearBore: 0.019,
      frontForceShare: 0.55,
    });
  });

  it('no valve and no ABS', () => {
    const { setUp } = settle(
      jobWith(['rearValve: valve', 'rearValve: none'], ['antilock: abs', 'antilock: none']),
      'as-found',
    );
    expect([setUp.rearValve, setUp.antilock]).toEqual([
      { kind: 'none' },
      { kind: 'none', electronicRearLimit: false },
    ]);
  });

  it('pads with a friction table of their own, hoses too', () => {
    const job = jobWith(
      [
        'title: Stock front pads, class: road',
        'title: Stock front pads, friction: [[100 °F, 0.38], [600 °F, 0.42]]',
      ],
      [
        'class: rubber, length: 14 in',
        'expansion: [[1000 psi, 0.2 cm³/ft], [2900 psi, 0.4 cm³/ft]], length: 14 in',
      ],
    );
    const { frontBrake } = settle(job, 'as-found').setUp;
    expect(frontBrake.pad.frictions).toEqual([0.38, 0.42]);
    expect(frontBrake.pad.frictionTemperatures).toEqual([
      expect.closeTo(37.78, 2),
      expect.closeTo(315.56, 2),
    ]);
    expect(frontBrake.hose.expansions[1]).toBeCloseTo(0.4e-6 / 0.3048, 12);
  });

  it('one friction for every temperature', () => {
    const job = jobWith(['title: Stock front pads, class: road', 'title: Stock front pads, friction: 0.41']);
    expect(settle(job, 'as-found').setUp.frontBrake.pad).toMatchObject({
      frictions: [0.41],
      frictionTemperatures: [20],
    });
  });
});

describe('what set-ups leave out', () => {
  it('is one assumed part for all of them, listed once, even below a set-up that stands by itself further down', () => {
    const late = jobWith(
      [
        '  as-found:\n    title: As found',
        '  early:\n    title: Early\n    basedOn: as-found\n  as-found:\n    title: As found',
      ],
      ['    fluid: fluid\n', ''],
    );
    expect(new Set(late.setUps.map(({ slots }) => slots.fluid))).toEqual(new Set(['assumed:fluid']));
    expect(late.fillings.filter(({ path }) => path === 'setUps.as-found.fluid.trappedAir')).toHaveLength(1);
  });
});

describe('air', () => {
  it('has the density of the standard atmosphere', () => {
    expect(airDensity({ altitude: 0, temperature: 15 })).toBeCloseTo(1.225, 3);
    expect(airDensity({ altitude: 2000, temperature: 2 })).toBeCloseTo(1.0065, 3);
  });
});
