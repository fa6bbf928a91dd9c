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
      /^The braided hoses alone change nothing in the distance of one cold stop from 60 mph \(less than 1 ft either way\)\./,
    );
    expect(hoseChange?.verdict).toContain('None of its parts changes the distance of one cold stop.');
  });

  it('say where the tires are the limit, and that the rest is not the brakes', () => {
    expect([asFound?.limitedBy, kit?.limitedBy, hoses?.limitedBy]).toEqual([
      'tire grip',
      'tire grip',
      'tire grip',
    ]);
    expect(prediction.sentence).toMatch(/; a gain that people report would be tires, surface or driver\.$/);
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
    expect(soft.sentence).toMatch(/the tires still have grip left at this pedal force\.$/);
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
    expect(dangerous.sentence).toMatch(/^DANGER: the rear wheels lock first with /);
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

describe('a verdict that somebody tried to break', () => {
  const codesOf = (found: ReturnType<typeof predict>, id: string) =>
    found.warnings.filter(({ about }) => about === id).map(({ code, severity }) => `${severity} ${code}`);
  /** Front pads that fade, rear pads that don't. */
  const fading = changed(
    'title: Stock front pads, class: road,',
    'title: Stock front pads, class: road, friction: [[20 °C, 0.38], [200 °C, 0.38], [350 °C, 0.15], [900 °C, 0.08]],',
  ).replace(
    'title: Rear pads, class: road,',
    'title: Rear pads, class: road, friction: [[20 °C, 0.38], [900 °C, 0.38]],',
  );

  it('names the stop from which fading front brakes let the rear lock first', () => {
    const found = predict(jobOf(fading), { draws: 40, setUps: ['as-found'] });
    const [setUp] = found.setUps;
    expect(setUp?.balance.firstToLock).toBe('front');
    const from = setUp?.balance.rearFirstFromStop ?? 0;
    expect(from).toBeGreaterThanOrEqual(1);
    expect(codesOf(found, 'as-found')).toContain('danger rear-locks-first-hot');
    expect(found.sentence).toContain(`the rear wheels lock first with "As found" from stop ${from} of 8 on`);
    expect(setUp?.balance.rearFirstShareHot).toBeGreaterThan(setUp?.balance.rearFirstShare ?? 1);
  });

  it('looks at the lock order with the lift of the speed asked about', () => {
    const lifting = jobOf(
      changed('wheelbase: 96 in', 'wheelbase: 96 in\n  rearLiftArea: { value: 0.9 m², origin: measured }'),
    );
    const slow = predict(lifting, { draws: 20, setUps: ['as-found'], speed: 5 });
    const fast = predict(lifting, { draws: 20, setUps: ['as-found'], speed: 60 });
    expect(codesOf(slow, 'as-found')).not.toContain('danger rear-locks-first');
    expect(codesOf(fast, 'as-found')).toContain('danger rear-locks-first');
  });

  it('never gives the full-pressure distance of a pedal on the floor', () => {
    const fluid = (air: string) =>
      changed('title: Fluid as found, class: dot4', `title: Fluid as found, class: dot4, trappedAir: ${air}`);
    const sound = predict(job, { draws: 20, setUps: ['as-found'] }).setUps[0];
    const floored = predict(jobOf(fluid('30 cm³')), { draws: 20 });
    expect(floored.setUps[0]?.pedalBottoms).toBe(true);
    expect(floored.setUps[0]?.pedalForceThere_N).toBeLessThan(floored.pedalForce_N);
    expect(floored.setUps[0]?.distance_m.value).toBeGreaterThan(2 * (sound?.distance_m.value ?? Infinity));
    expect(floored.setUps[0]?.frontLinePressure_Pa.value).toBeLessThan(
      0.3 * (sound?.frontLinePressure_Pa.value ?? 0),
    );
    expect(floored.differences[0]?.verdict).toContain('No verdict on distance');
    expect(floored.differences[0]?.verdict).not.toMatch(/ft from 60 mph/);
  });

  it('calls old fluid that boils in the repeated stops a danger, and says nothing of fluid that stays cool', () => {
    const hard = changed('count: 8, interval: 40 s', 'count: 25, interval: 25 s').replace(
      'title: Fluid as found, class: dot4',
      'title: Fluid as found, class: dot3, age: 8 years',
    );
    const hot = predict(jobOf(hard), { draws: 40, speed: 42, setUps: ['as-found'] });
    const [setUp] = hot.setUps;
    expect(setUp?.fluid?.highest_C.value).toBeGreaterThan(setUp?.fluid?.boiling_C ?? Infinity);
    expect(hot.warnings.find(({ code }) => code === 'fluid-boils')?.message).toMatch(
      /fluid reaches \d+ °F .*boils at \d+ °F at its age: the pedal then goes to the floor/,
    );
    expect(hot.sentence).toContain('the fluid boils in the repeated stops or after them');
    const cool = predict(job, { draws: 20, speed: 8 });
    expect(cool.warnings.some(({ code }) => code.startsWith('fluid-'))).toBe(false);
    expect(cool.setUps[0]?.fluid?.boilsShare).toBe(0);
  });

  it('has the fluid hottest after the last stop, while the car stands', () => {
    const row = asFound?.repeatedStops ?? [];
    const before = Math.max(...row.slice(0, -1).map(({ fluidPeak_C }) => fluidPeak_C));
    expect(row.at(-1)?.fluidPeak_C).toBeGreaterThan(before);
    expect(asFound?.fluid?.highest_C.value).toBe(row.at(-1)?.fluidPeak_C);
  });

  it('cautions that one friction figure knows no fade', () => {
    const single = jobOf(
      changed(
        'title: Stock front pads, class: road,',
        'title: Stock front pads, class: road, friction: 0.38,',
      ),
    );
    const found = predict(single, { draws: 20, speed: 45, setUps: ['as-found'] });
    expect(codesOf(found, 'as-found')).toContain('caution one-friction-figure');
  });

  it('cautions where pads start colder than their table', () => {
    const cold = jobOf(
      changed(
        'title: Stock front pads, class: road,',
        'title: Stock front pads, class: road, friction: [[400 °F, 0.39], [1100 °F, 0.3]],',
      ),
    );
    expect(codesOf(predict(cold, { draws: 20 }), 'as-found')).toContain('caution friction-below-table');
  });

  it('ends a row before rotors that no formula covers, and says so', () => {
    const absurd = jobOf(changed('count: 8, interval: 40 s', 'count: 40, interval: 10 s'));
    const found = predict(absurd, { draws: 20, speed: 60, setUps: ['as-found'] });
    expect(found.setUps[0]?.repeatedStops.length).toBeLessThan(40);
    expect(found.setUps[0]?.repeatedStops.at(-1)?.beyondModel).toBe(true);
    expect(codesOf(found, 'as-found')).toEqual(
      expect.arrayContaining(['danger rotor-beyond-computing', 'caution rotor-beyond-model']),
    );
    expect(found.warnings.some(({ code }) => code === 'interval-too-short')).toBe(true);
  });

  it.each(['gravel', 'packedSnow', 'ice'])('says that %s is only an order of size', (surface) => {
    const loose = predict(jobOf(changed('surface: dry', `surface: ${surface}`)), { draws: 40 });
    const dry = predict(jobOf(exampleJobText), { draws: 40 });
    expect(loose.warnings.map(({ code }) => code)).toContain('loose-or-frozen-road');
    expect(dry.warnings.map(({ code }) => code)).not.toContain('loose-or-frozen-road');
    const [onLoose, onDry] = [loose, dry].map(({ setUps }) => setUps[0]?.distance_m.value ?? NaN);
    expect(onLoose).toBeGreaterThan(1.3 * (onDry ?? NaN));
  });

  it('takes water by speed, depth and tread, and says where its table ends', () => {
    const onWater = (change: string, speed: number) =>
      predict(jobOf(changed('surface: dry', change)), { draws: 8, speed, setUps: ['as-found'] });
    const length = (change: string, speed: number) => onWater(change, speed).setUps[0]!.distance_m.value;
    const excess = (speed: number) => length('surface: wet', speed) / length('surface: dry', speed);
    expect(excess(30)).toBeGreaterThan(excess(14) + 0.15);
    const deep = 'surface: wet\n  waterDepth: 1 mm';
    expect(length(deep, 30)).toBeGreaterThan(1.1 * length('surface: wet', 30));
    const codes = (change: string, speed: number) => onWater(change, speed).warnings.map(({ code }) => code);
    expect(codes('surface: wet', 30)).toContain('grip-on-water');
    expect(codes('surface: wet', 30)).not.toContain('water-out-of-range');
    expect(codes('surface: wet', 38)).toContain('water-out-of-range');
    expect(codes('surface: dry', 38)).not.toContain('grip-on-water');
  });

  it('lets a stated surface factor hold for the water, and a wet road without water be a damp one', () => {
    const road = (change: string) => jobOf(changed('surface: dry', change)).conditions.facts;
    expect(road('surface: wet\n  surfaceFactor: 0.6').waterDepth.value).toBe(0);
    expect(road('surface: wet\n  waterDepth: 0 mm').surfaceFactor.value).toBe(
      road('surface: damp').surfaceFactor.value,
    );
    expect(road('surface: wet').waterDepth.value).toBeGreaterThan(0);
  });

  it('claims no sure saving on water', () => {
    const wet = predict(jobOf(changed('surface: dry', 'surface: wet')), { draws: 40, pedalForce: 60 });
    expect(wet.sentence).toContain('no saving here is sure');
    for (const { verdict } of wet.differences) expect(verdict).not.toMatch(/ saves? [\d.]+ to /);
  });

  it('counts draws in which no foot reaches the tires, and caps their force', () => {
    const weak = predict(jobOf(changed('gain: 4.5', 'gain: 1')), { draws: 100, setUps: ['as-found'] });
    const [setUp] = weak.setUps;
    const share = setUp?.limitBeyondFootShare ?? 0;
    expect(share).toBeGreaterThan(0);
    if (setUp?.pedalForceAtLimit_N) expect(setUp.pedalForceAtLimit_N.high).toBeLessThanOrEqual(1000);
  });

  it('takes a measured vacuum as it was read, at any altitude', () => {
    const pressureAt = (vacuum: string, altitude: string) =>
      predict(
        jobOf(
          changed('diaphragmDiameter: 9 in', `diaphragmDiameter: 9 in, vacuum: ${vacuum}`).replace(
            'surface: dry',
            `surface: dry\n  altitude: ${altitude}`,
          ),
        ),
        { draws: 20, setUps: ['as-found'], pedalForce: 900 },
      ).setUps[0]?.frontLinePressure_Pa.value;
    const measured = '{ value: 60 kPa, origin: measured }';
    expect(pressureAt(measured, '10000 ft')).toBe(pressureAt(measured, '0 ft'));
    const specified = '{ value: 60 kPa, origin: specified }';
    expect(pressureAt(specified, '10000 ft')).toBeLessThan(pressureAt(specified, '0 ft') ?? 0);
  });

  it('does not take bled air for a change of the ABS calibration', () => {
    const bled = changed(
      'fluid: { kind: fluid, title: Fluid as found, class: dot4 }',
      'fluid: { kind: fluid, title: Fluid as found, class: dot4, trappedAir: 4 cm³ }\n  fresh: { kind: fluid, title: Fresh, class: dot4, trappedAir: 0 cm³ }',
    ).replace('    title: Braided hoses only\n', '    title: Braided hoses only\n    fluid: fresh\n');
    const volumeOf = (text: string) =>
      predict(jobOf(text), { draws: 20 }).warnings.find(
        ({ code, about }) => code === 'antilock-calibration' && about === 'hoses-only',
      )?.message;
    expect(volumeOf(bled)).toBe(volumeOf(exampleJobText));
  });

  it('names the set-up that is out of range', () => {
    const odd = jobOf(
      changed('title: Master cylinder, bore: 7/8 in', 'title: Master cylinder, bore: 0.4 in'),
    );
    expect(() => predict(odd, { draws: 20, pedalForce: 4900 })).toThrow(/"As found"/);
  });

  it('names the two largest effects of a budget, in whole feet', () => {
    for (const { sentence } of prediction.budgets) {
      expect(sentence).not.toMatch(/\d\.\d+ ft/);
      expect(sentence.match(/\(\d+ ft\)/g)?.length ?? 0).toBeLessThanOrEqual(2);
    }
  });
});
