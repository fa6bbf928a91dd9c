import { describe, expect, it } from 'vitest';
import { readJob } from '../reading/read-job.ts';

/** An invented car in the layout of version 1: units in the keys, one proposed set-up. */
const version1 = `standstill: 1
title: Old layout
customerComplaint: Long pedal.
car: { name: Invented car, class: compact, mass_lb: 2400, wheelbase_in: 95, frontLoadShare_percent: 60 }
conditions: { surface: dry, speed_mph: 60, pedalForce_lbf: 80 }
parts:
  tires: { kind: tire, title: Tires, class: road, rollingRadius_in: 11.5 }
  pedal: { kind: pedal, title: Pedal, ratio: 4 }
  master: { kind: master-cylinder, title: Cylinder, bore_mm: 20.6 }
  caliper: { kind: caliper, title: Calipers, type: floating, pistons_mm: [48] }
  pad: { kind: pad, title: Pads, class: road, area_cm2: 35, radialHeight_mm: 42 }
  soft-pad: { kind: pad, title: Other pads, class: fastRoad, area_cm2: 35, radialHeight_mm: 42 }
  rotor: { kind: rotor, title: Rotors, type: solid, outerDiameter_mm: 240, thickness_mm: 11 }
asFound: { frontTire: tires, rearTire: tires, pedal: pedal, booster: none, masterCylinder: master, frontCaliper: caliper, frontPad: pad, frontRotor: rotor, rearCaliper: caliper, rearPad: pad, rearRotor: rotor }
proposed: { title: Other pads, frontPad: soft-pad }
runs:
  - { id: before, setUp: asFound, log: before.csv, nominalSpeed_mph: 60 }
`;

describe('a job of version 1', () => {
  const reading = readJob(version1, { file: 'old.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));

  it('says what it was written in and comes out in the newest version', () => {
    expect(reading.migratedFrom).toBe(1);
    expect(reading.document.standstill).toBe(2);
    expect(reading.document.complaint).toBe('Long pedal.');
  });

  it('carries units from the keys into the values', () => {
    expect(reading.document.car.mass).toBe('2400 lb');
    expect(reading.job.car.facts.frontLoadShare.value).toBeCloseTo(0.6, 12);
    const caliper = reading.job.parts['caliper'];
    expect(caliper?.kind === 'caliper' ? caliper.pistons[0]?.value : null).toBe(0.048);
  });

  it('turns the two fixed set-ups into a list', () => {
    expect(reading.job.setUps.map(({ id, basedOn }) => [id, basedOn])).toEqual([
      ['as-found', null],
      ['proposed', 'as-found'],
    ]);
    expect(reading.job.setUps[1]?.slots.rearPad).toBe('pad');
    expect(reading.job.runs[0]?.setUp).toBe('as-found');
  });

  it('reads again as version 2 to the same job', () => {
    const again = readJob(JSON.stringify(reading.document), { file: 'new.json' });
    expect(again.ok && again.job).toEqual(reading.job);
    expect(again.ok && again.migratedFrom).toBe(null);
  });

  it.each([
    ['mass_lb: 2400', 'mass_lb: 24', '4:53', 'car.mass is 24 lb; accepted is 331 lb to 17600 lb'],
    [
      'frontPad: soft-pad',
      'frontPad: softpad',
      '15:42',
      'setUps.proposed.frontPad names "softpad", a part that is not under parts; did you mean "soft-pad"?',
    ],
    [
      'pistons_mm: [48]',
      'pistons_mm: [480]',
      '10:75',
      'parts.caliper.pistons[0] is 480 mm; accepted is 15 mm to 100 mm',
    ],
  ])('shows mistakes where they stand in the old file: %s', (good, bad, place, message) => {
    const wrong = readJob(version1.replace(good, bad), { file: 'old.yaml' });
    const problem = wrong.ok ? null : wrong.problems[0];
    expect([`${problem?.line}:${problem?.column}`, problem?.message]).toEqual([place, message]);
  });
});
