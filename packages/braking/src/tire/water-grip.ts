import type { Road } from '../set-up/road.ts';
import type { Tire } from '../set-up/tire.ts';
import { heldWetFactor, isBeyondWaterSource } from './held-wet-factor.ts';
import { waterSpeeds } from './wet-peak-factor.ts';

const [slow, middle, fast] = waterSpeeds;

/**
 * What water leaves of one tire's peak friction all through a stop: `heldWetFactor` as a table over speed, made once. The
 * table has the three speeds of the source and is exact, because between them the formula is a straight line, too.
 *
 * Equation: as `heldWetFactor`.
 * Assumes: as `heldWetFactor`.
 *
 * Allocates nothing after it is made, but for what `take` needs on a wet road.
 * Source: [bosch-handbook]
 */
export class WaterGrip {
  /** True where the stop begins faster, or with less tread, than the source has: an end of its table is held there. */
  isBeyondSource = false;
  /** Whether there is water on the road. */
  isWet = false;
  #atSlow = 1;
  #atMiddle = 1;
  #atFast = 1;

  /** Takes on a tire and a road, for speeds from rest up to `topSpeed`, m/s. Throws where water or tread cannot be. */
  take(tire: Tire, road: Road, topSpeed: number): void {
    this.isWet = road.waterDepth > 0;
    this.#atSlow = heldWetFactor({ tire, road, speed: slow });
    this.#atMiddle = heldWetFactor({ tire, road, speed: middle });
    this.#atFast = heldWetFactor({ tire, road, speed: fast });
    this.isBeyondSource = isBeyondWaterSource({ tire, road, speed: topSpeed });
  }

  /** m/s, the next speed below `speed` at which the table bends; 0 where there is none, or no water. */
  bendBelow(speed: number): number {
    if (!this.isWet || speed <= slow) return 0;
    if (speed <= middle) return slow;
    return speed <= fast ? middle : fast;
  }

  /** 1, factor on the dry peak friction at a speed, m/s; 1 on a dry road. */
  factorAt(speed: number): number {
    if (speed <= slow) return this.#atSlow;
    if (speed >= fast) return this.#atFast;
    if (speed < middle) {
      return this.#atSlow + (this.#atMiddle - this.#atSlow) * ((speed - slow) / (middle - slow));
    }
    return this.#atMiddle + (this.#atFast - this.#atMiddle) * ((speed - middle) / (fast - middle));
  }
}
