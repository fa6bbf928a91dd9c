import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { specificEnthalpy } from '../heat/specific-enthalpy.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { Rotor } from '../set-up/rotor.ts';
import type { AxleHeat } from '../heat/axle-heat.ts';
import { anyStop } from './any-stop.testing.ts';
import { quickStop, stopWorkspace } from './quick-stop.ts';
import type { StopInput } from './stop-input.ts';
import { traceStop, type StopTrace } from './trace-stop.ts';

const march = stopWorkspace();

/** J of car, turning wheels and driveline. */
function kineticEnergy({ setUp, speed }: StopInput): number {
  const { car, frontTire, rearTire } = setUp;
  const frontDriven = car.frontDriveShare * car.drivelineInertia;
  const rearDriven = car.drivelineInertia - frontDriven;
  const front = (2 * car.frontWheelInertia + frontDriven) / frontTire.rollingRadius ** 2;
  const rear = (2 * car.rearWheelInertia + rearDriven) / rearTire.rollingRadius ** 2;
  return 0.5 * (car.mass + front + rear) * speed * speed;
}

/** ∫ F v dt over the trace by the trapezoid rule; a ledger of its own, not the march's. */
function work(trace: StopTrace, force: (index: number) => number): number {
  let sum = 0;
  for (let i = 1; i < trace.time.length; i += 1) {
    const before = force(i - 1) * trace.speed[i - 1]!;
    sum += 0.5 * (before + force(i) * trace.speed[i]!) * (trace.time[i]! - trace.time[i - 1]!);
  }
  return sum;
}

/** J that the rotors of an axle took up: what they hold more than at the start, and what they lost to the air. */
function takenUp(heat: AxleHeat, rotor: Rotor, startTemperature: number): number {
  const before = rotor.ringMass * specificEnthalpy(rotor, startTemperature);
  return 2 * (heat.energyStored() - before + 2 * heat.sweptArea * heat.lostPerArea);
}

describe('the energy of a stop', () => {
  it('all goes somewhere: the books add up to the energy of motion', () => {
    fc.assert(
      fc.property(anyStop, (stop) => {
        const { energies, cameToRest } = quickStop(stop, march);
        fc.pre(cameToRest);
        const { kineticIn, ...out } = energies;
        const sum = Object.values(out).reduce((total, energy) => total + energy, 0);
        expect(kineticIn / kineticEnergy(stop)).toBeCloseTo(1, 12);
        expect(Math.abs(sum - kineticIn)).toBeLessThan(1e-4 * kineticIn);
      }),
      { numRuns: 600 },
    );
  });

  it('that the brakes took is in their rotors, by their temperatures and what they lost', () => {
    fc.assert(
      fc.property(anyStop, (stop) => {
        const { energies, cameToRest } = quickStop(stop, march);
        fc.pre(cameToRest);
        const { front, rear } = march.car;
        const { frontBrake, rearBrake } = stop.setUp;
        const started = stop.rotorTemperatures!;
        const frontTaken = takenUp(front.heat, frontBrake.rotor, started.front);
        const rearTaken = takenUp(rear.heat, rearBrake.rotor, started.rear);
        expect(Math.abs(frontTaken - energies.frontRotors)).toBeLessThan(1e-4 * energies.kineticIn);
        expect(Math.abs(rearTaken - energies.rearRotors)).toBeLessThan(1e-4 * energies.kineticIn);
      }),
      { numRuns: 600 },
    );
  });

  it('is what an own account of the traced forces finds, within 0.01 %', () => {
    fc.assert(
      fc.property(anyStop, (stop) => {
        const { trace, summary } = traceStop({ ...stop, refinement: 4 });
        fc.pre(summary.cameToRest && trace.time.length < 20_000);
        const { car } = stop.setUp;
        const { airDensity, grade } = stop.road;
        const slope = Math.sqrt(1 + grade * grade);
        const weight = car.mass * standardGravity;
        const lift = 0.5 * airDensity * (car.frontLiftArea + car.rearLiftArea);
        const { energies } = summary;
        const drag = work(trace, (i) => 0.5 * airDensity * car.dragArea * trace.speed[i]! ** 2);
        const rolling = work(
          trace,
          (i) => car.rollingResistance * (weight / slope - lift * trace.speed[i]! ** 2),
        );
        const tires = work(trace, (i) => trace.frontForce[i]! + trace.rearForce[i]!);
        const climb = (weight * grade * summary.distance) / slope;
        const carOnly = 0.5 * car.mass * stop.speed ** 2;
        const limit = 1e-4 * energies.kineticIn;
        expect(Math.abs(energies.airDrag - drag)).toBeLessThan(limit);
        expect(Math.abs(energies.rolling - rolling)).toBeLessThan(limit);
        expect(Math.abs(energies.climb - climb)).toBeLessThan(limit);
        expect(Math.abs(tires + drag + rolling + climb - carOnly)).toBeLessThan(limit);
      }),
      { numRuns: 500 },
    );
  });
});
