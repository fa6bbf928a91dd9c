import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import { prediction as predictionSchema } from '../results/prediction.ts';
import { CannotStopError } from './cannot-stop-error.ts';
import { predict } from './predict.ts';

function jobOf(text: string): Job {
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

/** The example with one thing changed; fails where the text to change is not there. */
function changed(from: string, to: string): string {
  if (!exampleJobText.includes(from)) throw new Error(`no "${from}" in the example`);
  return exampleJobText.replace(from, to);
}

const job = jobOf(exampleJobText);
const prediction = predict(job, { draws: 200 });
const [asFound, kit, hoses] = prediction.setUps;
const [kitChange, hoseChange] = prediction.differences;

describe('a prediction', () => {
  it('is what its published schema says', () => {
    expect(predictionSchema.parse(JSON.parse(JSON.stringify(prediction)))).toEqual(prediction);
  });

  it('answers about every set-up, and sets the others against the car as found', () => {
    expect(prediction.setUps.map(({ id }) => id)).toEqual(['as-found', 'front-kit', 'hoses-only']);
    expect(prediction.differences.map(({ id, against }) => [id, against])).toEqual([
      ['front-kit', 'as-found'],
      ['hoses-only', 'as-found'],
    ]);
  });

  it('takes its central values from the central inputs, inside their intervals', () => {
    const few = predict(job, { draws: 20, seed: 7 });
    expect(few.setUps.map(({ distance_m }) => distance_m.value)).toEqual(
      prediction.setUps.map(({ distance_m }) => distance_m.value),
    );
    for (const { distance_m, pedalTravel_m, frontRotorPeak_C } of prediction.setUps) {
      for (const { value, low, high } of [distance_m, pedalTravel_m, frontRotorPeak_C]) {
        expect(low).toBeLessThan(value);
        expect(high).toBeGreaterThan(value);
      }
    }
  });

  it('is the same for the same seed and another for another', () => {
    expect(predict(job, { draws: 40, seed: 3 })).toEqual(predict(job, { draws: 40, seed: 3 }));
    expect(predict(job, { draws: 40, seed: 4 }).setUps[0]?.distance_m.low).not.toBe(
      predict(job, { draws: 40, seed: 3 }).setUps[0]?.distance_m.low,
    );
  });

  it('draws a set-up alike whatever it is set beside', () => {
    const alone = predict(job, { draws: 200, setUps: ['front-kit'] });
    expect(alone.setUps[0]).toEqual(kit);
    expect(alone.differences).toEqual([]);
  });

  it('splits the change over the parts without losing a foot', () => {
    const sum = kitChange?.byPart.reduce((total, { distance_m }) => total + distance_m, 0) ?? NaN;
    expect(kitChange?.byPart.map(({ part }) => part)).toEqual([
      'frontCaliper',
      'frontPad',
      'frontRotor',
      'frontHose',
    ]);
    expect(Math.abs(sum - (kitChange?.distance_m.value ?? NaN))).toBeLessThan(1e-9);
  });

  it('splits each stop over what makes it longer than the ideal one', () => {
    for (const { ideal_m, total_m, shares } of prediction.budgets) {
      const sum = shares.reduce((total, { distance_m }) => total + distance_m, ideal_m);
      expect(Math.abs(sum - total_m)).toBeLessThan(1e-9);
      expect(ideal_m).toBeLessThan(total_m);
    }
  });

  it('answers about another speed and foot where asked', () => {
    const slow = predict(job, { draws: 20, speed: 13.4, pedalForce: 100 });
    expect([slow.speed_m_s, slow.pedalForce_N]).toEqual([13.4, 100]);
    expect(slow.setUps[0]?.limitedBy).toBe('brake torque');
    expect(slow.setUps[0]?.distance_m.value).toBeLessThan(asFound?.distance_m.value ?? 0);
  });

  it('refuses a set-up that the job does not have', () => {
    expect(() => predict(job, { setUps: ['front-kti'] })).toThrow('the job has no set-up "front-kti"');
  });

  it('refuses to name a distance where the car never stops', () => {
    const downhill = jobOf(changed('surface: dry', 'surface: wet\n  grade: -25 %')); // far steeper than 20 N can hold
    expect(() => predict(downhill, { pedalForce: 20, draws: 20 })).toThrow(CannotStopError);
  });
});

describe('the words', () => {
  it('promise no more than the interval', () => {
    const { low, high } = kitChange?.distance_m ?? { low: NaN, high: NaN };
    expect(low).toBeLessThan(-0.3);
    expect(high).toBeGreaterThan(-0.3);
    expect(kitChange?.verdict).toMatch(
      /^The front kit alone saves at most [\d.]+ ft from 60 mph, perhaps nothing\./,
    );
  });

  it('say in so many words that hoses change nothing in the distance', () => {
    expect(hoseChange?.verdict).toMatch(
      /^The braided hoses alone change nothing from 60 mph \(less than 1 ft either way\)\./,
    );
    expect(hoseChange?.verdict).toContain('None of its parts changes the distance of one stop.');
  });

  it('say where the tires are the limit, and that the rest is not the brakes', () => {
    expect([asFound?.limitedBy, kit?.limitedBy, hoses?.limitedBy]).toEqual([
      'tire grip',
      'tire grip',
      'tire grip',
    ]);
    expect(prediction.sentence).toMatch(
      /; the rest of the gain people report would be tires, surface or driver\.$/,
    );
    expect(kitChange?.verdict).toContain("more brake can't shorten this stop");
  });

  it('say what heat does', () => {
    expect(kitChange?.verdict).toMatch(
      /After 8 stops in a row .* front rotors reach about \d+ °F instead of \d+ °F\./,
    );
  });

  it('say that a soft push leaves grip on the road', () => {
    const soft = predict(job, { pedalForce: 60, draws: 40 });
    expect(soft.differences[0]?.verdict).toContain('the tires have grip left for a harder push');
    expect(soft.sentence).toMatch(
      /^The front kit alone saves [\d.]+ to [\d.]+ ft from 60 mph here.*the tires still have grip left at this pedal force\.$/,
    );
  });

  it('come in metric units too', () => {
    const metric = predict(job, { draws: 40, units: 'metric', speed: 100 / 3.6 });
    expect(metric.sentence).toContain('100 km/h');
    expect(metric.sentence).not.toMatch(/ ft| mph/);
    expect(metric.assumed.find(({ path }) => path === 'car.dragArea')?.text).toMatch(/m²/);
  });

  it('answer for one set-up alone', () => {
    const alone = predict(job, { draws: 60, setUps: ['as-found'] });
    expect(alone.sentence).toMatch(
      /^As found: the car stops from 60 mph in \d+ to \d+ ft at 90 lbf on the pedal; the tires are the limit\.$/,
    );
  });
});

describe('warnings', () => {
  it('shout where the rear wheels lock first', () => {
    const text = changed('pistons: [34 mm]', 'pistons: [48 mm]').replace(
      'rearValve: valve',
      'rearValve: none',
    );
    const dangerous = predict(jobOf(text), { draws: 40 });
    expect(dangerous.warnings[0]).toMatchObject({
      code: 'rear-locks-first',
      severity: 'danger',
      about: 'as-found',
    });
    expect(dangerous.sentence).toMatch(
      /^DANGER: with "As found"(?:, "[^"]+")*(?: and "[^"]+")? the rear wheels lock first\./,
    );
    expect(dangerous.setUps[0]?.balance).toMatchObject({ firstToLock: 'rear' });
    expect(dangerous.setUps[0]?.balance.rearFirstShare).toBeGreaterThan(0.5);
  });

  it('find a rear-first lock that only a slippery road shows', () => {
    // Strong rear brakes behind a valve with a low knee: right on the dry road, wrong on ice.
    const text = changed('kneePressure: 430 psi, slope: 0.35', 'kneePressure: 200 psi, slope: 0.2').replace(
      'pistons: [34 mm]',
      'pistons: [54 mm]',
    );
    const found = predict(jobOf(text), { draws: 40 });
    expect(found.setUps[0]?.balance.firstToLock).toBe('front');
    expect(
      found.warnings.filter(({ severity }) => severity === 'danger').map(({ about }) => about),
    ).toContain('as-found');
  });

  it('print what changes of the ABS calibration, marked beyond 10 %', () => {
    const warning = prediction.warnings.find(
      ({ code, about }) => code === 'antilock-calibration' && about === 'front-kit',
    );
    expect(warning?.severity).toBe('caution');
    expect(warning?.message).toMatch(/front torque per pressure \+\d+ %/);
    expect(warning?.message).toMatch(/beyond ±10 % \(assumed limit\): front torque per pressure/);
    expect(warning?.message).toContain('Nothing here says that they still work as approved');
  });

  it('leave ABS out on a car without it', () => {
    const without = predict(jobOf(changed('antilock: abs', 'antilock: none')), { draws: 40 });
    expect(without.warnings.some(({ code }) => code === 'antilock-calibration')).toBe(false);
    expect(without.warnings.find(({ code }) => code === 'driver-at-limit')?.message).toMatch(
      /^All set-ups: without ABS/,
    );
  });

  it('call a pedal that meets the floor a danger', () => {
    const soft = predict(
      jobOf(
        changed(
          'title: Fluid as found, class: dot4',
          'title: Fluid as found, class: dot4, trappedAir: 30 cm³',
        ),
      ),
      { draws: 40 },
    );
    expect(soft.warnings[0]).toMatchObject({ code: 'pedal-bottoms', severity: 'danger' });
  });

  it('say where friction is only guessed at', () => {
    const hot = predict(jobOf(changed('count: 8, interval: 40 s', 'count: 30, interval: 15 s')), {
      draws: 20,
      speed: 50,
    });
    expect(hot.warnings.find(({ code }) => code === 'friction-beyond-table')?.severity).toBe('caution');
  });

  it('come with the dangerous ones first', () => {
    const order = prediction.warnings.map(({ severity }) => ['danger', 'caution', 'note'].indexOf(severity));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });
});
