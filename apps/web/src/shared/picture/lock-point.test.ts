import type { BalanceResult } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { lockPoint } from './lock-point.ts';

const at = (deceleration_g: number) => ({
  deceleration_g,
  frontForceOverWeight: 0.7 * deceleration_g,
  rearForceOverWeight: 0.3 * deceleration_g,
  frontAdhesion: 0,
  rearAdhesion: 0,
});

const balance = (lock: number | null): BalanceResult => ({
  ideal: [],
  installed: [at(0), at(0.5), at(1)],
  firstToLock: 'front',
  lockDeceleration_g: lock === null ? null : { value: lock, low: lock, high: lock },
  frontForceShare: 0.7,
  rearFirstShare: 0,
  rearFirstShareHot: 0,
  rearFirstFromStop: null,
  efficiencyAtLock: null,
});

describe('lockPoint', () => {
  it('lies on the installed line at the deceleration of the lock', () => {
    const point = lockPoint(balance(0.8));
    expect(point?.front).toBeCloseTo(0.56, 12);
    expect(point?.rear).toBeCloseTo(0.24, 12);
  });

  it('is nowhere where nothing locks, or beyond the line', () => {
    expect(lockPoint(balance(null))).toBeNull();
    expect(lockPoint(balance(1.2))).toBeNull();
  });
});
