import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { axleLoads } from '../load/axle-loads.ts';
import { anyPedalForce, anyRoad, anySetUp } from '../set-up/any-set-up.testing.ts';
import { tirePeakForce } from '../tire/tire-peak-force.ts';
import { anyStop, between } from './any-stop.testing.ts';
import { frontParts } from './axle-parts.ts';
import { BrakedAxle } from './braked-axle.ts';
import { BrakedCar } from './braked-car.ts';
import { PressureRise } from './pressure-rise.ts';
import { RearLine } from './rear-line.ts';

const runs = { numRuns: 500 };

describe('what the quick stop takes from a set-up once', () => {
  it('loads its axles as axleLoads does', () => {
    const car = new BrakedCar(2);
    fc.assert(
      fc.property(anyStop, between(-5, 25), between(0, 1), (stop, deceleration, share) => {
        const speed = share * stop.speed;
        car.body.take(stop);
        car.body.standAt(speed);
        car.body.weigh(car.front, car.rear, deceleration);
        const loads = axleLoads({ car: stop.setUp.car, road: stop.road, deceleration, speed });
        const scale = stop.setUp.car.mass * 10;
        expect(Math.abs(car.front.load - loads.front)).toBeLessThan(1e-12 * scale);
        expect(Math.abs(car.rear.load - loads.rear)).toBeLessThan(1e-12 * scale);
      }),
      runs,
    );
  });

  it('gives its tires the peak of tirePeakForce, within 1e-7, wherever the load went before', () => {
    const axle = new BrakedAxle(2);
    const anyLoads = fc.array(between(50, 15_000), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(anySetUp, anyRoad, anyLoads, (setUp, road, loads) => {
        axle.take(frontParts(setUp, road), 30);
        const { surfaceFactor } = road;
        const left = setUp.car.leftLoadShare;
        for (const load of loads.flatMap((each) => [each, 1.02 * each, 0.99 * each])) {
          axle.carry(load, 1);
          const peak = (share: number) =>
            tirePeakForce({ tire: setUp.frontTire, load: share * load, surfaceFactor });
          expect(axle.peak / (peak(left) + peak(1 - left))).toBeCloseTo(1, 7);
        }
      }),
      runs,
    );
  });

  it('follows the rear line and back', () => {
    const line = new RearLine();
    fc.assert(
      fc.property(anySetUp, anyPedalForce, (setUp, pedalForce) => {
        line.follow(setUp);
        const { front, rear } = linePressures({ setUp, pedalForce });
        expect(Math.abs(line.rearAt(front) - rear)).toBeLessThan(1e-6 * (1 + rear));
        if (line.slopeAt(front) < 0.01) return;
        expect(Math.abs(line.frontFor(rear) - front)).toBeLessThan(1e-6 * (1 + front));
      }),
      runs,
    );
  });

  it('without lag has the pressures of linePressures all along the ramp', () => {
    const rise = new PressureRise();
    fc.assert(
      fc.property(
        anySetUp,
        between(1, 1000),
        between(0.01, 2),
        between(1e-6, 1.5),
        (setUp, force, rampTime, share) => {
          rise.follow(setUp, { force, rampTime });
          rise.trail(0);
          const { front } = linePressures({ setUp, pedalForce: force * Math.min(1, share) });
          expect(Math.abs(rise.at(share * rampTime) - front)).toBeLessThan(1e-6 * (1 + front));
        },
      ),
      runs,
    );
  });

  it('with lag solves τ dp/dt = asked − p', () => {
    const rise = new PressureRise();
    fc.assert(
      fc.property(
        anySetUp,
        between(1, 1000),
        between(0.01, 1),
        between(0.005, 0.3),
        (setUp, force, rampTime, lag) => {
          rise.follow(setUp, { force, rampTime });
          rise.trail(lag);
          const step = Math.min(rampTime, lag) / 400;
          const asked = (time: number) =>
            linePressures({ setUp, pedalForce: force * Math.min(1, Math.max(1e-9, time / rampTime)) }).front;
          let pressure = 0;
          for (let i = 0; i < 1200; i += 1) {
            const middle = asked((i + 0.5) * step);
            pressure = middle + (pressure - middle) * Math.exp(-step / lag);
          }
          expect(Math.abs(rise.at(1200 * step) - pressure)).toBeLessThan(2e-3 * rise.held);
        },
      ),
      runs,
    );
  });
});
