import { describe, expect, it } from 'vitest';
import { settle } from '../../settle/settle.ts';
import { exampleJobText } from '../example-job.testing.ts';
import { readJob } from '../reading/read-job.ts';

function reading(lines: string) {
  return readJob(exampleJobText.replace('  wheelbase: 96 in\n', `  wheelbase: 96 in\n${lines}`), {
    file: 'job.yaml',
  });
}

function settledWith(lines: string) {
  const read = reading(lines);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return { ...settle(read.job, 'as-found'), job: read.job };
}

describe('the laden car', () => {
  it('is taken from the class where nothing is stated, and listed', () => {
    const { ladenCar, setUp, job } = settledWith('');
    const { car } = setUp;
    expect(ladenCar.mass).toBeCloseTo(car.mass + 120, 9);
    expect(ladenCar.frontLoadShare * ladenCar.mass).toBeCloseTo(car.frontLoadShare * car.mass + 0.3 * 120, 9);
    expect(ladenCar.centerOfGravityHeight).toBeGreaterThan(car.centerOfGravityHeight);
    expect(job.fillings.map(({ path }) => path)).toEqual(
      expect.arrayContaining([
        'car.laden.mass',
        'car.laden.frontLoadShare',
        'car.laden.centerOfGravityHeight',
      ]),
    );
  });

  it('is as stated where it is, whole or in part', () => {
    const { ladenCar, setUp } = settledWith('  laden: { mass: 1400 kg, frontLoadShare: 47 % }\n');
    expect([ladenCar.mass, ladenCar.frontLoadShare]).toEqual([1400, 0.47]);
    const added = 1400 - setUp.car.mass;
    const height = (setUp.car.centerOfGravityHeight * setUp.car.mass + 0.55 * added) / 1400;
    expect(ladenCar.centerOfGravityHeight).toBeCloseTo(height, 9);
    expect(ladenCar.wheelbase).toBe(setUp.car.wheelbase);
  });

  it('lighter than as tested is refused', () => {
    const read = reading('  laden: { mass: 1100 kg }\n');
    expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(['contradiction']);
  });
});

describe('a drive that does something by itself', () => {
  it('is a share of the weight', () => {
    expect(settledWith('  regeneration: { share: 12 % }\n  creep: { share: 3 % }\n')).toMatchObject({
      regeneration: 0.12,
      creep: 0.03,
    });
    expect(settledWith('  regeneration: none\n')).toMatchObject({ regeneration: 0, creep: 0 });
  });

  it('that is not stated is listed as assumed', () => {
    const paths = settledWith('').job.fillings.map(({ path }) => path);
    expect(paths).toEqual(expect.arrayContaining(['car.regeneration', 'car.creep', 'car.brakeByWire']));
  });
});

describe('a car whose brakes are linked to the pedal by software alone', () => {
  it('is refused in one line', () => {
    const read = reading('  brakeByWire: "yes"\n');
    expect(read.ok ? [] : read.problems.map(({ code, message }) => [code, message])).toEqual([
      ['by-wire-not-modeled', expect.stringContaining('no figure of this program would hold')],
    ]);
  });
});
