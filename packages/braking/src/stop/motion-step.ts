/**
 * One step of a car that slows, its deceleration changing in a straight line over the step, with one smooth bend where the
 * pressure's course has one.
 *
 * Equation: a(x) = a_0 + (a_1 − a_0) x + 6 b x (1 − x), x = t / Δt, so that the mean of a is (a_0 + a_1)/2 + b;
 * v(x) = v_0 − Δt (a_0 x + (a_1 − a_0) x²/2 + b (3x² − 2x³)); s and ∫ F v dt by integrating these exactly, F too being a
 * straight line with a bend of the same shape.
 * Assumes: what is of another shape within a step is an error of third order in it.
 * Source: [geometry]
 */
export class MotionStep {
  /** s. */
  duration = 0;
  /** v_0 and v_1, m/s. */
  startSpeed = 0;
  endSpeed = 0;
  /** a_0 and a_1, m/s². */
  startDeceleration = 0;
  endDeceleration = 0;
  /** b, m/s². */
  bend = 0;

  /** m, driven in the step; set by `measure`. */
  distance = 0;
  /** m, ∫ v x dt and ∫ v 6 x (1 − x) dt; set by `measure`. */
  #lateDistance = 0;
  #midDistance = 0;

  /** m/s², mean over time. */
  meanDeceleration(): number {
    return 0.5 * (this.startDeceleration + this.endDeceleration) + this.bend;
  }

  /** Works out the distances; to be called when speeds, decelerations, bend and duration stand. */
  measure(): void {
    const { duration, startSpeed, startDeceleration: first, bend } = this;
    const rise = this.endDeceleration - first;
    this.distance = duration * (startSpeed - duration * (first / 2 + rise / 6 + bend / 2));
    this.#lateDistance = duration * (startSpeed / 2 - duration * (first / 3 + rise / 8 + 0.35 * bend));
    this.#midDistance = duration * (startSpeed - duration * (first / 2 + 0.15 * rise + bend / 2));
  }

  /**
   * J, work of a force against the motion that is `startForce`, N, at the start, `endForce`, N, at the end, and whose mean
   * over time is `bend`, N, above the straight line.
   */
  work(startForce: number, endForce: number, bend: number): number {
    return (
      startForce * this.distance + (endForce - startForce) * this.#lateDistance + bend * this.#midDistance
    );
  }

  /** m from the start of the step to where the speed has fallen to `speed`, m/s; it must lie in the step. */
  distanceTo(speed: number): number {
    const { duration, startSpeed, startDeceleration: first, bend } = this;
    const rise = this.endDeceleration - first;
    let x = (startSpeed - speed) / (duration * this.meanDeceleration());
    for (let pass = 0; pass < 4; pass += 1) {
      const lost = duration * x * (first + x * (rise / 2 + bend * (3 - 2 * x)));
      const slope = duration * (first + x * (rise + 6 * bend * (1 - x)));
      if (slope > 0) x = Math.min(1, Math.max(0, x + (startSpeed - speed - lost) / slope));
    }
    const loss = duration * x * x * (first / 2 + x * (rise / 6 + bend * (1 - x / 2)));
    return duration * (startSpeed * x - loss);
  }
}
