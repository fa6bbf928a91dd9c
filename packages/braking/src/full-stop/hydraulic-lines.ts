import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { boosterLags, lineLag } from '../stop/pressure-lag.ts';
import { RearLine } from '../stop/rear-line.ts';
import { place } from './state-places.ts';

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
  /** s; 0 where the master cylinder follows at once. */
  boosterLag = 0;
  /** 1/s. */
  frontQuickness = 1;
  rearQuickness = 1;
  /** 1/s. */
  dumpQuickness = 1;
  /** What each caliper's valve does, by `valve`. */
  readonly modes = new Int32Array(4);
  /** Pa/s, of a slow build-up. */
  readonly buildRates = new Float64Array(4);

  /** Takes on a set-up and the pedal force, N, whose pressure decides the lags. */
  take(setUp: SetUp, pedalForce: number, dumpTime: number): void {
    const { front, rear } = linePressures({ setUp, pedalForce });
    this.rear.follow(setUp);
    const booster = boosterLags[setUp.booster.kind];
    this.boosterLag = booster < leastBoosterLag ? 0 : booster;
    this.frontQuickness = 1 / Math.max(leastLineLag, lineLag(setUp.frontBrake, setUp.fluid, front));
    this.rearQuickness = 1 / Math.max(leastLineLag, lineLag(setUp.rearBrake, setUp.fluid, rear));
    this.dumpQuickness = 1 / dumpTime;
    this.modes.fill(valve.follow);
    this.buildRates.fill(0);
  }

  /** Writes Pa/s at the four calipers under a front line that has `front`, Pa, into `slopes`. */
  rates(front: number, state: Float64Array, slopes: Float64Array): void {
    const { modes, buildRates, frontQuickness, rearQuickness } = this;
    const rear = this.rear.rearAt(front);
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const pressure = state[place.pressure + wheel]!;
      const mode = modes[wheel]!;
      let rate = wheel < 2 ? (front - pressure) * frontQuickness : (rear - pressure) * rearQuickness;
      if (mode === valve.hold) rate = 0;
      else if (mode === valve.dump) rate = -pressure * this.dumpQuickness;
      else if (mode === valve.build && rate > buildRates[wheel]!) rate = buildRates[wheel]!;
      slopes[place.pressure + wheel] = rate;
    }
  }
}
