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
 * Equation: m a = Σ F_x + R; F_x = B − (2 J / r²) a while a wheel pair rolls, q F_peak(F_z(a)) while it is held or slides;
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

  /** @param layers - layers of each rotor's half thickness, 1 */
  constructor(layers: number) {
    this.front = new BrakedAxle(layers);
    this.rear = new BrakedAxle(layers);
    this.keeper = new WheelKeeper(this.front, this.rear, this.line);
  }

  /**
   * m/s² at a speed, m/s, and a front line pressure, Pa, searched from a guess; leaves both axles in that state. Throws
   * `UnsolvedStopError` rather than answer with what it has not found.
   */
  solve(speed: number, pressure: number, guess: number): number {
    const { front, rear, body, keeper } = this;
    body.standAt(speed);
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
}
