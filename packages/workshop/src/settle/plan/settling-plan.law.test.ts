import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knownsOf } from '../../draws/knowns-of.ts';
import { exampleJobText } from '../../job/example-job.testing.ts';
import type { Job } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { readJob } from '../../job/reading/read-job.ts';
import { settle } from '../settle.ts';
import { settlingPlan } from './settling-plan.ts';

const setUpIds = ['as-found', 'front-kit', 'hoses-only'];

/** The example, and the example with the other kind of each part that comes in kinds. */
const jobs: readonly (readonly [name: string, job: Job])[] = [
  ['as it is', jobWith()],
  [
    'with a hydraulic booster and two cylinders',
    jobWith(
      ['type: vacuum, gain: 4.5, diaphragmDiameter: 9 in', 'type: hydraulic, gain: 5, greatestAssist: 5 kN'],
      ['bore: 7/8 in', 'type: balance-bar, frontBore: 20 mm, rearBore: 19 mm, frontForceShare: 55 %'],
    ),
  ],
  [
    'without booster, valve and ABS, with a hand brake on the calipers',
    jobWith(
      ['parts:\n', 'parts:\n  hand: { kind: parking-brake, title: Hand brake, type: caliper }\n'],
      ['    rearTire: tires\n', '    rearTire: tires\n    parkingBrake: hand\n'],
      ['booster: booster', 'booster: none'],
      ['rearValve: valve', 'rearValve: none'],
      ['antilock: abs', 'antilock: none'],
    ),
  ],
  [
    'with rear drums, a stated laden mass, regeneration and creep',
    jobWith(
      [
        '    rearCaliper: rear-caliper\n    rearPad: rear-pad\n    rearRotor: rear-rotor\n',
        '    rearDrum: drum\n    parkingBrake: shoes\n',
      ],
      [
        'parts:\n',
        'parts:\n  shoes: { kind: parking-brake, title: Hand brake, type: drum }\n  drum: { kind: drum, title: Drums, type: simplex, diameter: 9 in, width: 45 mm, cylinderBore: 19 mm }\n',
      ],
      [
        '  wheelbase: 96 in\n',
        '  wheelbase: 96 in\n  laden: { mass: 1500 kg }\n  regeneration: { share: 10 % }\n  creep: { share: 3 % }\n',
      ],
    ),
  ],
  [
    'with a vacuum that was measured',
    jobWith([
      'diaphragmDiameter: 9 in',
      'diaphragmDiameter: 9 in, vacuum: { value: 18 inHg, origin: measured }',
    ]),
  ],
];

describe.each(jobs)('a settling plan, the example %s', (_, job) => {
  it('writes into its records, bit by bit, what settle answers', () => {
    const pick = fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true }));
    const speed = fc.option(fc.double({ min: 5, max: 60, noNaN: true }), { nil: undefined });
    const pedalForce = fc.option(fc.double({ min: 10, max: 900, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(pick, pick, speed, pedalForce, (chances, shares, askedSpeed, force) => {
        const vague = withChanceSpreads(job, chances);
        const overrides = { speed: askedSpeed, pedalForce: force };
        const knowns = knownsOf(vague, setUpIds);
        const plan = settlingPlan(vague, setUpIds, knowns, overrides);
        expect(plan.isInPlace).toBe(true);
        for (let draw = 0; draw < 2; draw += 1) {
          const values = Float64Array.from(knowns, (known) => within(known, shares.next().value ?? 0.5));
          const drawn = new Map(knowns.map(({ path }, column) => [path, values[column]]));
          plan.fill(values, 1, 0);
          setUpIds.forEach((id, index) => {
            const expected = settle(vague, id, ({ path, value }) => drawn.get(path) ?? value, overrides);
            expect(plan.settled[index]).toStrictEqual(expected);
          });
        }
      }),
      { numRuns: 500 },
    );
  });
});

/** The example with some texts changed; fails where a text to change is not there. */
function jobWith(...changes: readonly (readonly [from: string, to: string])[]): Job {
  const text = changes.reduce((changed, [from, to]) => {
    if (!changed.includes(from)) throw new Error(`no "${from}" in the example`);
    return changed.replace(from, to);
  }, exampleJobText);
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

/** The job with every number either exact or uncertain, as chance has it; a number that is used twice stays one. */
function withChanceSpreads(job: Job, chances: Iterator<number>): Job {
  const spreads = new Map<string, number>();
  const changed = (value: unknown): unknown => {
    if (isKnown(value)) {
      const { path } = value;
      if (!spreads.has(path)) spreads.set(path, (chances.next().value ?? 0) < 0.7 ? 1 : 0);
      return { ...value, spread: spreads.get(path) };
    }
    if (Array.isArray(value)) return value.map(changed);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, changed(inner)]));
  };
  const { car, conditions, parts } = job;
  return { ...job, ...(changed({ car, conditions, parts }) as Pick<Job, 'car' | 'conditions' | 'parts'>) };
}

function isKnown(value: unknown): value is Known {
  return typeof value === 'object' && value !== null && 'spread' in value && 'path' in value;
}

/** A value that can be true: within half and twice the stated one, and inside its range. */
function within({ value, low, high }: Known, share: number): number {
  const wide = value === 0 ? share : value * (0.5 + 1.5 * share);
  return Math.min(high, Math.max(low, wide));
}
