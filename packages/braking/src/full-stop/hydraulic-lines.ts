import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { boosterLags, lineLag } from '../stop/pressure-lag.ts';
import { RearLine } from '../stop/rear-line.ts';
import type { WheelFigures } from './wheel-figures.ts';
import { figure } from './wheel-places.ts';

/** What the valve of one caliper does. */
export const valve = { follow: 0, dump: 1, hold: 2, build: 3 } as const;

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
  dumpQuickness = 1;

  /** Takes on a set-up and the pedal force, N, whose pressure decides the lags; s, time constant of letting off. */
  take(setUp: SetUp, pedalForce: number, dumpTime: number, wheels: WheelFigures): void {
    const { front, rear } = linePressures({ setUp, pedalForce });
    this.rear.follow(setUp);
    const booster = boosterLags[setUp.booster.kind];
    this.boosterQuickness = booster < leastBoosterLag ? 0 : 1 / booster;
    this.dumpQuickness = 1 / dumpTime;
    const frontLag = Math.max(leastLineLag, lineLag(setUp.frontBrake, setUp.fluid, front));
    const rearLag = Math.max(leastLineLag, lineLag(setUp.rearBrake, setUp.fluid, rear));
    for (let wheel = 0; wheel < 4; wheel += 1) {
      wheels.write(wheel, figure.quickness, 1 / (wheel < 2 ? frontLag : rearLag));
      wheels.write(wheel, figure.mode, valve.follow);
      wheels.write(wheel, figure.buildRate, 0);
    }
  }
}
