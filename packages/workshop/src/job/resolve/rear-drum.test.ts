import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../example-job.testing.ts';
import type { Job } from '../job.ts';
import { readJob } from '../reading/read-job.ts';
import { settle } from '../../settle/settle.ts';

const drum =
  'drum: { kind: drum, title: Rear drums, type: simplex, diameter: 9 in, width: 45 mm, cylinderBore: 3/4 in }';
const hand = 'hand: { kind: parking-brake, title: Hand brake, type: caliper }';
const hat = 'hat: { kind: parking-brake, title: Hat brake, type: drum-in-hat, operatedBy: foot }';
const shoes = 'shoes: { kind: parking-brake, title: Hand brake on the drums, type: drum, operatedBy: hand }';
const partsOf = (...parts: readonly string[]): readonly [string, string] => [
  'parts:\n',
  `parts:\n${parts.map((part) => `  ${part}\n`).join('')}`,
];
const setUpOf = (id: string, lines: string): readonly [string, string] => [
  'runs:\n',
  `  ${id}: { title: ${id}, ${lines} }\n\nruns:\n`,
];

function reading(...changes: readonly (readonly [from: string, to: string])[]) {
  const text = changes.reduce((changed, [from, to]) => {
    if (!changed.includes(from)) throw new Error(`no "${from}" in the example`);
    return changed.replace(from, to);
  }, exampleJobText);
  return readJob(text.replace(/\n\n {2}(\w)/g, '\n  $1'), { file: 'job.yaml' });
}

function jobWith(...changes: readonly (readonly [from: string, to: string])[]): Job {
  const read = reading(...changes);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.job;
}

function problemsOf(...changes: readonly (readonly [from: string, to: string])[]): readonly string[] {
  const read = reading(...changes);
  return read.ok ? [] : read.problems.map(({ message }) => message);
}

const slotsOf = (job: Job, id: string) => job.setUps.find((setUp) => setUp.id === id)!.slots;

describe('a rear drum', () => {
  const swap = jobWith(
    partsOf(drum),
    setUpOf('drums', 'basedOn: as-found, rearDrum: drum'),
    setUpOf('harder', 'basedOn: drums, frontPad: kit-pad'),
    setUpOf('back', 'basedOn: harder, rearCaliper: rear-caliper, rearPad: rear-pad, rearRotor: rear-rotor'),
  );

  it('stands for caliper, pad and rotor, and a later set-up may put discs back', () => {
    const slots = ['drums', 'harder', 'back'].map((id) => {
      const { rearDrum, rearCaliper, rearPad, rearRotor } = slotsOf(swap, id);
      return [rearDrum, rearCaliper, rearPad, rearRotor];
    });
    expect(slots).toEqual([
      ['drum', null, null, null],
      ['drum', null, null, null],
      [null, 'rear-caliper', 'rear-pad', 'rear-rotor'],
    ]);
  });

  it('settles as the disc that acts like it, in SI, with class defaults that are listed', () => {
    const { rearBrake } = settle(swap, 'drums').setUp;
    expect(rearBrake.rotor.kind).toBe('drum');
    expect(rearBrake.caliper.pistonDiameters[0]).toBeCloseTo(0.01905 * Math.sqrt(2 / 0.76), 9);
    expect(rearBrake.rotor.sweptOuterRadius - rearBrake.pad.radialHeight / 2).toBeCloseTo(0.1143, 9);
    expect(swap.fillings.map(({ path }) => path)).toContain('parts.drum.brakeFactor');
    expect(settle(swap, 'back').setUp.rearBrake).toEqual(settle(swap, 'as-found').setUp.rearBrake);
  });

  it('may be what the car was found with', () => {
    const job = jobWith(partsOf(drum), [
      '    rearCaliper: rear-caliper\n    rearPad: rear-pad\n    rearRotor: rear-rotor\n',
      '    rearDrum: drum\n',
    ]);
    expect(slotsOf(job, 'front-kit')).toMatchObject({ rearDrum: 'drum', rearCaliper: null });
  });

  it('is refused beside discs, and half a disc brake after drums is told', () => {
    expect(
      problemsOf(partsOf(drum), [
        '    rearCaliper: rear-caliper\n',
        '    rearCaliper: rear-caliper\n    rearDrum: drum\n',
      ]),
    ).toEqual([
      expect.stringContaining('setUps.as-found.rearDrum is a drum beside rearCaliper, rearPad and rearRotor'),
    ]);
    expect(
      problemsOf(
        partsOf(drum),
        setUpOf('drums', 'basedOn: as-found, rearDrum: drum'),
        setUpOf('half', 'basedOn: drums, rearPad: rear-pad'),
      ),
    ).toEqual([
      expect.stringContaining('setUps.half.rearCaliper is missing'),
      expect.stringContaining('setUps.half.rearRotor is missing'),
    ]);
  });

  it('too large for its wheel, or with more lining than drum, is refused', () => {
    const large = drum.replace('9 in', '17 in');
    expect(problemsOf(partsOf(large), setUpOf('drums', 'basedOn: as-found, rearDrum: drum'))).toEqual([
      expect.stringContaining('too large for the wheel'),
    ]);
    const lined = drum.replace('width', 'liningArea: 400 cm², width');
    expect(problemsOf(partsOf(lined))).toEqual([expect.stringContaining('more than half of the drum')]);
  });
});

describe('a parking brake', () => {
  const found = ['    rearHose: stock-hose\n', '    rearHose: stock-hose\n    parkingBrake: hand\n'] as const;

  it('is kept until a set-up changes the parts that it sits in', () => {
    const job = jobWith(
      partsOf(drum, hand, shoes),
      found,
      setUpOf('pads', 'basedOn: as-found, rearPad: kit-pad'),
      setUpOf('drums', 'basedOn: as-found, rearDrum: drum'),
      setUpOf('drums-with-brake', 'basedOn: drums, parkingBrake: shoes'),
    );
    const parking = ['as-found', 'front-kit', 'pads', 'drums', 'drums-with-brake'].map(
      (id) => slotsOf(job, id).parkingBrake,
    );
    expect(parking).toEqual(['hand', 'hand', 'hand', null, 'shoes']);
  });

  it('of another kind than the rear brake is refused, and so are facts without meaning on it', () => {
    expect(
      problemsOf(partsOf(shoes), [found[0], '    rearHose: stock-hose\n    parkingBrake: shoes\n']),
    ).toEqual([expect.stringContaining('but the rear has discs')]);
    const odd = hat.replace('operatedBy', 'clampRatio: 15, operatedBy');
    expect(problemsOf(partsOf(odd))).toEqual([
      expect.stringContaining('parts.hat.clampRatio has no meaning'),
    ]);
  });

  it('pulled by a foot has the foot of the standard', () => {
    const part = jobWith(partsOf(hat)).parts['hat'];
    expect(part?.kind === 'parking-brake' && part.facts.force.value).toBe(500);
  });
});
