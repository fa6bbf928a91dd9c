import type { SetUpPrediction } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { measure } from '../../shared/units/measure.ts';
import { complaintWords } from './complaint-words.ts';

const us = { system: 'us' } as const;
const units = {
  distance: measure('stopping-distance', us),
  temperature: measure('temperature', us),
  share: measure('share', us),
  force: measure('force', us),
};
const stop = (number: number, distance_m: number, frontRotorPeak_C: number) => ({
  stop: number,
  distance_m,
  frontRotorStart_C: 80,
  fluidPeak_C: 90,
  frontRotorPeak_C,
  rearRotorPeak_C: 200,
  beyondModel: false,
});
const setUp = (change: Partial<SetUpPrediction>) =>
  ({
    repeatedStops: [stop(1, 48, 220), stop(2, 45, 400), stop(3, 52, 521)],
    pedalTravelShare: { value: 0.53, low: 0.45, high: 0.62 },
    pedalBottoms: false,
    pedalForceThere_N: 445,
    atTiresLimit: null,
    ...change,
  }) as SetUpPrediction;

describe('complaintWords', () => {
  it('answers the smell and the long stops of the descent, and the soft pedal', () => {
    const words = complaintWords(setUp({}), 444.8, units);
    expect(words).toMatch(/front rotors reach 970\u00a0°F/);
    expect(words).toMatch(/first 157 ft \(stop 1\), best 148 ft \(stop 2\), worst 171 ft \(stop 3\)/);
    expect(words).toMatch(/at 100 lbf it takes 53\u00a0% of its travel \(45 to 62\u00a0%\)/);
  });

  it('says that one stop shows no fade', () => {
    expect(complaintWords(setUp({ repeatedStops: [stop(1, 48, 220)] }), 444.8, units)).toMatch(
      /only one stop/,
    );
  });

  it('a pedal on the floor has no share of travel to speak of', () => {
    const words = complaintWords(setUp({ pedalBottoms: true, pedalForceThere_N: 311.4 }), 444.8, units);
    expect(words).toMatch(/reaches the floor at about 70 lbf/);
    expect(words).not.toMatch(/%/);
  });
});
