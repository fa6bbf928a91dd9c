import { randomStream } from '@standstill/numerics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleSetUp } from '../../set-up/example-set-up.ts';
import type { AxleBrake } from '../../set-up/axle-brake.ts';
import type { SetUp } from '../../set-up/set-up.ts';
import { pedalTravel } from '../../travel/pedal-travel.ts';
import { assistLost } from '../assist-lost.ts';
import { fitPedal, type FitPedalInput } from './fit-pedal.ts';
import { pedalReading } from './pedal-reading.ts';
import { splitCompliance, splitParts, type SplitPart } from './split-compliance.ts';

function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
}

/** Pedals with hoses that give in a straight line, pushed with the vacuum exhausted: what the fit takes them for. */
const anyMadePedal = fc
  .record({
    trappedAir: between(0, 8e-6),
    freePlay: between(0.001, 0.02),
    flex: between(0, 1e-5),
    ratio: between(3, 6),
    bore: between(0.019, 0.027),
    frontGrowth: between(1e-7, 3e-6),
    rearGrowth: between(1e-7, 3e-6),
    squeeze: between(0, 3e-11),
    stretch: between(1e-14, 2e-13),
    clearance: between(0, 3e-4),
    first: between(12, 25),
    last: between(300, 600),
    count: fc.integer({ min: 4, max: 12 }),
  })
  .map(({ first, last, count, ...made }) => ({ setUp: setUpOf(made), forces: forcesOf(first, last, count) }));

type Made = Readonly<
  Record<
    | 'trappedAir'
    | 'freePlay'
    | 'flex'
    | 'ratio'
    | 'bore'
    | 'frontGrowth'
    | 'rearGrowth'
    | 'squeeze'
    | 'stretch'
    | 'clearance',
    number
  >
>;

function setUpOf(made: Made): SetUp {
  const brake = (from: AxleBrake, growth: number): AxleBrake => ({
    ...from,
    caliper: { ...from.caliper, volumeCompliance: made.stretch },
    pad: { ...from.pad, compressibility: made.squeeze },
    hose: { length: 0.4, pressures: [1e7], expansions: [growth] },
    runningClearance: made.clearance,
  });
  return assistLost({
    ...exampleSetUp,
    pedal: { ...exampleSetUp.pedal, freePlay: made.freePlay, flex: made.flex, ratio: made.ratio },
    masterCylinder: { kind: 'tandem', bore: made.bore, stroke: 0.036, efficiency: 0.95 },
    rearValve: { kind: 'none' },
    fluid: { ...exampleSetUp.fluid, trappedAir: made.trappedAir },
    frontBrake: brake(exampleSetUp.frontBrake, made.frontGrowth),
    rearBrake: brake(exampleSetUp.rearBrake, made.rearGrowth),
  });
}

/** Forces in equal ratios: light ones close together, where the air shows. */
function forcesOf(first: number, last: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => first * (last / first) ** (index / (count - 1)));
}

/** m³/Pa: what the parts give together, above push-out. */
function complianceOf(setUp: SetUp): number {
  const at = (pedalForce: number) => {
    const travel = pedalTravel({ setUp, pedalForce });
    const { air, clearance, freePlay, flex } = travel.parts;
    return travel.travel - air - clearance - freePlay - flex;
  };
  const [light, hard] = [200, 400].map((pedalForce) => pedalReading(setUp, { pedalForce, travel: 0 }).front);
  const area =
    (Math.PI / 4) * (setUp.masterCylinder.kind === 'tandem' ? setUp.masterCylinder.bore : NaN) ** 2;
  return (((at(400) - at(200)) / setUp.pedal.ratio) * area) / (hard! - light!);
}

function fitOf(
  setUp: SetUp,
  forces: readonly number[],
  noise: { readonly travel: number; readonly force: number },
  seed: number,
): FitPedalInput {
  const stream = randomStream(seed, 'made pedal');
  const readings = forces.map((force) => {
    const { travel } = pedalTravel({ setUp, pedalForce: force });
    const read = force * (1 + noise.force * stream.normal());
    return pedalReading(setUp, {
      pedalForce: read,
      travel: Math.max(0, travel + noise.travel * stream.normal()),
    });
  });
  return { setUp, readings, travelSpread: Math.max(noise.travel, 1e-4), forceSpread: noise.force };
}

const anySeed = fc.integer({ min: 1, max: 1_000_000 });

describe('a measured pedal', () => {
  it('gives back air, compliance and offset of a made one without noise', () => {
    fc.assert(
      fc.property(anyMadePedal, ({ setUp, forces }) => {
        const { air, compliance, offset } = fitPedal(fitOf(setUp, forces, { travel: 0, force: 0 }, 1));
        expect(Math.abs(air.value - setUp.fluid.trappedAir)).toBeLessThan(1e-6 * 8e-6);
        expect(compliance.value / complianceOf(setUp)).toBeCloseTo(1, 6);
        const { parts } = pedalTravel({ setUp, pedalForce: forces[0]! });
        // Pads are squeezed from push-out on alone: that takes a little off the offset.
        expect(offset.value).toBeLessThanOrEqual(parts.freePlay + parts.clearance + 1e-6);
        expect(offset.value).toBeGreaterThan(0.9 * (parts.freePlay + parts.clearance) - 1e-4);
      }),
      { numRuns: 500 },
    );
  });

  it('covers what was made in at least 93 % of pedals, with noise in travel and force', () => {
    const covered = { air: 0, compliance: 0, runs: 0, width: [] as number[] };
    fc.assert(
      fc.property(anyMadePedal, anySeed, ({ setUp, forces }, seed) => {
        const { air, compliance } = fitPedal(fitOf(setUp, forces, { travel: 0.001, force: 0.03 }, seed));
        covered.runs += 1;
        covered.width.push(air.high - air.low);
        if (air.low <= setUp.fluid.trappedAir && setUp.fluid.trappedAir <= air.high) covered.air += 1;
        const made = complianceOf(setUp);
        if (compliance.low <= made && made <= compliance.high) covered.compliance += 1;
      }),
      { numRuns: 3000 },
    );
    const median = covered.width.sort((a, b) => a - b)[Math.floor(covered.runs / 2)] ?? NaN;
    console.info(
      `coverage of air ${covered.air / covered.runs}, of compliance ${covered.compliance / covered.runs}, median width of the air ${(median * 1e6).toFixed(2)} cm³`,
    );
    expect(covered.air / covered.runs).toBeGreaterThanOrEqual(0.93);
    expect(covered.compliance / covered.runs).toBeGreaterThanOrEqual(0.93);
  });

  it('is surer of the air with lighter pushes, and knows hardly anything from hard ones alone', () => {
    fc.assert(
      fc.property(anyMadePedal, ({ setUp }) => {
        const noise = { travel: 0, force: 0.02 };
        const light = fitPedal(fitOf(setUp, forcesOf(12, 400, 8), noise, 1));
        const hard = fitPedal(fitOf(setUp, forcesOf(200, 400, 8), noise, 1));
        expect(hard.condition).toBeGreaterThan(3 * light.condition);
        expect(hard.air.spread).toBeGreaterThan(light.air.spread);
      }),
      { numRuns: 500 },
    );
  });
});

const priorSpreads = Object.fromEntries(splitParts.map((part) => [part, 0.3])) as Record<SplitPart, number>;

describe('the split among the parts', () => {
  it('is never less sure than before, sums to the measured travel, and hardly narrows hoses, pads and calipers', () => {
    fc.assert(
      fc.property(anyMadePedal, ({ setUp, forces }) => {
        const { readings } = fitOf(setUp, forces, { travel: 0, force: 0 }, 1);
        const plain = readings.map((reading) => ({ ...reading, frontPlugged: 0, rearPlugged: 0 }));
        const split = splitCompliance({
          setUp,
          readings: plain,
          travelSpread: 0.001,
          forceSpread: 0.02,
          priorSpreads,
          airSpread: 5e-6,
        });
        let sum = 0;
        for (const { narrowing, posterior } of split.parts) {
          expect(narrowing).toBeLessThanOrEqual(1 + 1e-9);
          sum += posterior;
        }
        const hardest = readings.at(-1)!.travel;
        expect(Math.abs(sum - hardest)).toBeLessThan(0.004);
        expect(split.condition).toBeGreaterThan(1e3);
      }),
      { numRuns: 500 },
    );
  });

  it('knows the front corners better once they are plugged in half of the pushes', () => {
    fc.assert(
      fc.property(anyMadePedal, ({ setUp, forces }) => {
        const { readings } = fitOf(setUp, forces, { travel: 0, force: 0 }, 1);
        const of = (frontPlugged: number) => {
          const all = [
            ...readings.map((reading) => ({ ...reading, frontPlugged: 0, rearPlugged: 0 })),
            ...readings.map((reading) => ({ ...reading, frontPlugged, rearPlugged: 0 })),
          ];
          const split = splitCompliance({
            setUp,
            readings: all,
            travelSpread: 0.001,
            forceSpread: 0.02,
            priorSpreads,
            airSpread: 5e-6,
          });
          return split.parts.find(({ part }) => part === 'frontAir')!.posteriorSpread;
        };
        expect(of(2)).toBeLessThan(of(0));
      }),
      { numRuns: 500 },
    );
  });
});
