import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { anyHeatPath, between } from '../heat/corner/any-corner.testing.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { equalStops } from './ready/equal-stops.ts';
import { runSchedule } from './run-schedule.ts';
import { ScheduleWalk } from './schedule-walk.ts';
import type { ScheduleEvent } from './schedule-event.ts';

const anySetUpHere: fc.Arbitrary<SetUp> = fc
  .record({ heatPath: anyHeatPath, mass: between(700, 2200), ringMass: between(2, 9), fade: between(0.4, 1) })
  .map(({ heatPath, mass, ringMass, fade }) => {
    const { frontBrake, rearBrake, car } = exampleSetUp;
    const frictions = [0.36, 0.4, 0.42, 0.36, 0.24].map((friction, at) => friction * (at > 2 ? fade : 1));
    return {
      ...exampleSetUp,
      car: { ...car, mass },
      frontBrake: {
        ...frontBrake,
        heatPath,
        pad: { ...frontBrake.pad, frictions },
        rotor: { ...frontBrake.rotor, ringMass, mass: 1.4 * ringMass },
      },
      rearBrake: { ...rearBrake, heatPath },
    };
  });

const anyEvent: fc.Arbitrary<ScheduleEvent> = fc.oneof(
  fc.record({
    kind: fc.constant('stop' as const),
    from: between(8, 45),
    foot: fc.record({ force: between(120, 400), rampTime: between(0.1, 0.5) }),
  }),
  fc
    .record({ from: between(15, 45), share: between(0, 0.8), deceleration: between(1, 7) })
    .map(({ from, share, deceleration }) => ({
      kind: 'slow' as const,
      from,
      to: share * from,
      deceleration,
    })),
  fc.record({ kind: fc.constant('accelerate' as const), to: between(5, 45), rate: between(0.5, 5) }),
  fc.record({ kind: fc.constant('drive' as const), speed: between(0, 40), time: between(0, 400) }),
  fc.record({
    kind: fc.constant('regain' as const),
    to: between(5, 40),
    rate: between(0.5, 5),
    interval: between(0, 300),
  }),
  fc.record({
    kind: fc.constant('descent' as const),
    grade: between(0.01, 0.2),
    speed: between(5, 30),
    time: between(1, 300),
    brakeShare: between(0, 1),
  }),
  fc.record({ kind: fc.constant('parked' as const), time: between(0, 3000) }),
);

/** J of half a corner: held and lost. */
function account(walk: ScheduleWalk) {
  const { front, rear } = walk.heat;
  return [front, rear].map((corner) => ({
    stored: corner.energyStored(),
    lost: corner.lost,
    putIn: corner.putIn,
  }));
}

describe('the heat of a schedule', () => {
  it('stored plus lost is put in, in every event', () => {
    fc.assert(
      fc.property(anySetUpHere, fc.array(anyEvent, { minLength: 1, maxLength: 6 }), (setUp, events) => {
        const walk = new ScheduleWalk();
        walk.begin({ setUp, road: exampleRoad, rotorTemperatures: { front: 120, rear: 90 } });
        for (const event of events) {
          const opens = event.kind === 'stop' || event.kind === 'slow' || event.kind === 'descent';
          const before = account(walk);
          walk.go(event);
          account(walk).forEach((after, axle) => {
            const was = before[axle]!;
            const lost = after.lost - (opens ? 0 : was.lost);
            const putIn = after.putIn - (opens ? 0 : was.putIn);
            const turnover = Math.max(Math.abs(lost), Math.abs(putIn), 1000);
            expect(Math.abs(after.stored - was.stored + lost - putIn)).toBeLessThan(1e-4 * turnover);
          });
        }
      }),
      { numRuns: 500 },
    );
  });

  it('is the energy of motion that a held deceleration takes, where nothing else takes any', () => {
    fc.assert(
      fc.property(
        between(10, 50),
        between(0, 0.9),
        between(0.5, 6),
        between(700, 2200),
        (from, share, a, mass) => {
          const tire = { ...exampleSetUp.frontTire, peakFriction: 3, peakSlip: 0.001, slipStiffness: 1e4 };
          const car = {
            ...exampleSetUp.car,
            mass,
            dragArea: 0,
            rollingResistance: 0,
            frontLiftArea: 0,
            rearLiftArea: 0,
          };
          const setUp = { ...exampleSetUp, car, frontTire: tire, rearTire: tire };
          const walk = new ScheduleWalk();
          walk.begin({ setUp, road: exampleRoad, rotorTemperatures: { front: 100, rear: 100 } });
          const to = share * from;
          walk.go({ kind: 'slow', from, to, deceleration: a });
          const turning = (car.frontWheelInertia + car.rearWheelInertia) / tire.rollingRadius ** 2;
          const motion = (0.5 * mass + turning) * (from ** 2 - to ** 2);
          const heat = 4 * (walk.heat.front.putIn + walk.heat.rear.putIn);
          expect(heat / motion).toBeGreaterThan(0.998);
          expect(heat / motion).toBeLessThan(1 + 1e-9);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('is never more with more time between the stops', () => {
    fc.assert(
      fc.property(
        anySetUpHere,
        between(15, 40),
        between(25, 120),
        between(1.05, 3),
        (setUp, speed, interval, longer) => {
          const last = (seconds: number) => {
            const events = equalStops({
              count: 6,
              speed,
              interval: seconds,
              foot: { force: 250, rampTime: 0.2 },
            });
            return runSchedule({
              setUp,
              road: exampleRoad,
              events,
              rotorTemperatures: { front: 60, rear: 60 },
            });
          };
          const [short, long] = [last(interval), last(longer * interval)];
          expect(long.stops.at(-1)!.front.bulkAtStart).toBeLessThan(
            short.stops.at(-1)!.front.bulkAtStart + 0.5,
          );
          expect(long.front.interface).toBeLessThan(short.front.interface + 0.5);
        },
      ),
      { numRuns: 500 },
    );
  });
});
