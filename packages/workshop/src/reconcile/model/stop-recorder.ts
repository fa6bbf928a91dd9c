import type { StopMarch } from '@standstill/braking';

/** Nodes that a quick stop has at most; farther ones are not looked at. */
const mostNodes = 600;
/** Shares of the developed deceleration between which its rise is a straight line. */
const [lowShare, highShare] = [0.2, 0.8];

/**
 * Keeps the course of a quick stop as it marches, and reads from it what a logger would: when deceleration begins and is
 * there, and how hard the lines were pressed meanwhile.
 *
 * Allocates nothing after it is made.
 */
export class StopRecorder {
  readonly #time = new Float64Array(mostNodes);
  readonly #speed = new Float64Array(mostNodes);
  readonly #deceleration = new Float64Array(mostNodes);
  readonly #pressure = new Float64Array(mostNodes);
  #count = 0;
  /** Is told of every node of the march. */
  readonly note = (march: StopMarch): void => {
    const i = this.#count;
    if (i >= mostNodes) return;
    this.#time[i] = march.time;
    this.#speed[i] = march.speed;
    this.#deceleration[i] = march.deceleration;
    this.#pressure[i] = march.car.keeper.driver.pressure;
    this.#count += 1;
  };

  /** Forgets the stop before. */
  begin(): void {
    this.#count = 0;
  }

  /**
   * When the deceleration begins and is there, by a straight line through two shares of it, as `onsetEstimate` in the logs
   * fits one.
   *
   * @param developed - mean fully developed deceleration, m/s²
   * @returns s from the first touch: where that line leaves zero, and where it reaches 90 % of it
   */
  rise(developed: number): { readonly onset: number; readonly there: number } {
    const low = this.#reached(lowShare * developed);
    const high = this.#reached(highShare * developed);
    const slope = (high - low) / (highShare - lowShare);
    const onset = Math.max(0, low - lowShare * slope);
    return { onset, there: onset + 0.9 * slope };
  }

  /** Pa, mean over time of the front line pressure between 0.8 and 0.1 of the speed at the first touch, m/s. */
  developedPressure(entrySpeed: number): number {
    let [sum, span] = [0, 0];
    for (let i = 1; i < this.#count; i += 1) {
      const middle = 0.5 * (this.#speed[i - 1]! + this.#speed[i]!);
      if (middle > 0.8 * entrySpeed || middle < 0.1 * entrySpeed) continue;
      const step = this.#time[i]! - this.#time[i - 1]!;
      sum += 0.5 * step * (this.#pressure[i - 1]! + this.#pressure[i]!);
      span += step;
    }
    return span > 0 ? sum / span : NaN;
  }

  #reached(level: number): number {
    for (let i = 0; i < this.#count; i += 1) {
      const now = this.#deceleration[i]!;
      if (now < level) continue;
      if (i === 0) return 0;
      const before = this.#deceleration[i - 1]!;
      const share = now > before ? (level - before) / (now - before) : 1;
      return this.#time[i - 1]! + share * (this.#time[i]! - this.#time[i - 1]!);
    }
    return NaN;
  }
}
