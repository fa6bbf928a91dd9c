import { describe, expect, it } from 'vitest';
import { boltPreload } from './bolt-preload.ts';
import { boltTorque } from './bolt-torque.ts';
import { proofLoad } from './proof-load.ts';
import { threadStressArea } from './thread-stress-area.ts';
import { wrenchSetting } from './wrench-setting.ts';
import { wrenchTolerance } from './wrench-tolerance.ts';

const coarse = { diameter: 0.012, pitch: 0.00175 };
const fine = { diameter: 0.012, pitch: 0.00125 };

describe('a thread', () => {
  it('carries more with a finer pitch and a higher class', () => {
    expect(threadStressArea(fine)).toBeGreaterThan(threadStressArea(coarse));
    const loads = (['4.6', '5.8', '8.8', '10.9', '12.9'] as const).map((propertyClass) =>
      proofLoad({ thread: coarse, propertyClass }),
    );
    expect([...loads].sort((a, b) => a - b)).toEqual(loads);
  });

  it('of class 8.8 has 600 MPa above 16 mm and 580 MPa up to it', () => {
    const stress = (diameter: number) => {
      const thread = { diameter, pitch: 0.002 };
      return proofLoad({ thread, propertyClass: '8.8' }) / threadStressArea(thread);
    };
    expect(stress(0.016)).toBeCloseTo(580e6, 3);
    expect(stress(0.018)).toBeCloseTo(600e6, 3);
  });

  it.each([
    [{ diameter: 0.0029, pitch: 0.0005 }, 'thread diameter'],
    [{ diameter: 0.012, pitch: 0.004 }, 'thread pitch'],
    [{ diameter: Number.NaN, pitch: 0.001 }, 'thread diameter'],
  ])('that is none is refused: %o', (thread, quantity) => {
    expect(() => threadStressArea(thread)).toThrow(quantity);
  });
});

describe('a torque', () => {
  it('gives back the preload that it was made for, and more once the thread is oiled', () => {
    const torque = boltTorque({ preload: 30_000, diameter: 0.012, nutFactor: 0.2 });
    expect(boltPreload({ torque, diameter: 0.012, nutFactor: 0.2 })).toBeCloseTo(30_000, 8);
    expect(boltPreload({ torque, diameter: 0.012, nutFactor: 0.15 })).toBeCloseTo(40_000, 8);
    expect(() => boltTorque({ preload: -1, diameter: 0.012, nutFactor: 0.2 })).toThrow('preload');
    expect(() => boltPreload({ torque: 1, diameter: 0.012, nutFactor: 0.6 })).toThrow('nut factor');
  });

  it('is set lower in line, as wanted at a right angle, higher folded back', () => {
    const setting = (angle: number) =>
      wrenchSetting({ torque: 100, wrenchLength: 0.4, adapterLength: 0.06, angle });
    expect(setting(0)).toBeLessThan(100);
    expect(setting(Math.PI / 2)).toBeCloseTo(100, 9);
    expect(setting(Math.PI)).toBeGreaterThan(100);
    expect(() => setting(4)).toThrow('angle of the adapter');
  });

  it('may be off by 4 %, by 6 % at 10 N·m and below', () => {
    expect([5, 10, 10.001, 200].map((torque) => wrenchTolerance(torque) / torque)).toEqual([
      0.06, 0.06, 0.04, 0.04,
    ]);
    expect(() => wrenchTolerance(-1)).toThrow('torque');
  });
});
