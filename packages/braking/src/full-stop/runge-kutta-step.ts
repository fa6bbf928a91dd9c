import { instant } from './instant.ts';
import { stateSize } from './state-places.ts';
import type { StopDynamics } from './stop-dynamics.ts';

/**
 * One step of the classical fourth-order Runge-Kutta scheme.
 *
 * Equation: y_1 = y_0 + h (k_1 + 2 k_2 + 2 k_3 + k_4) / 6.
 *
 * Allocates nothing after it is made.
 * Source: [runge-kutta]
 */
export class RungeKuttaStep {
  /** Slopes at the start; to be filled by the caller before `take`. */
  readonly first = new Float64Array(stateSize);
  readonly #second = new Float64Array(stateSize);
  readonly #third = new Float64Array(stateSize);
  readonly #fourth = new Float64Array(stateSize);
  readonly #between = new Float64Array(stateSize);

  /** Writes the state a `duration`, s, after `state` at `time`, s, into `after`. */
  take(
    dynamics: StopDynamics,
    time: number,
    duration: number,
    state: Float64Array,
    after: Float64Array,
  ): void {
    const first = this.first;
    const second = this.#second;
    const third = this.#third;
    const fourth = this.#fourth;
    const between = this.#between;
    const { now } = dynamics;
    const half = 0.5 * duration;
    now[instant.time] = time + half;
    for (let i = 0; i < stateSize; i += 1) between[i] = state[i]! + half * first[i]!;
    dynamics.slopes(between, second);
    for (let i = 0; i < stateSize; i += 1) between[i] = state[i]! + half * second[i]!;
    dynamics.slopes(between, third);
    now[instant.time] = time + duration;
    for (let i = 0; i < stateSize; i += 1) between[i] = state[i]! + duration * third[i]!;
    dynamics.slopes(between, fourth);
    const sixth = duration / 6;
    for (let i = 0; i < stateSize; i += 1) {
      after[i] = state[i]! + sixth * (first[i]! + 2 * (second[i]! + third[i]!) + fourth[i]!);
    }
  }
}
