import type { StopResult } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { measure } from '../../../shared/units/measure.ts';
import { stopWords } from './stop-printer.ts';

const feet = measure('stopping-distance', { system: 'us' });
const stop = (change: Partial<StopResult>) =>
  ({
    applicationDistance_m: 49.68,
    correctedDistance_m: 48.77,
    gateDistance_m: null,
    distanceStandardError_m: 0.4,
    flags: [],
    ...change,
  }) as unknown as StopResult;

describe('stopWords', () => {
  it('gives each distance its 95 % interval', () => {
    // 49.68 m = 162.99 ft; 1.96 · 0.4 m = 2.57 ft
    expect(stopWords(stop({}), feet)).toEqual({
      driven: '163 (160 to 166) ft',
      atNominal: '160 (157 to 163) ft',
      gate: 'gate not crossed',
    });
  });

  it('a stop from far off the nominal speed has no figure there', () => {
    const flags = [{ code: 'speed-off-nominal', severity: 'excludes', reason: '' }] as const;
    expect(stopWords(stop({ flags: [...flags] }), feet).atNominal).toBe('speed too far off');
  });

  it('without a known spread the figure stands alone', () => {
    expect(stopWords(stop({ distanceStandardError_m: 0 }), feet).driven).toBe('163 ft');
  });
});
