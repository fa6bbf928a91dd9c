import type { AxleHeats } from '../heat/axle-heat.ts';
import { BrakedAxle } from './braked-axle.ts';
import { CarOnRoad } from './car-on-road.ts';
import { RearLine } from './rear-line.ts';
import { UnsolvedStopError } from './unsolved-stop-error.ts';
import { WheelKeeper } from './wheel-keeper.ts';

/** Passes of the search for the deceleration; Newton's method is trusted for the first of them. */
const mostPasses = 80;
const newtonPasses = 12;
/** Change of deceleration, relative, over which forces may be carried along their slopes. */
const smallChange = 3e-4;
/** m/s²: a bracket this narrow holds a bend of the forces, which no pass will find better. */
const leastBracket = 1e-9;

/**
 * The car in the quick stop: which deceleration goes with a speed and a line pressure, each axle's tires limiting what
 * the brakes ask under the load that the deceleration itself moves.
 *
 * Equation: m a = Σ F_x + R; F_x = B + M_e / r − ((2 J + J_d) / r²) a while a wheel pair rolls, q F_peak(F_z(a), v) while it
 * is held or slides;
 * solved by Newton's method from the deceleration before, kept inside the bracket that its passes have found: where the
 * load on an axle runs out or a valve closes, the slopes jump and Newton's method alone can go round in circles.
 * Assumes: as `axleLoads`; wheels turn at v / r while they roll.
 *
 * Allocates nothing after it is made.
 * Source: [gillespie], [wong]
 */
export class BrakedCar {
  readonly front: BrakedAxle;
  readonly rear: BrakedAxle;
  readonly line = new RearLine();
  readonly body = new CarOnRoad();
  readonly keeper: WheelKeeper;
  /** N, as `bendOver`, of what each axle takes out of the motion of car and wheels; set by `bendOver`. */
  frontBend = 0;
  rearBend = 0;

  /**
   * @param layers - layers of each rotor's half thickness, 1
   * @param heats - what keeps the heat of each axle; the rotors alone where left out
   */
  constructor(layers: number, heats?: AxleHeats) {
    this.front = new BrakedAxle(layers, heats?.front);
    this.rear = new BrakedAxle(layers, heats?.rear);
    this.keeper = new WheelKeeper(this.front, this.rear, this.line);
  }

  /** Sets what follows from speed, m/s, alone. */
  standAt(speed: number): void {
    this.body.standAt(speed);
    this.front.standAt(speed);
    this.rear.standAt(speed);
  }

  /**
   * m/s² at a speed, m/s, and a front line pressure, Pa, searched from a guess; leaves both axles in that state. Throws
   * `UnsolvedStopError` rather than answer with what it has not found.
   */
  solve(speed: number, pressure: number, guess: number): number {
    const { front, rear, body, keeper } = this;
    this.standAt(speed);
    let deceleration = guess;
    let low = -Infinity;
    let high = Infinity;
    for (let pass = 0; pass < mostPasses; pass += 1) {
      body.weigh(front, rear, deceleration);
      keeper.brake(pressure, deceleration);
      const missing = front.force + rear.force + body.resistance() - body.mass * deceleration;
      const stiffness = Math.max(0.2 * body.mass, body.mass - front.forceSlope - rear.forceSlope);
      const change = missing / stiffness;
      const isClose = Math.abs(change) < smallChange * (0.1 + Math.abs(deceleration));
      if (isClose || high - low < leastBracket) {
        front.follow(change);
        rear.follow(change);
        keeper.driver.excess += keeper.driver.excessSlope * change;
        return deceleration + change;
      }
      if (missing > 0) low = deceleration;
      else high = deceleration;
      const next = deceleration + change;
      const isTrusted = pass < newtonPasses && next > low && next < high;
      deceleration = isTrusted || high - low === Infinity ? next : (low + high) / 2;
    }
    throw new UnsolvedStopError(speed, pressure);
  }

  /** Whether a bend of the pressure over a step that ends as just solved bends the forces; without one `bendOver` is not asked. */
  bendsWithPressure(start: number, end: number): boolean {
    this.frontBend = 0;
    this.rearBend = 0;
    if (start === end || this.keeper.driver.holds !== 'none') return false;
    return this.front.followsPressure || this.rear.followsPressure;
  }

  /**
   * m/s² by which the mean deceleration over a step is above the mean of its ends, for front line pressures, Pa, at the
   * start, the middle and the end of a step whose end has just been solved.
   *
   * Equation: b = Σ b_F / (m − Σ ∂F/∂a), b_F by `BrakedAxle.bendOver`.
   */
  bendOver(start: number, middle: number, end: number): number {
    const { front, rear, line, body } = this;
    const frontBend = front.bendOver(start, middle, end);
    const rearBend = rear.bendOver(line.rearAt(start), line.rearAt(middle), line.rearAt(end));
    const bend = (frontBend + rearBend) / (body.mass - front.forceSlope - rear.forceSlope);
    this.frontBend = frontBend + front.stoppingSlope() * bend;
    this.rearBend = rearBend + rear.stoppingSlope() * bend;
    return bend;
  }
}
