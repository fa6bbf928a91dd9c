import { describe, expect, it } from 'vitest';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import { linePressures } from './line-pressures.ts';
import { pedalForceFor } from './pedal-force-for.ts';
import { rearPressureAfterValve } from './rear-pressure-after-valve.ts';
import { vacuumAtAltitude } from './vacuum-at-altitude.ts';

describe('linePressures', () => {
  it('splits the force of a balance bar by its share and each bore', () => {
    const setUp = {
      ...exampleSetUp,
      booster: { kind: 'none' },
      rearValve: { kind: 'none' },
      masterCylinder: {
        kind: 'balance-bar',
        frontBore: 0.02,
        rearBore: 0.02,
        frontForceShare: 0.6,
        stroke: 0.03,
        efficiency: 1,
      },
    } as const;
    const { front, rear } = linePressures({ setUp, pedalForce: 300 });
    expect(front / rear).toBeCloseTo(1.5, 12);
    expect(front).toBeCloseTo((0.6 * 300 * 4 * 0.9) / (Math.PI * 0.01 ** 2), 3);
  });

  it('needs more foot on a mountain, because the vacuum is thinner', () => {
    const { booster } = exampleSetUp;
    if (booster.kind !== 'vacuum') expect.unreachable();
    const onMountain = vacuumAtAltitude({ seaLevelVacuum: booster.vacuum, altitude: 3000 });
    const mountain = { ...exampleSetUp, booster: { ...booster, vacuum: onMountain } };
    const pedalForce = 400;
    expect(linePressures({ setUp: mountain, pedalForce }).front).toBeLessThan(
      linePressures({ setUp: exampleSetUp, pedalForce }).front,
    );
  });

  it('asks no foot for a pressure that the jump-in gives at the first touch', () => {
    expect(pedalForceFor({ setUp: exampleSetUp, frontPressure: 1e5 })).toBe(0);
    expect(linePressures({ setUp: exampleSetUp, pedalForce: 1e-9 }).front).toBeGreaterThan(1e5);
  });

  it('holds the rear at the knee where the slope is zero', () => {
    const rearValve = { kind: 'proportioning', kneePressure: 3e6, slope: 0 } as const;
    expect(rearPressureAfterValve({ rearValve, inletPressure: 2e6 })).toBe(2e6);
    expect(rearPressureAfterValve({ rearValve, inletPressure: 9e6 })).toBe(3e6);
  });

  it('refuses a pedal force that is not a number', () => {
    expect(() => linePressures({ setUp: exampleSetUp, pedalForce: Number.NaN })).toThrow('pedal force');
  });
});
