import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { boosterLags, lineLag } from '../stop/pressure-lag.ts';
import { RearLine } from '../stop/rear-line.ts';
import type { WheelFigures } from './wheel-figures.ts';
import type { Wheel } from './wheel.ts';

/** s: ports and valves let no line be quicker (assumed). */
const leastLineLag = 0.002;
/** s, under which a booster's lag is taken as none. */
const leastBoosterLag = 0.004;

/**
 * The lines of the full stop: the master cylinder's pressure trails the foot by the booster's lag, each caliper's trails
 * the master cylinder's by the lag of its line, and a control may let it off, hold it or build it up slowly.
 *
 * Equation: follow: dp/dt = (p_line − p) / τ_line; dump: dp/dt = −p / τ_d; hold: 0; build: the smaller of follow and a
 * stated rate.
 * Assumes: lags as in `pressureLag`, each at the pressure that the foot asks for; 2 ms at least in a line.
 * Source: [common-practice]
 */
export class HydraulicLines {
  readonly rear = new RearLine();
  /** 1/s; 0 where the master cylinder follows the foot at once. */
  boosterQuickness = 0;
  /** 1/s. */
  #dumpQuickness = 1;

  /** Takes on a set-up and the pedal force, N, whose pressure decides the lags; s, time constant of letting off. */
  take(setUp: SetUp, pedalForce: number, dumpTime: number, wheels: WheelFigures): void {
    const { front, rear } = linePressures({ setUp, pedalForce });
    this.rear.follow(setUp);
    const booster = boosterLags[setUp.booster.kind];
    this.boosterQuickness = booster < leastBoosterLag ? 0 : 1 / booster;
    this.#dumpQuickness = 1 / dumpTime;
    const frontLag = Math.max(leastLineLag, lineLag(setUp.frontBrake, setUp.fluid, front));
    const rearLag = Math.max(leastLineLag, lineLag(setUp.rearBrake, setUp.fluid, rear));
    for (let at = 0; at < 4; at += 1) {
      const wheel = wheels.each[at]!;
      wheel.quickness = 1 / (at < 2 ? frontLag : rearLag);
      this.follow(wheel);
    }
  }

  /** Lets a caliper follow its line. */
  follow(wheel: Wheel): void {
    this.build(wheel, Infinity);
  }

  /** Lets a caliper follow its line, but no quicker than `rate`, Pa/s. */
  build(wheel: Wheel, rate: number): void {
    wheel.fromLine = wheel.quickness;
    wheel.fromOwn = wheel.quickness;
    wheel.mostRate = rate;
  }

  /** Lets a caliper's pressure off. */
  dump(wheel: Wheel): void {
    wheel.fromLine = 0;
    wheel.fromOwn = this.#dumpQuickness;
    wheel.mostRate = Infinity;
  }

  /** Shuts a caliper off. */
  hold(wheel: Wheel): void {
    wheel.fromLine = 0;
    wheel.fromOwn = 0;
    wheel.mostRate = Infinity;
  }
}
