import { linearTable } from '@standstill/numerics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brakeTorque } from '../corner/brake-torque.ts';
import { effectiveRadius } from '../corner/effective-radius.ts';
import { padFriction } from '../corner/pad-friction.ts';
import { emptyRotorGrid, fillRotorGrid } from '../heat/rotor-grid.ts';
import { cornerVolumes } from '../travel/corner-volumes.ts';
import { anyDrum } from './any-drum.testing.ts';
import { brakeFactor } from './brake-factor.ts';
import { drumTorque } from './drum-torque.ts';
import { equivalentDisc } from './equivalent-disc.ts';
import { evenly } from '../set-up/evenly.testing.ts';

const anyPressure = evenly(0, 12e6);
const anyTemperature = evenly(-20, 600);
const anyFriction = evenly(0.1, 0.6);
const runs = { numRuns: 500 };

describe('a drum brake', () => {
  it('has the torque C* (p − p0) A r η, through the equivalent disc as well', () => {
    fc.assert(
      fc.property(anyDrum, anyPressure, fc.nat(2), (drum, pressure, point) => {
        const [temperature, friction] = [drum.frictionTemperatures[point]!, drum.frictions[point]!];
        const area = (Math.PI / 4) * drum.cylinderBore ** 2;
        const over = Math.max(0, pressure - drum.pushOutPressure);
        const byHand = brakeFactor({ drum, friction }) * over * area * drum.radius * drum.efficiency;
        const brake = equivalentDisc(drum);
        const disc = brakeTorque({ brake, pressure, friction: padFriction({ pad: brake.pad, temperature }) });
        expect(drumTorque({ drum, pressure, friction })).toBeCloseTo(byHand, 6);
        expect(Math.abs(disc - byHand)).toBeLessThanOrEqual(1e-9 * Math.max(1, byHand));
      }),
      runs,
    );
  });

  it('is followed by the equivalent disc within 0.3 % between the points of the friction table', () => {
    let worst = 0;
    fc.assert(
      fc.property(anyDrum, anyTemperature, (drum, temperature) => {
        const friction = linearTable(drum.frictionTemperatures, drum.frictions, temperature);
        const brake = equivalentDisc(drum);
        const pressure = drum.pushOutPressure + 1e6;
        const disc = brakeTorque({ brake, pressure, friction: padFriction({ pad: brake.pad, temperature }) });
        const off = Math.abs(disc / drumTorque({ drum, pressure, friction }) - 1);
        worst = Math.max(worst, off);
        expect(off).toBeLessThan(0.003);
      }),
      runs,
    );
    console.log(`equivalent disc against drum, between table points: ${(100 * worst).toFixed(3)} % at worst`);
  });

  it('grows more than in step with friction, where a disc grows in step', () => {
    fc.assert(
      fc.property(anyDrum, anyFriction, evenly(1.01, 1.15), (drum, mu, factor) => {
        const [before, after] = [mu, mu * factor].map((friction) => brakeFactor({ drum, friction }));
        expect(after! / before!).toBeGreaterThan(factor);
      }),
      runs,
    );
  });

  it('is more sensitive the more its shoes help each other: simplex, duplex, duo-servo', () => {
    fc.assert(
      fc.property(anyDrum, evenly(0.2, 0.5), (drum, mu) => {
        const rise = (['simplex', 'duplex', 'duo-servo'] as const).map((arrangement) => {
          const at = (friction: number) => brakeFactor({ drum: { ...drum, arrangement }, friction });
          return at(1.05 * mu) / at(mu);
        });
        expect(rise[1]).toBeGreaterThan(rise[0]!);
        expect(rise[2]).toBeGreaterThan(rise[1]!);
      }),
      runs,
    );
  });

  it('swallows the fluid that its own gaps and linings take', () => {
    fc.assert(
      fc.property(anyDrum, anyPressure, (drum, over) => {
        const pressure = drum.pushOutPressure + over;
        const { clearance, pads } = cornerVolumes({ brake: equivalentDisc(drum), pressure });
        const area = (Math.PI / 4) * drum.cylinderBore ** 2;
        const lever = drum.shoes.leverArm / drum.shoes.pivotDistance;
        if (pressure > 0) expect(clearance).toBeCloseTo(2 * area * lever * drum.shoeClearance, 12);
        // The mean normal force of a shoe is C* / (2 μ) times the push, at the stated friction of 0.38.
        const normal = (drum.brakeFactor / 0.76) * over * area * drum.efficiency;
        expect(pads).toBeCloseTo((2 * area * lever * drum.compressibility * normal) / drum.liningArea, 12);
      }),
      runs,
    );
  });

  it('heats one wall of 2 π r w, rubbed inside and cooled outside alone', () => {
    fc.assert(
      fc.property(anyDrum, (drum) => {
        const { rotor, pad } = equivalentDisc(drum);
        const grid = emptyRotorGrid(6);
        fillRotorGrid(grid, { rotor, pad });
        const perArea = grid.masses.slice(0, grid.nodes).reduce((sum, mass) => sum + mass, 0);
        expect(2 * grid.area).toBeCloseTo(2 * Math.PI * drum.radius * drum.width, 9);
        expect(perArea).toBeCloseTo(drum.wallThickness * drum.density, 6);
        expect(effectiveRadius({ rotor, pad, assumption: 'uniform-wear' })).toBeCloseTo(drum.radius, 12);
        expect([grid.uncovered, grid.ventShares[grid.layers - 1]]).toEqual([0, 1]);
      }),
      runs,
    );
  });
});
